import { createEffect, createMemo, Match, onCleanup, onMount, Show, Switch } from 'solid-js';
import { driveTurns } from '../host/clocks/index.ts';
import { offerFile, pickText } from '../host/files/index.ts';
import { DEMOS } from './kitchen/demos.ts';
import { KitchenPlace } from './kitchen/kitchen-place.tsx';
import { NoPlan, OpenRunBanner, UpdateBanner, WriterBanner } from './banners.tsx';
import { PlanPlace } from './plan/plan-place.tsx';
import { RecordPlace } from './record/record-place.tsx';
import { RunPlace } from './run/run-place.tsx';
import { Shell } from './shell.tsx';
import { createAlarm } from './state/alarm.ts';
import { createDevice } from './state/device.ts';
import { createKitchenDesk } from './state/kitchen-desk.ts';
import { createRoute } from './state/route.ts';
import { createRunDesk } from './state/run-desk.ts';
import { createTheme } from './state/theme.ts';
import { createUpdates } from './state/updates.ts';

/** When this app was built, ms: no honest clock shows less. */
declare const BUILT_WALL_MS: number;

/** Wires the device, the desks and the four places together. */
export function App() {
  const device = createDevice();
  const [route, go] = createRoute();
  const theme = createTheme((name) => void device.settings.write('theme', name).catch(() => undefined));
  const kitchens = createKitchenDesk(device.kitchens, () => device.readClocks().wallMs);
  const runs = createRunDesk({
    store: device.journals,
    readClocks: device.readClocks,
    newId: device.newId,
    builtWallMs: BUILT_WALL_MS,
  });
  const alarm = createAlarm();
  const updates = createUpdates();
  const mayWrite = () => device.lock() === 'leader' || device.lock() === 'not-supported';

  onMount(() => {
    void device.settings.readAll().then(
      (stored) => theme.restore(stored['theme']),
      () => undefined,
    );
    void runs.refresh();
    if (route().place === 'plan' && route().id) void kitchens.openDemo(route().id ?? '');
    else void kitchens.openLast();
  });
  // An open run is taken up again as soon as this page may write it; nobody has to look for it.
  createEffect(() => {
    const open = runs.openRun();
    if (open && mayWrite()) void runs.reopen(open);
    if (open && location.hash === '') go({ place: 'run' });
  });

  const driver = driveTurns({
    onTurn: (cause) => {
      void runs.tick();
      alarm.turn(cause);
      if (cause === 'hiding') void runs.heartbeat();
    },
    onHeartbeat: () => void runs.heartbeat(),
  });
  onCleanup(() => driver.stop());
  createEffect(() => {
    const view = runs.view();
    driver.wakeIn(view?.wakeInS ?? null);
    alarm.follow(view);
    updates.holdBack(runs.isOpen());
    if (view && view.status !== 'closed' && view.status !== 'drafting') device.wakeLock.keep();
    else device.wakeLock.letGo();
  });

  const startRun = async () => {
    const plan = kitchens.plan();
    if (!runs.isOpen() && plan) await runs.start(plan);
    go({ place: 'run' });
  };
  const openDemo = async (id: string) => {
    if (await kitchens.openDemo(id)) go({ place: 'plan' });
  };
  const exportRun = async (id: string) =>
    offerFile('run.glowpour.json', await runs.exportText(id), 'application/json');
  const importRun = async () => {
    const text = await pickText('.json');
    if (text !== undefined) await runs.importText(text);
  };
  const openFile = async () => {
    const text = await pickText('.json');
    if (text !== undefined && kitchens.openText(text)) go({ place: 'plan' });
  };
  const lights = createMemo(() => ({
    sound: alarm.light(),
    wake: device.wake() === 'off' ? ('lost' as const) : (device.wake() as 'held' | 'lost' | 'not-supported'),
    writer: mayWrite(),
  }));
  const inRun = () => route().place === 'run' && runs.view() !== undefined;

  return (
    <Show
      when={!inRun()}
      fallback={
        <Show when={runs.view()}>
          {(view) => (
            <RunPlace
              view={view()}
              nowMs={runs.nowMs()}
              lights={lights()}
              trouble={runs.trouble()}
              refusal={runs.refusal()}
              theme={theme.theme()}
              onTheme={theme.toggle}
              send={(request) => void runs.send(request)}
              playTest={alarm.playTest}
              arm={() => void alarm.arm()}
              exportRun={() => void exportRun(runs.openRun()?.id ?? '')}
            />
          )}
        </Show>
      }
    >
      <Shell
        at={route().place}
        theme={theme.theme()}
        onTheme={theme.toggle}
        banner={
          <>
            <OpenRunBanner show={runs.isOpen() && route().place !== 'run'} />
            <UpdateBanner show={updates.waiting() && !runs.isOpen()} onTake={updates.take} />
            <WriterBanner show={!mayWrite() && device.lock() !== 'asking'} onTakeOver={() => device.tabLock.steal()} />
          </>
        }
      >
        <Switch>
          <Match when={route().place === 'kitchen'}>
            <KitchenPlace
              kitchen={kitchens.kitchen()}
              demos={DEMOS}
              problems={kitchens.problems()}
              onDemo={(id) => void openDemo(id)}
              onOpenFile={() => void openFile()}
              onSaveFile={() => offerFile('kitchen.kitchen.json', kitchens.fileText(), 'application/json')}
              onChange={kitchens.put}
              onPlan={() => go({ place: 'plan' })}
            />
          </Match>
          <Match when={route().place === 'plan' && kitchens.plan()}>
            {(plan) => <PlanPlace plan={plan()} openRun={runs.isOpen()} onStart={() => void startRun()} />}
          </Match>
          <Match when={route().place === 'record'}>
            <RecordPlace
              runs={runs.runs()}
              openId={route().id}
              readFacts={runs.facts}
              onSaveText={(name, text) => offerFile(name, text, 'text/plain')}
              onExport={(id) => void exportRun(id)}
              onImport={() => void importRun()}
              nowMs={runs.nowMs()}
            />
          </Match>
          <Match when={true}>
            <NoPlan place={route().place} />
          </Match>
        </Switch>
      </Shell>
    </Show>
  );
}
