import { lazy, Match, Show, Suspense, Switch } from 'solid-js';
import type { RunView, StepView } from '../core/run/index.ts';
import { downloadText, pickTextFile } from '../host/files/index.ts';
import { NoPlan, OpenRunBanner, UpdateBanner, WriterBanner } from './banners.tsx';
import { DEMOS } from './kitchen/demos.ts';
import { KitchenPlace } from './kitchen/kitchen-place.tsx';
import type { WakeLight } from './run/lights.tsx';
import { RunPlace } from './run/run-place.tsx';
import { Shell } from './shell.tsx';
import { createWorkshop, type Workshop } from './state/workshop.ts';

// A run that is open needs neither: they come when their place is looked at.
const PlanPlace = lazy(async () => ({
  default: (await import('./plan/plan-place.tsx')).PlanPlace,
}));
const RecordPlace = lazy(async () => ({
  default: (await import('./record/record-place.tsx')).RecordPlace,
}));

/** The four places over one workshop; a run takes the whole screen. */
export function App() {
  const shop = createWorkshop();
  const running = () => (shop.route().place === 'run' ? shop.runs.view() : undefined);
  return (
    <Show when={running()} fallback={<Places shop={shop} />}>
      {(view) => (
        <RunPlace
          view={view()}
          nowMs={shop.runs.nowMs()}
          lights={{ sound: shop.alarm.light(), wake: wakeLight(shop), writer: shop.mayWrite() }}
          trouble={shop.runs.trouble()}
          refusal={shop.runs.notice()}
          theme={shop.theme.theme()}
          onTheme={shop.theme.toggle}
          send={(request) => void shop.runs.send(request)}
          playTest={shop.alarm.playTest}
          kept={shop.kept()}
          arm={() => void shop.alarm.arm()}
          ranOut={(step, share) => void ranOut(shop, view(), step, share)}
          exportRun={() => void exportRun(shop, shop.runs.openRun()?.id ?? '')}
        />
      )}
    </Show>
  );
}

function wakeLight(shop: Workshop): WakeLight {
  const state = shop.device.wake();
  return state === 'off' ? 'lost' : state;
}

async function exportRun(shop: Workshop, id: string): Promise<void> {
  offer('run.glowpour.json', await shop.runs.exportText(id));
}

/** A kitchen file may have a megabyte, a three-day run is well below twenty. */
const LARGEST_KITCHEN_BYTES = 1_000_000;
const LARGEST_RUN_BYTES = 20_000_000;

function offer(name: string, text: string, type = 'application/json'): void {
  downloadText({ name, text, type });
}

async function importRun(shop: Workshop): Promise<void> {
  const picked = await pickTextFile('.json', LARGEST_RUN_BYTES);
  if (picked.kind === 'picked') await shop.runs.importText(picked.text);
  else if (picked.kind !== 'none') shop.runs.tell(picked.message);
}

async function openFile(shop: Workshop): Promise<void> {
  const picked = await pickTextFile('.json', LARGEST_KITCHEN_BYTES);
  if (picked.kind === 'picked') {
    if (await shop.kitchens.openText(picked.text)) shop.go({ place: 'plan' });
  } else if (picked.kind !== 'none') shop.runs.tell(picked.message);
}

async function saveKitchen(shop: Workshop): Promise<void> {
  offer('kitchen.kitchen.json', await shop.kitchens.fileText());
}

async function openDemo(shop: Workshop, id: string): Promise<void> {
  if (await shop.kitchens.openDemo(id)) shop.go({ place: 'plan' });
}

/** What is left of a pour is shared out anew, then the pour ends where the water did. */
async function ranOut(shop: Workshop, view: RunView, step: StepView, share: number): Promise<void> {
  const planner = await import('./state/planner.ts');
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

async function startRun(shop: Workshop): Promise<void> {
  const plan = shop.kitchens.plan();
  if (!shop.runs.isOpen() && plan) await shop.runs.start(plan);
  shop.go({ place: 'run' });
}

function Banners(props: { shop: Workshop }) {
  const { runs, updates, device, mayWrite, route } = props.shop;
  return (
    <>
      <OpenRunBanner show={runs.isOpen() && route().place !== 'run'} />
      <UpdateBanner show={updates.waiting() && !runs.isOpen()} onTake={updates.take} />
      <WriterBanner
        show={!mayWrite() && device.lock() !== 'asking'}
        onTakeOver={() => device.tabLock.steal()}
      />
    </>
  );
}

function Places(props: { shop: Workshop }) {
  const shop = props.shop;
  return (
    <Shell
      at={shop.route().place}
      theme={shop.theme.theme()}
      onTheme={shop.theme.toggle}
      banner={<Banners shop={shop} />}
    >
      <Suspense>
        <Switch fallback={<NoPlan place={shop.route().place} />}>
          <Match when={shop.route().place === 'kitchen'}>
            <KitchenPlace
              kitchen={shop.kitchens.kitchen()}
              demos={DEMOS}
              problems={shop.kitchens.problems()}
              onDemo={(id) => void openDemo(shop, id)}
              onOpenFile={() => void openFile(shop)}
              onSaveFile={() => void saveKitchen(shop)}
              onChange={(kitchen) => void shop.kitchens.put(kitchen)}
              onPlan={() => shop.go({ place: 'plan' })}
            />
          </Match>
          <Match when={shop.route().place === 'plan' && shop.kitchens.plan()}>
            {(plan) => (
              <PlanPlace
                plan={plan()}
                pictures={shop.kitchens.pictures()}
                openRun={shop.runs.isOpen()}
                onStart={() => void startRun(shop)}
              />
            )}
          </Match>
          <Match when={shop.route().place === 'record'}>
            <RecordPlace
              runs={shop.runs.runs()}
              openId={shop.route().id}
              readFacts={shop.runs.facts}
              onSaveText={(name, text) => offer(name, text, 'text/plain')}
              onExport={(id) => void exportRun(shop, id)}
              onImport={() => void importRun(shop)}
              nowMs={shop.runs.nowMs()}
            />
          </Match>
        </Switch>
      </Suspense>
    </Shell>
  );
}
