import { createEffect, createMemo, createSignal, onCleanup, onMount, untrack } from 'solid-js';
import type { RunStatus } from '../../core/run/index.ts';
import { driveTurns } from '../../host/clocks/index.ts';
import { askToPersist, type Persistence } from '../../host/persist/index.ts';
import { createRunChoices, mayBeHeard } from '../pages/run/choices.ts';
import { createAlarm } from '../controllers/run/alarm.ts';
import { createDevice, type Device } from './device.ts';
import { kitchenControllerOf } from '../controllers/kitchen/kitchen-opening.ts';
import { createPlanning } from '../controllers/kitchen/planning.ts';
import { createRoute } from './route.ts';
import { createRunController } from '../controllers/run/run-controller.ts';
import { createTheme } from './theme.ts';
import { createUpdates } from './updates.ts';

/** When this app was built, ms: no honest clock shows less. Set by the build. */
declare const BUILT_WALL_MS: number;

function isWorking(status: RunStatus | undefined): boolean {
  return status !== undefined && status !== 'closed' && status !== 'drafting';
}

/** Whether the browser keeps what is stored, asked once when it is first wanted. */
function askOnce(wanted: () => boolean) {
  const [kept, setKept] = createSignal<Persistence>('unknown');
  const isWanted = createMemo(wanted);
  createEffect(() => {
    if (isWanted()) void askToPersist().then(setKept);
  });
  return kept;
}

/** Look and run as this household left them. */
function createKeptChoices(settings: Device['settings']) {
  const keep = (name: string, value: string | number | boolean): void => {
    settings.write(name, value).catch(() => undefined);
  };
  const theme = createTheme((name) => keep('theme', name));
  const choices = createRunChoices(keep);
  const restore = (stored: Readonly<Record<string, unknown>>): void => {
    theme.restore(stored['theme']);
    choices.restore(stored);
  };
  onMount(() => void settings.readAll().then(restore, () => undefined));
  return { theme, choices };
}

/** Device, desks, alarm and clock, wired together once for the page. */
export function createAppContext() {
  const device = createDevice(() => runs.handOver());
  const [route, go] = createRoute();
  const { journals, settings } = device;
  const { theme, choices } = createKeptChoices(settings);
  const nowMs = (): number => device.readClocks().wallMs;
  const planning = createPlanning({ journals, settings, nowMs });
  const kitchens = kitchenControllerOf(device, planning);
  const mayWrite = createMemo(
    () => device.lock() === 'leader' || device.lock() === 'not-supported',
  );
  const runs = createRunController({
    store: journals,
    readClocks: device.readClocks,
    newId: device.newId,
    builtWallMs: BUILT_WALL_MS,
    mayWrite,
  });
  const alarm = createAlarm();
  const updates = createUpdates(async () => (await journals.listRuns()).some((run) => !run.closed));
  onMount(() => {
    void runs.refresh();
    const { page: place, id } = route();
    void (place === 'plan' && id ? kitchens.openDemo(id) : kitchens.openLast());
  });
  // An open run is taken up again as soon as this page may write it; nobody has to look for it.
  // The list is read anew after each opening: the same run is opened again only while it could not be read.
  const openRun = createMemo(runs.openRun, undefined, {
    equals: (a, b) => a?.id === b?.id && !untrack(runs.trouble),
  });
  createEffect(() => {
    const open = openRun();
    if (open && mayWrite()) void runs.reopen(open);
    // Another page leads it: this one shows it and writes nothing.
    else if (open && device.lock() !== 'asking') void runs.watch(open);
    if (open && location.hash === '') go({ page: 'run' });
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
    // The page that leads makes the sound; one that only shows steps in when that one is no longer heard from.
    const sounds = runs.otherLead() !== 'beating';
    alarm.follow(view, (family) => sounds && mayBeHeard(choices.choices(), family));
    if (view && !runs.otherLead()) for (const told of alarm.tellings(view)) void runs.send(told);
  });
  const working = createMemo(() => isWorking(runs.view()?.status));
  // A tablet that is never switched off asks for a newer app when nothing can be disturbed by it.
  const closed = createMemo(() => runs.view()?.status === 'closed');
  createEffect(() => closed() && updates.check());
  createEffect(() => (working() ? device.wakeLock.keep() : device.wakeLock.letGo()));

  // Asked when there is something to keep: some browsers ask the person.
  const kept = askOnce(() => runs.view() !== undefined);

  return {
    kept,
    device,
    route,
    go,
    theme,
    choices,
    planning,
    kitchens,
    runs,
    alarm,
    updates,
    mayWrite,
  };
}

export type AppContext = ReturnType<typeof createAppContext>;
