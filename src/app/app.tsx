import {
  createEffect,
  createMemo,
  getOwner,
  type JSX,
  lazy,
  onMount,
  runWithOwner,
  Show,
  Suspense,
} from 'solid-js';
import { unitsOf } from '../core/kitchen/index.ts';
import type { PageSection } from '../core/messages/languages/index.ts';
import { createAppContext, type AppContext } from './app-context.ts';
import { CoolingBar } from './cooling-bar.tsx';
import { WatchBand } from './watch-band.tsx';
import { loadLater, say, t, translator, withSections } from './context/language.ts';
import { UNTIL_WHEN } from './context/route.ts';
import { followUnits, speakInUnits } from './context/units.ts';
import { followZone } from './context/zone.ts';
import { reasonOf } from './controllers/failures/reason.ts';
import type { RunChoices } from './controllers/run/run-choices.ts';
import type { RunMemory } from './controllers/run/run-note.ts';
import type { SoundLight, WakeLight } from './pages/run/lights.tsx';
import { RunPage } from './pages/run/run-page.tsx';
import { BrokenPart, Guarded, type PartName } from './parts/guarded.tsx';
import { ReadingLine } from './parts/reading-line.tsx';
import { SheetTop } from './parts/sheets/sheet-corner.ts';
import { exportRun, ranOut } from './run-actions.ts';

/** The page tells browsers and readers which language it speaks, and which way it runs. */
function followLanguage(): void {
  createEffect(() => {
    const { language, direction } = translator();
    document.documentElement.lang = language;
    document.documentElement.dir = direction;
    document.title = t('shell.title');
  });
}

/** What stands round the pages beside the run. */
const frame = () => withSections(['frame'], () => import('./pages-frame.tsx'));
const RunTrouble = lazy(async () => ({ default: (await frame()).RunTrouble }));

/** The four pages over one context; a run takes the whole screen. */
export function App() {
  const context = createAppContext();
  followLanguage();
  // With the owner of the app: what the pages keep lives as long as it does.
  const owner = getOwner();
  const Pages = lazy(async () => {
    const { createPages } = await frame();
    return { default: runWithOwner(owner, () => createPages(context)) ?? (() => <></>) };
  });
  /** A run may be about to be taken up: nothing else is fetched before that is known. */
  const mayCome = () =>
    context.route().page === 'run' &&
    !context.runs.trouble() &&
    (!context.runs.isRead() || context.runs.openRun() !== undefined);
  const lead = () => {
    const { runs, device } = context;
    if (runs.otherLead() === 'silent') device.tabLock.steal();
    else device.tabLock.askFor();
  };
  const running = () => (context.route().page === 'run' ? context.runs.view() : undefined);
  // The page of an open run stands before what it says later; the reasons and covers that its plan tells come after it.
  const fetchLater = (...sections: PageSection[]) =>
    void loadLater(sections).catch((error: unknown) => context.tell(reasonOf(error)));
  onMount(() => fetchLater('run-later'));
  const isOpen = createMemo(() => context.runs.view() !== undefined);
  createEffect(() => {
    if (isOpen()) fetchLater('custom', 'sources', 'utensils');
  });
  const runsIn = () => running()?.plan.kitchen;
  followZone(() => runsIn()?.place?.zone);
  followUnits(() => {
    const kitchen = runsIn();
    return kitchen && unitsOf(kitchen);
  });
  speakInUnits((error) => context.tell(reasonOf(error)));
  const broken = (part: PartName, error: unknown) =>
    void context.runs.broke(t('shell.broken.note', { part, why: say(reasonOf(error)) }));
  /** Over whatever page is looked at, and in every sheet, while a burn is cooled. */
  const cooling = () => (
    <Show when={context.runs.view()?.coolings[0]}>
      {(longest) => (
        <CoolingBar
          cooling={longest()}
          onlyShown={context.runs.otherLead() !== undefined}
          elsewhere={context.route().page !== 'run'}
          send={(request) => void context.runs.send(request)}
        />
      )}
    </Show>
  );
  return (
    <BrokenPart.Provider value={broken}>
      <SheetTop.Provider value={cooling}>
        {cooling()}
        <Show
          when={running()}
          fallback={
            <Show when={!mayCome()} fallback={<ReadingLine />}>
              <Guarded part="page">
                <Suspense fallback={<ReadingLine />}>
                  <Pages />
                </Suspense>
              </Guarded>
            </Show>
          }
        >
          {(view) => (
            <Watched context={context} lead={lead}>
              <RunPage
                view={view()}
                nowMs={context.runs.nowMs()}
                lights={{
                  sound: soundLight(context),
                  wake: wakeLight(context),
                  writer: context.mayWrite() || context.runs.otherLead() !== undefined,
                }}
                trouble={isDamaged(context) ? undefined : context.runs.trouble()}
                refusal={context.notice()}
                theme={context.theme.theme()}
                onTheme={context.theme.toggle}
                choices={choicesHere(context)}
                onChoice={context.choices.choose}
                onLanguage={context.chooseLanguage}
                send={context.runs.send}
                playTest={context.alarm.playTest}
                kept={context.persistence()}
                arm={() => void context.alarm.arm()}
                ranOut={(step, share) => void ranOut(context, view(), step, share)}
                exportRun={() => void exportRun(context, context.runs.openRun()?.id ?? '')}
                lead={context.runs.otherLead() ? lead : undefined}
                memory={memoryOf(context)}
                opens={context.route().id === UNTIL_WHEN ? 'days' : undefined}
              />
            </Watched>
          )}
        </Show>
      </SheetTop.Provider>
    </BrokenPart.Provider>
  );
}

