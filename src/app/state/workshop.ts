import { createEffect, createMemo, createSignal, onCleanup, onMount } from 'solid-js';
import { driveTurns } from '../../host/clocks/index.ts';
import { askToPersist, type Persistence } from '../../host/persist/index.ts';
import { createAlarm } from './alarm.ts';
import { createDevice } from './device.ts';
import { createKitchenDesk } from './kitchen-desk.ts';
import { createRoute } from './route.ts';
import { createRunDesk } from './run-desk.ts';
import { createTheme } from './theme.ts';
import { createUpdates } from './updates.ts';

/** When this app was built, ms: no honest clock shows less. Set by the build. */
declare const BUILT_WALL_MS: number;

/** Device, desks, alarm and clock, wired together once for the page. */
export function createWorkshop() {
  const device = createDevice();
  const [route, go] = createRoute();
  const theme = createTheme(
    (name) => void device.settings.write('theme', name).catch(() => undefined),
  );
  const kitchens = createKitchenDesk(device.kitchens, () => device.readClocks().wallMs);
  const runs = createRunDesk({
    store: device.journals,
    readClocks: device.readClocks,
    newId: device.newId,
    builtWallMs: BUILT_WALL_MS,
  });
  const alarm = createAlarm();
  const updates = createUpdates(async () =>
    (await device.journals.listRuns()).some((run) => !run.closed),
  );
  const mayWrite = createMemo(
    () => device.lock() === 'leader' || device.lock() === 'not-supported',
  );

  onMount(() => {
    device.settings.readAll().then(
      (stored) => theme.restore(stored['theme']),
      () => undefined,
    );
    void runs.refresh();
    const { place, id } = route();
    void (place === 'plan' && id ? kitchens.openDemo(id) : kitchens.openLast());
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
      if (cause === 'woke') alarm.wake();
    },
    onHeartbeat: () => void runs.heartbeat(),
  });
  onCleanup(() => driver.stop());
  createEffect(() => {
    const view = runs.view();
    driver.wakeIn(view?.wakeInS ?? null);
    alarm.follow(view);
  });
  const working = createMemo(() => {
    const status = runs.view()?.status;
    return status !== undefined && status !== 'closed' && status !== 'drafting';
  });
  createEffect(() => (working() ? device.wakeLock.keep() : device.wakeLock.letGo()));

  const [kept, setKept] = createSignal<Persistence>('unknown');
  // Asked when there is something to keep: some browsers ask the person.
  const drafted = createMemo(() => runs.view() !== undefined);
  createEffect(() => {
    if (drafted()) void askToPersist().then(setKept);
  });

  return { kept, device, route, go, theme, kitchens, runs, alarm, updates, mayWrite };
}

export type Workshop = ReturnType<typeof createWorkshop>;
