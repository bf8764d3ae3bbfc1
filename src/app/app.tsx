import { createEffect, type JSX, Match, Show, Suspense, Switch } from 'solid-js';
import {
  beginAt,
  exportRun,
  importRun,
  openDemo,
  openFile,
  ranOut,
  recheckAfterwards,
  saveKitchen,
  showPlan,
  startRun,
} from './actions.ts';
import { createAppContext, type AppContext } from './app-context.ts';
import {
  LostRunBanner,
  NoPage,
  OpenRunBanner,
  TroubleBanner,
  UpdateBanner,
  WatchBand,
} from './banners.tsx';
import { downloadText } from '../host/files/index.ts';
import { lazyPage, t, translator } from './context/language.ts';
import type { RunChoices } from './controllers/run/run-choices.ts';
import type { SoundLight, WakeLight } from './pages/run/lights.tsx';
import { RunPage } from './pages/run/run-page.tsx';
import { Shell } from './shell.tsx';

// A run that is open needs none of them: they come, with their sentences, when they are looked at.
const KitchenPage = lazyPage(
  ['kitchen', 'survey', 'problems', 'custom', 'sources'],
  async () => (await import('./pages/kitchen/kitchen-page.tsx')).KitchenPage,
);
const PlanPage = lazyPage(
  ['plan', 'plan-page', 'kitchen', 'custom', 'sources', 'problems'],
  async () => (await import('./pages/plan/plan-page.tsx')).PlanPage,
);
const RecordPage = lazyPage(
  ['record-page', 'report', 'plan', 'custom', 'sources'],
  async () => (await import('./pages/record/record-page.tsx')).RecordPage,
);

const demoText = async (id: string): Promise<string | undefined> =>
  (await import('./pages/kitchen/demos.ts')).demoText(id);

/** The page tells browsers and readers which language it speaks, and which way it runs. */
function followLanguage(): void {
  createEffect(() => {
    const { language, direction } = translator();
    document.documentElement.lang = language;
    document.documentElement.dir = direction;
    document.title = t('shell.title');
  });
}

/** The four pages over one context; a run takes the whole screen. */
export function App() {
  const context = createAppContext(demoText);
  followLanguage();
  const running = () => (context.route().page === 'run' ? context.runs.view() : undefined);
  return (
    <Show when={running()} fallback={<Pages context={context} />}>
      {(view) => (
        <Watched context={context}>
          <RunPage
            view={view()}
            nowMs={context.runs.nowMs()}
            lights={{
              sound: soundLight(context),
              wake: wakeLight(context),
              writer: context.mayWrite() || context.runs.otherLead() !== undefined,
            }}
            trouble={context.runs.trouble()}
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
          />
        </Watched>
      )}
    </Show>
  );
}

/** A run that another page leads is shown with everything in it switched off. */
function Watched(props: { context: AppContext; children: JSX.Element }) {
  const { runs, device, alarm } = props.context;
  const lead = () => {
    const other = runs.otherLead();
    if (other === 'silent') device.tabLock.steal();
    else device.tabLock.askFor();
  };
  return (
    <Show when={runs.otherLead()} fallback={props.children}>
      {(otherLead) => (
        <div class="watch-frame">
          <WatchBand
            otherLead={otherLead()}
            wasTakenOver={device.lock() === 'replaced' || runs.trouble()?.kind === 'taken-over'}
            needsArming={alarm.light() === 'touch-to-arm' && otherLead() !== 'beating'}
            onArm={() => void alarm.arm()}
            onLead={lead}
          />
          <fieldset disabled>{props.children}</fieldset>
        </div>
      )}
    </Show>
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

function Banners(props: { context: AppContext }) {
  const { runs, updates, route, notice } = props.context;
  const exportOpen = () => {
    const open = runs.openRun();
    return open ? () => void exportRun(props.context, open.id) : undefined;
  };
  return (
    <>
      <OpenRunBanner show={runs.isOpen() && route().page !== 'run'} />
      <UpdateBanner show={updates.waiting() && !runs.isOpen()} onTake={updates.take} />
      <LostRunBanner lostRun={runs.lostRun} nowMs={runs.nowMs()} />
      <TroubleBanner trouble={runs.trouble()} notice={notice()} onExport={exportOpen()} />
    </>
  );
}

function Pages(props: { context: AppContext }) {
  const { context } = props;
  const { route, kitchens, runs, planning, theme, go } = context;
  // Whoever looks at the plan sees the one of the last edit.
  createEffect(() => {
    if (route().page === 'plan') void showPlan(context);
  });
  return (
    <Shell
      at={route().page}
      theme={theme.theme()}
      onTheme={theme.toggle}
      banner={<Banners context={context} />}
    >
      <Suspense>
        <Switch fallback={<NoPage page={route().page} />}>
          <Match when={route().page === 'kitchen'}>
            <KitchenPage
              kitchens={kitchens}
              at={route().id}
              onGo={(id) => go(id ? { page: 'kitchen', id } : { page: 'kitchen' })}
              onDemo={(id) => void openDemo(context, id)}
              onOpenFile={() => void openFile(context)}
              onSaveFile={() => void saveKitchen(context)}
              onPlan={() => go({ page: 'plan' })}
            />
          </Match>
          <Match when={route().page === 'plan' && kitchens.plan()}>
            {(plan) => (
              <PlanPage
                plan={plan()}
                pictures={kitchens.pictures()}
                openRun={runs.isOpen()}
                onStart={() => void startRun(context)}
                kitchen={kitchens.kitchen()}
                onKitchen={(kitchen) => void kitchens.put(kitchen)}
                begin={{
                  startWallMs: plan().days?.startWallMs ?? planning.startWallMs(),
                  onChange: (ms) => beginAt(context, ms),
                }}
              />
            )}
          </Match>
          <Match when={route().page === 'record'}>
            <RecordPage
              runs={runs.runs()}
              openId={route().id}
              readFacts={runs.facts}
              onSaveText={(name, text) => downloadText({ name, text, type: 'text/plain' })}
              onExport={(id) => void exportRun(context, id)}
              onImport={() => void importRun(context)}
              leftOutOf={planning.leftOutOf}
              onLeftOut={(runId, next) => {
                planning.leaveOut(runId, next);
                void kitchens.planAnew();
              }}
              onDoubt={(kitchen, ids, what) => void recheckAfterwards(context, kitchen, ids, what)}
              nowMs={runs.nowMs()}
            />
          </Match>
        </Switch>
      </Suspense>
    </Shell>
  );
}
