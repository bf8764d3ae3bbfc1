import { createEffect, createSignal, Match, Show, Suspense, Switch } from 'solid-js';
import { unitsOf } from '../core/kitchen/index.ts';
import type { Plan } from '../core/plan/index.ts';
import { downloadText } from '../host/files/index.ts';
import type { AppContext } from './app-context.ts';
import { LostRunBanner, NoPage, NoticeBanner, OpenRunBanner, UpdateBanner } from './banners.tsx';
import { lazyPage, loadLater, translator } from './context/language.ts';
import { followUnits } from './context/units.ts';
import { kitchenControllerOf } from './controllers/kitchen/kitchen-opening.ts';
import { createPlanning } from './controllers/kitchen/planning.ts';
import { createTicks, type Ticks } from './controllers/kitchen/ticks.ts';
import { reasonOf } from './controllers/failures/reason.ts';
import { createRehearsing } from './controllers/rehearse/rehearsing.ts';
import {
  beginAt,
  bringEverythingBack,
  importRun,
  openDemo,
  openFile,
  type PagesContext,
  recheckAfterwards,
  saveEverything,
  saveKitchen,
  showPlan,
  startRun,
  takeUpdate,
} from './page-actions.ts';
import { exportRun, ranOut } from './run-actions.ts';
import { RunTrouble } from './run-trouble.tsx';
import { ReadingLine } from './parts/reading-line.tsx';
import { Shell } from './shell.tsx';
import { WorkingLine } from './working-line.tsx';
import './styles/frame.css';
import './styles/pages.css';
import './styles/fields.css';
import './styles/word-button.css';
import './styles/plan/plan-charts.css';
import './styles/record/record.css';
import './styles/record/record-print.css';
import './styles/print.css';

// A run that can only be shown has it over its own page too.
export { RunTrouble };

const KitchenPage = lazyPage(
  ['kitchen', 'survey', 'problems', 'custom', 'sources', 'pictures'],
  async () => (await import('./pages/kitchen/kitchen-page.tsx')).KitchenPage,
);
const PlanPage = lazyPage(
  [
    'plan',
    'plan-page',
    'kitchen',
    'custom',
    'sources',
    'problems',
    'pictures',
    'run-later',
    'utensils',
    // What it saves for a calendar.
    'report',
  ],
  async () => (await import('./pages/plan/plan-page.tsx')).PlanPage,
);
const RecordPage = lazyPage(
  ['record-page', 'report', 'plan', 'custom', 'sources', 'problems', 'run-later', 'utensils'],
  async () => (await import('./pages/record/record-page.tsx')).RecordPage,
);

const RehearsalPage = lazyPage(
  ['rehearse', 'run-later', 'run-ends', 'custom', 'sources', 'pictures', 'utensils'],
  async () => (await import('./pages/rehearse/rehearsal-page.tsx')).RehearsalPage,
);
const OutlookLine = lazyPage(
  ['advice', 'plan'],
  async () => (await import('./parts/outlook/outlook-line.tsx')).OutlookLine,
);

/**
 * The pages beside the run, with the kitchens they stand on. A run that is
 * open needs none of it: it comes when another page is looked at, and once it
 * is there it keeps its kitchens from visit to visit.
 */
export function createPages(app: AppContext) {
  const { device, route, tell } = app;
  const planning = createPlanning({
    journals: device.journals,
    settings: device.settings,
    nowMs: () => device.readClocks().wallMs,
    tell,
  });
  let namedIn = '';
  const demoText = async (id: string): Promise<string | undefined> => {
    namedIn = translator().language;
    return (await import('./pages/kitchen/demos.ts')).demoText(id, namedIn);
  };
  const kitchens = kitchenControllerOf(device, { planning, demoText, tell });
  // A demo speaks the language of the page; once it is somebody's own, its names are theirs.
  createEffect(() => {
    const where = kitchens.opened();
    if (where?.kind === 'demo' && namedIn !== translator().language)
      void kitchens.openDemo(where.id);
  });
  // What cannot be read here is told wherever one looks.
  void loadLater(['problems']).catch((error: unknown) => tell(reasonOf(error)));
  const { page, id } = route();
  const [isOpening, setIsOpening] = createSignal(true);
  const opened = page === 'plan' && id ? kitchens.openDemo(id) : kitchens.openLast();
  void opened.finally(() => setIsOpening(false));
  const context: PagesContext = { ...app, planning, kitchens, isOpening };
  // What is looked at is told in the units of its own household: the run's, or that of the open kitchen.
  followUnits(() => {
    const kitchen = route().page === 'run' ? app.runs.view()?.plan.kitchen : kitchens.kitchen();
    return kitchen && unitsOf(kitchen);
  });
  const ticksOf = createTicks({ settings: device.settings, tell });
  return () => <Pages context={context} ticksOf={ticksOf} />;
}

