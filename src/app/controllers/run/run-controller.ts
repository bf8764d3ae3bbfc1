import { createSignal } from 'solid-js';
import type { StoredRun } from '../../../core/journal/index.ts';
import type { Plan } from '../../../core/plan/index.ts';
import type { Observation, Request, RunView } from '../../../core/run/index.ts';
import type { LeaderSilence } from '../../../host/tab-lock/index.ts';
import { createLostRun } from './lost-run.ts';
import { reasonOf, ToldError } from '../failures/reason.ts';
import { OpenRun } from './open-run.ts';
import { createRunFiles } from './run-files.ts';
import type { RunControllerDeps } from './session-ports.ts';
import { ONLY_SHOWS, type Trouble } from './trouble.ts';

/** What the screen shows of the open run. */
function createShown(deps: RunControllerDeps) {
  const [view, setView] = createSignal<RunView>();
  const [trouble, setTrouble] = createSignal<Trouble>();
  const [nowMs, setNowMs] = createSignal(deps.readClocks().wallMs);
  const [otherLead, setOtherLead] = createSignal<LeaderSilence>();
  const open = new OpenRun(deps, {
    onView: (next) => {
      setNowMs(deps.readClocks().wallMs);
      setView(() => next);
    },
    onTrouble: setTrouble,
    onRefusal: (refusal) => deps.tell(refusal.message),
    onOtherLead: setOtherLead,
  });
  return { view, setView, trouble, setTrouble, nowMs, otherLead, open };
}

/** The page failed outside the queue: the record of the open run that is led here says so, once for each text. */
function createFailureNotes(
  view: () => RunView | undefined,
  note: (text: string) => Promise<boolean> | undefined,
) {
  const noted = new Set<string>();
  return async (text: string): Promise<void> => {
    if (noted.has(text) || !view() || view()?.status === 'closed') return;
    noted.add(text);
    await note(text);
  };
}

/** What is damaged stays so; what the store could not read may be read the next time. */
function unreadableBy(error: unknown): Trouble {
  const kind = error instanceof ToldError ? 'read-only' : 'unreadable';
  return { kind, message: reasonOf(error) };
}

/** Why a press is not taken by a run that is damaged; what the device tells is no press. */
function damageTold(trouble: Trouble | undefined, { kind }: { readonly kind: string }) {
  return trouble?.kind === 'read-only' && !kind.startsWith('alarm-') ? trouble.message : undefined;
}

/** Whoever asks while it goes on waits for the one that goes on. */
function oneAtATime<A extends unknown[]>(act: (...of: A) => Promise<void>) {
  let going: Promise<void> | undefined;
  return (...of: A): Promise<void> =>
    (going ??= act(...of).finally(() => {
      going = undefined;
    }));
}

/** The runs on this tablet, and the one that is open: led here, or only shown. */
export function createRunController(deps: RunControllerDeps) {
  const [runs, setRuns] = createSignal<readonly StoredRun[]>([]);
  const [isRead, setIsRead] = createSignal(false);
  const openRun = () => runs().find((run) => !run.closed);
  const lostRun = createLostRun(openRun);
  const { setView, setTrouble, open, ...shown } = createShown(deps);
  const { view, trouble } = shown;
  const { tell } = deps;

  const unreadable = (error: unknown) => setTrouble(unreadableBy(error));
  const refresh = async (): Promise<void> => {
    try {
      const listed = await deps.store.listRuns();
      lostRun.check(listed);
      setRuns(listed);
      setIsRead(true);
      if (trouble()?.kind === 'unreadable') setTrouble(undefined);
    } catch (error) {
      // What cannot be read is not gone: the list stays as it was, and the person is told.
      if (!trouble()) unreadable(error);
    }
  };
  /** Changes which run is open. A store that refuses is told, never swallowed; the next turn tries again. */
  const change = async (to: Promise<void>): Promise<void> => {
    try {
      await to;
      if (trouble()?.kind === 'taken-over') setTrouble(undefined);
      await refresh();
    } catch (error) {
      unreadable(error);
    }
  };
  // What could not begin is no run that cannot be read: the next reading of the list does not mend it.
  const begin = oneAtATime((plan: Plan, kitchen?: string) =>
    change(open.draft(plan, kitchen).catch((error: unknown) => tell(reasonOf(error)))),
  );
  return {
    ...shown,
    runs,
    /** The list was read: what is not in it is not there. */
    isRead,
    refresh,
    openRun,
    lostRun,
    isOpen: () => view() !== undefined && view()?.status !== 'closed',
    /** An open one must be closed first. Pressed twice it begins once. */
    async start(plan: Plan, kitchen?: string): Promise<void> {
      if (!deps.mayWrite()) return tell(ONLY_SHOWS);
      // One that is listed is being opened, or cannot be shown: then that is said over every page.
      if (!openRun() || view()?.status === 'closed') await begin(plan, kitchen);
    },
    reopen: (entry: StoredRun) => change(open.reopen(entry)),
    watch: (entry: StoredRun) => open.watch(entry),
    handOver: () => open.handOver(),
    /** The run that is open here was put aside: what this page had of it is let go of. */
    async letGo(): Promise<void> {
      await open.leave();
      setView(undefined);
      setTrouble(undefined);
      await refresh();
    },
    /**
     * The one step between a press and the queue of the run. False when it was
     * refused or could not be stored, or when no run is led here.
     */
    async send(input: Request | Observation): Promise<boolean> {
      const why = open.onlyShown ? ONLY_SHOWS : damageTold(trouble(), input);
      if (why) tell(why);
      const done = (await (await open.led())?.send(input)) ?? false;
      if (view()?.status === 'closed') await refresh();
      return done;
    },
    broke: createFailureNotes(shown.view, (text) => open.session?.send({ kind: 'note', text })),
    /** Once a second and at every wake-up. */
    async tick(): Promise<void> {
      await open.tick();
      // Nobody tells a page that only shows, or that could not read, of a run that was begun or ended elsewhere.
      const behind = !deps.mayWrite() && (!open.onlyShown || view()?.status === 'closed');
      if (behind || trouble()?.kind === 'unreadable') await refresh();
    },
    heartbeat: () => open.heartbeat(),
    ...createRunFiles(deps, open, refresh),
  };
}
