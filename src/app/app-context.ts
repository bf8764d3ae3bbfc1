import { createEffect, createMemo, createSignal, onCleanup, onMount, untrack } from 'solid-js';
import { message } from '../core/messages/index.ts';
import type { RunStatus } from '../core/run/index.ts';
import { driveTurns } from '../host/clocks/index.ts';
import { askToPersist, type Persistence } from '../host/persist/index.ts';
import { APP_VERSION } from './context/version.ts';
import { createDevice, type Device } from './context/device.ts';
import { chooseLanguage, say } from './context/language.ts';
import { createNotice } from './context/notice.ts';
import { createRoute, languageAsked } from './context/route.ts';
import { createTheme } from './context/theme.ts';
import { createUpdates } from './context/updates.ts';
import { reasonOf } from './controllers/failures/reason.ts';
import { createAlarm } from './controllers/run/alarm.ts';
import { createRunChoices, mayBeHeard } from './controllers/run/run-choices.ts';
import { createRunController } from './controllers/run/run-controller.ts';

/** When this app was built, ms: no honest clock shows less. Set by the build. */
declare const BUILT_WALL_MS: number;

type Notice = ReturnType<typeof createNotice>;

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

/** What nothing else caught: it is told on the page and in the record of an open run, and the page goes on. */
function tellFailures(tell: (why: string) => void): void {
  // Without an error it is a remark of the browser (a layout that took two rounds), and nothing failed.
  const onError = ({ error, message: why }: ErrorEvent): void => {
    if (error !== null && error !== undefined) tell(why);
  };
  const onRejection = ({ reason }: PromiseRejectionEvent): void => tell(String(reason));
  addEventListener('error', onError);
  addEventListener('unhandledrejection', onRejection);
  onCleanup(() => {
    removeEventListener('error', onError);
    removeEventListener('unhandledrejection', onRejection);
  });
}

/** Theme, language and run as this household left them. */
function createKeptChoices(settings: Device['settings'], tell: Notice['tell']) {
  const notKept = (error: unknown): void =>
    tell(message('shell.choice-not-kept', { why: reasonOf(error) }));
  const keep = (name: string, value: string | number | boolean): void => {
    settings.write(name, value).catch(notKept);
  };
  const theme = createTheme((name) => keep('theme', name));
  const choices = createRunChoices(keep);
  const speak = (tag: string): Promise<void> =>
    chooseLanguage([tag]).catch((error: unknown) => tell(reasonOf(error)));
  const restore = (stored: Readonly<Record<string, unknown>>): void => {
    theme.restore(stored['theme']);
    choices.restore(stored);
    const language = stored['language'];
    // What the address asks for goes before what was chosen once.
    if (typeof language === 'string' && languageAsked(location.hash) === undefined)
      void speak(language);
  };
  onMount(() => void settings.readAll().then(restore, (error: unknown) => tell(reasonOf(error))));
  const chooseAndKeep = (tag: string): void => {
    keep('language', tag);
    void speak(tag);
  };
  return { theme, choices, chooseLanguage: chooseAndKeep };
}

/** Device, controllers, alarm and clocks, wired together once for the page. */
export function createAppContext() {
  const device = createDevice(() => runs.handOver());
  const [route, go] = createRoute();
  const { journals, settings } = device;
  const { notice, tell } = createNotice();
  const kept = createKeptChoices(settings, tell);
  const { choices } = kept;
  const mayWrite = createMemo(
    () => device.lock() === 'leader' || device.lock() === 'not-supported',
  );
  const runs = createRunController({
    store: journals,
    readClocks: device.readClocks,
    newId: device.newId,
    builtWallMs: BUILT_WALL_MS,
    appVersion: APP_VERSION,
    mayWrite,
    tell,
  });
  const alarm = createAlarm();
  tellFailures((why) => {
    tell(message('shell.failed', { why }));
    void runs.broke(say(message('shell.failed.note', { why })));
  });
  const updates = createUpdates(async () => (await journals.listRuns()).some((run) => !run.closed));
  onMount(() => void runs.refresh());
  // An open run is taken up again as soon as this page may write it; nobody has to look for it.
  // The list is read anew after each opening: the same run is opened again only while it could not be read.
  const openRun = createMemo(runs.openRun, undefined, {
    equals: (a, b) => a?.id === b?.id && untrack(runs.trouble)?.kind !== 'unreadable',
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
    if (view && !runs.otherLead())
      for (const outcome of alarm.outcomes(view)) void runs.send(outcome);
  });
  const working = createMemo(() => isWorking(runs.view()?.status));
  // A tablet that is never switched off asks for a newer app when nothing can be disturbed by it.
  const closed = createMemo(() => runs.view()?.status === 'closed');
  createEffect(() => closed() && updates.check());
  createEffect(() => (working() ? device.wakeLock.keep() : device.wakeLock.letGo()));

  return {
    ...kept,
    // Asked when there is something to keep: some browsers ask the person.
    persistence: askOnce(() => runs.view() !== undefined),
    device,
    route,
    go,
    notice,
    tell,
    runs,
    alarm,
    updates,
    mayWrite,
  };
}

export type AppContext = ReturnType<typeof createAppContext>;
