import { createEffect, type JSX, lazy, Match, Show, Suspense, Switch } from 'solid-js';
import type { Kitchen } from '../core/kitchen/index.ts';
import type { RunView, StepView } from '../core/run/index.ts';
import { downloadText, pickTextFile } from '../host/files/index.ts';
import {
  LostRunBanner,
  NoPlan,
  OpenRunBanner,
  TroubleBanner,
  UpdateBanner,
  WatchBand,
} from './banners.tsx';
import type { RunChoices } from './pages/run/choices.ts';
import type { SoundLight, WakeLight } from './pages/run/lights.tsx';
import { RunPage } from './pages/run/run-page.tsx';
import { Shell } from './shell.tsx';
import { createAppContext, type AppContext } from './context/app-context.ts';

// A run that is open needs none of them: they come when their place is looked at.
const KitchenPlace = lazy(async () => ({
  default: (await import('./pages/kitchen/kitchen-page.tsx')).KitchenPage,
}));
const PlanPlace = lazy(async () => ({
  default: (await import('./pages/plan/plan-page.tsx')).PlanPage,
}));
const RecordPlace = lazy(async () => ({
  default: (await import('./pages/record/record-page.tsx')).RecordPage,
}));

/** The four places over one workshop; a run takes the whole screen. */
export function App() {
  const shop = createAppContext();
  const running = () => (shop.route().page === 'run' ? shop.runs.view() : undefined);
  return (
    <Show when={running()} fallback={<Places shop={shop} />}>
      {(view) => (
        <Watched shop={shop}>
          <RunPage
            view={view()}
            nowMs={shop.runs.nowMs()}
            lights={{
              sound: soundLight(shop),
              wake: wakeLight(shop),
              writer: shop.mayWrite() || shop.runs.otherLead() !== undefined,
            }}
            trouble={shop.runs.trouble()}
            refusal={shop.runs.notice()}
            theme={shop.theme.theme()}
            onTheme={shop.theme.toggle}
            choices={choicesHere(shop)}
            onChoice={shop.choices.choose}
            send={(request) => void shop.runs.send(request)}
            playTest={shop.alarm.playTest}
            kept={shop.kept()}
            arm={() => void shop.alarm.arm()}
            ranOut={(step, share) => void ranOut(shop, view(), step, share)}
            exportRun={() => void exportRun(shop, shop.runs.openRun()?.id ?? '')}
          />
        </Watched>
      )}
    </Show>
  );
}