function Banners(props: { context: PagesContext }) {
  const { runs, updates, route, notice } = props.context;
  return (
    <>
      <OpenRunBanner show={runs.isOpen() && route().page !== 'run'} />
      <UpdateBanner
        show={updates.waiting() && !runs.isOpen()}
        onTake={() => void takeUpdate(props.context)}
      />
      <LostRunBanner lostRun={runs.lostRun} nowMs={runs.nowMs()} />
      <RunTrouble context={props.context} />
      <NoticeBanner notice={notice()} />
    </>
  );
}

/** The pages, or the rehearsal of a plan, which takes the whole screen as a run does. */
function Pages(props: { context: PagesContext; ticksOf: (kitchen: string) => Ticks }) {
  const { runs, route, tell, theme } = props.context;
  const rehearsing = createRehearsing({ runs, route, tell });
  return (
    <Show
      when={rehearsing.plan()}
      fallback={
        <PagesInShell
          context={props.context}
          ticksOf={props.ticksOf}
          onRehearse={rehearsing.begin}
        />
      }
    >
      {(plan) => (
        <Suspense>
          <RehearsalPage
            plan={plan()}
            theme={theme.theme()}
            onLeave={rehearsing.leave}
            ranOut={(send, ...what) => void ranOut({ runs: { send } }, ...what)}
          />
        </Suspense>
      )}
    </Show>
  );
}

function PagesInShell(props: {
  context: PagesContext;
  ticksOf: (kitchen: string) => Ticks;
  onRehearse: (plan: Plan) => void;
}) {
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
      onLanguage={context.chooseLanguage}
      banner={<Banners context={context} />}
    >
      <Suspense>
        <Switch
          fallback={
            <NoPage
              page={route().page}
              isUnread={route().page === 'run' && runs.trouble()?.kind === 'unreadable'}
            />
          }
        >
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
                outlook={
                  <Suspense>
                    <OutlookLine view={runs.view()} nowMs={runs.nowMs()} tellsWhy />
                  </Suspense>
                }
                onStart={() => void startRun(context)}
                onRehearse={() => props.onRehearse(plan())}
                kitchen={kitchens.kitchen()}
                onKitchen={(kitchen) => void kitchens.put(kitchen)}
                ticks={props.ticksOf(plan().kitchen.name)}
                begin={{
                  startWallMs: plan().days?.startWallMs ?? planning.startWallMs(),
                  onChange: (ms) => beginAt(context, ms),
                }}
              />
            )}
          </Match>
          <Match when={route().page === 'plan' && kitchens.isPlanning()}>
            <main class="place" />
          </Match>
          <Match when={route().page === 'plan' && context.isOpening()}>
            <ReadingLine />
          </Match>
          <Match when={route().page === 'record'}>
            <RecordPage
              runs={runs.runs()}
              isRead={runs.isRead()}
              openId={route().id}
              readRun={runs.exportText}
              onSaveText={(name, text) => downloadText({ name, text, type: 'text/plain' })}
              onExport={(id) => void exportRun(context, id)}
              onImport={() => void importRun(context)}
              everything={{
                onSave: () => void saveEverything(context),
                onBringBack: () => bringEverythingBack(context),
              }}
              leftOutOf={planning.leftOutOf}
              onLeftOut={(runId, next) => {
                planning.leaveOut(runId, next);
                void kitchens.planAnew();
              }}
              onDoubt={(...what) => void recheckAfterwards(context, ...what)}
              nowMs={runs.nowMs()}
            />
          </Match>
        </Switch>
      </Suspense>
      <WorkingLine show={kitchens.isPlanning() && (route().page === 'plan' || !kitchens.plan())} />
    </Shell>
  );
}