function memoryOf({ runs, device: { settings } }: AppContext): RunMemory | undefined {
  const run = runs.openRun()?.id;
  return run === undefined ? undefined : { run, settings };
}

/** A run that nothing can be written to any more: only shown, until a person puts it aside. */
const isDamaged = ({ runs }: AppContext) => runs.trouble()?.kind === 'read-only';

/** A run that another page leads, or that is damaged, under a band that says so. */
function Watched(props: { context: AppContext; lead: () => void; children: JSX.Element }) {
  const { runs, device, alarm } = props.context;
  return (
    // The run's page stays the same one when the lead changes: what is open on it stays open.
    <div class={runs.otherLead() || isDamaged(props.context) ? 'watch-frame' : 'led-here'}>
      <Show
        when={runs.otherLead()}
        fallback={
          <Show when={isDamaged(props.context)}>
            <Guarded part="page">
              <RunTrouble context={props.context} />
            </Guarded>
          </Show>
        }
      >
        {(otherLead) => (
          <WatchBand
            otherLead={otherLead()}
            wasTakenOver={device.lock() === 'replaced' || runs.trouble()?.kind === 'taken-over'}
            needsArming={alarm.light() === 'touch-to-arm' && otherLead() !== 'beating'}
            onArm={() => void alarm.arm()}
            onLead={props.lead}
          />
        )}
      </Show>
      {props.children}
    </div>
  );
}

/** The page that only shows makes no sound while the other one lives; it never asks to be armed over the whole screen. */
function soundLight({ alarm, runs }: AppContext): SoundLight {
  const light = alarm.light();
  if (!runs.otherLead()) return light;
  if (runs.otherLead() === 'beating') return 'elsewhere';
  return light === 'touch-to-arm' ? 'blocked' : light;
}

/** One voice is enough. */
function choicesHere({ choices, runs }: AppContext): RunChoices {
  return runs.otherLead() ? { ...choices.choices(), spoken: false } : choices.choices();
}

function wakeLight({ device }: AppContext): WakeLight {
  const state = device.wake();
  return state === 'off' ? 'lost' : state;
}