/** A run that another page leads is shown with everything in it switched off. */
function Watched(props: { shop: AppContext; children: JSX.Element }) {
  const { runs, device, alarm } = props.shop;
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
function soundLight(shop: AppContext): SoundLight {
  const light = shop.alarm.light();
  if (!shop.runs.otherLead()) return light;
  if (shop.runs.otherLead() === 'beating') return 'elsewhere';
  return light === 'touch-to-arm' ? 'blocked' : light;
}

/** One voice is enough. */
function choicesHere(shop: AppContext): RunChoices {
  const choices = shop.choices.choices();
  return shop.runs.otherLead() ? { ...choices, spoken: false } : choices;
}

function wakeLight(shop: AppContext): WakeLight {
  const state = shop.device.wake();
  return state === 'off' ? 'lost' : state;
}

async function exportRun(shop: AppContext, id: string): Promise<void> {
  offer('run.glowpour.json', await shop.runs.exportText(id));
}

/** A kitchen file may have a megabyte, a three-day run is well below twenty. */
const LARGEST_KITCHEN_BYTES = 1_000_000;
const LARGEST_RUN_BYTES = 20_000_000;

/** "Grandma's flat" → "grandma-s-flat": safe on every file system. */
function fileWord(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
}

function offer(name: string, text: string, type = 'application/json'): void {
  downloadText({ name, text, type });
}

async function importRun(shop: AppContext): Promise<void> {
  const picked = await pickTextFile('.json', LARGEST_RUN_BYTES);
  if (picked.kind === 'picked') await shop.runs.importText(picked.text);
  else if (picked.kind !== 'none') shop.runs.tell(picked.message);
}

async function openFile(shop: AppContext): Promise<void> {
  const picked = await pickTextFile('.json', LARGEST_KITCHEN_BYTES);
  if (picked.kind === 'picked') {
    if (await shop.kitchens.openText(picked.text)) shop.go({ page: 'plan' });
  } else if (picked.kind !== 'none') shop.runs.tell(picked.message);
}

async function saveKitchen(shop: AppContext): Promise<void> {
  const name = shop.kitchens.kitchen()?.name ?? '';
  offer(`${fileWord(name) || 'kitchen'}.kitchen.json`, await shop.kitchens.fileText());
}

/** The plan of the last edit; a kitchen that has none goes back to what stands in its way. */
async function showPlan(shop: AppContext): Promise<void> {
  const planned = await shop.kitchens.settle();
  if (!planned && shop.kitchens.kitchen()) shop.go({ page: 'kitchen' });
}

async function openDemo(shop: AppContext, id: string): Promise<void> {
  if (await shop.kitchens.openDemo(id)) shop.go({ page: 'plan' });
}

/** What is left of a pour is shared out anew, then the pour ends where the water did. */
async function ranOut(
  shop: AppContext,
  view: RunView,
  step: StepView,
  share: number,
): Promise<void> {
  const planner = await import('./controllers/kitchen/planner.ts');
  const unbegun = ['waiting', 'ready', 'stalled'];
  const hasBegun = (id: string): boolean =>
    view.steps.some((one) => one.step.id === id && !unbegun.includes(one.status));
  const amendment = planner.ranOut(view.plan, step.step.id, share, hasBegun);
  if (!amendment) return;
  const stage = step.step.stages[step.stage];
  // Only what was shared out anew may be left: a refused amendment ends nothing.
  if (stage && (await shop.runs.send({ kind: 'amend-plan', ...amendment })))
    await shop.runs.send({ kind: 'confirm', step: step.step.id, stage: stage.id });
}

async function startRun(shop: AppContext): Promise<void> {
  if (!shop.runs.isOpen()) {
    // Whenever it was planned for, it begins now.
    shop.planning.beginAt(null);
    await shop.kitchens.planAnew();
    const plan = shop.kitchens.plan();
    if (plan) await shop.runs.start(plan);
  }
  shop.go({ page: 'run' });
}

function beginAt(shop: AppContext, startWallMs: number): void {
  shop.planning.beginAt(startWallMs);
  void shop.kitchens.planAnew();
}

/** A small run for what a doubt touches; one at a time. */
async function doubtAfterwards(
  shop: AppContext,
  kitchen: Kitchen,
  fixtureIds: readonly string[],
  what: string,
): Promise<void> {
  if (shop.runs.isOpen()) {
    shop.runs.tell('A run is open. Tell it there, with “Something happened”, or close it first.');
    return;
  }
  const planner = await import('./controllers/kitchen/planner.ts');
  const options = await shop.planning.optionsOf(kitchen);
  await shop.runs.start(planner.planForRecheck(kitchen, fixtureIds, what, options));
  shop.go({ page: 'run' });
}

function Banners(props: { shop: AppContext }) {
  const { runs, updates, route } = props.shop;
  const exportOpen = () => {
    const open = runs.openRun();
    return open ? () => void exportRun(props.shop, open.id) : undefined;
  };
  return (
    <>
      <OpenRunBanner show={runs.isOpen() && route().page !== 'run'} />
      <UpdateBanner show={updates.waiting() && !runs.isOpen()} onTake={updates.take} />
      <LostRunBanner lostRun={runs.lostRun} nowMs={runs.nowMs()} />
      <TroubleBanner trouble={runs.trouble()} notice={runs.notice()} onExport={exportOpen()} />
    </>
  );
}

function Places(props: { shop: AppContext }) {
  const shop = props.shop;
  // Whoever looks at the plan sees the one of the last edit.
  createEffect(() => {
    if (shop.route().page === 'plan') void showPlan(shop);
  });
  return (
    <Shell
      at={shop.route().page}
      theme={shop.theme.theme()}
      onTheme={shop.theme.toggle}
      banner={<Banners shop={shop} />}
    >
      <Suspense>
        <Switch fallback={<NoPlan place={shop.route().page} />}>
          <Match when={shop.route().page === 'kitchen'}>
            <KitchenPlace
              desk={shop.kitchens}
              at={shop.route().id}
              onGo={(id) => shop.go(id ? { page: 'kitchen', id } : { page: 'kitchen' })}
              onDemo={(id) => void openDemo(shop, id)}
              onOpenFile={() => void openFile(shop)}
              onSaveFile={() => void saveKitchen(shop)}
              onPlan={() => shop.go({ page: 'plan' })}
            />
          </Match>
          <Match when={shop.route().page === 'plan' && shop.kitchens.plan()}>
            {(plan) => (
              <PlanPlace
                plan={plan()}
                pictures={shop.kitchens.pictures()}
                openRun={shop.runs.isOpen()}
                onStart={() => void startRun(shop)}
                kitchen={shop.kitchens.kitchen()}
                onKitchen={(kitchen) => void shop.kitchens.put(kitchen)}
                begin={{
                  startWallMs: plan().days?.startWallMs ?? shop.planning.startWallMs(),
                  onChange: (ms) => beginAt(shop, ms),
                }}
              />
            )}
          </Match>
          <Match when={shop.route().page === 'record'}>
            <RecordPlace
              runs={shop.runs.runs()}
              openId={shop.route().id}
              readFacts={shop.runs.facts}
              onSaveText={(name, text) => offer(name, text, 'text/plain')}
              onExport={(id) => void exportRun(shop, id)}
              onImport={() => void importRun(shop)}
              leftOutOf={shop.planning.leftOutOf}
              onLeftOut={(runId, next) => {
                shop.planning.leaveOut(runId, next);
                void shop.kitchens.planAnew();
              }}
              onDoubt={(kitchen, ids, what) => void doubtAfterwards(shop, kitchen, ids, what)}
              nowMs={shop.runs.nowMs()}
            />
          </Match>
        </Switch>
      </Suspense>
    </Shell>
  );
}
