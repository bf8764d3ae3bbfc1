import { createSignal } from 'solid-js';
import { decodeJournal, type RunEntry } from '../../core/journal/index.ts';
import type { Plan } from '../../core/plan/index.ts';
import type { Fact, Request, RunView } from '../../core/run/index.ts';
import { exportRun, importRun } from './run-files.ts';
import { RunSession, type SessionDeps, type SessionListener, type Trouble } from './run-session.ts';

/** How long a refusal stays on the screen, ms. */
const REFUSAL_SHOWN_MS = 8000;

function words(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

/** A sentence for the person, shown for a while. */
function createNotice() {
  const [notice, setNotice] = createSignal<string>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tell = (message: string): void => {
    setNotice(message);
    clearTimeout(timer);
    timer = setTimeout(() => setNotice(undefined), REFUSAL_SHOWN_MS);
  };
  return { notice, tell };
}

/** The runs on this tablet, and the one that is open. */
export function createRunDesk(deps: SessionDeps) {
  const [runs, setRuns] = createSignal<readonly RunEntry[]>([]);
  const [view, setView] = createSignal<RunView>();
  const [trouble, setTrouble] = createSignal<Trouble>();
  const [nowMs, setNowMs] = createSignal(deps.readClocks().wallMs);
  const { notice, tell } = createNotice();
  let session: RunSession | undefined;
  let opening: string | undefined;

  const listener: SessionListener = {
    onView: (next) => {
      setNowMs(deps.readClocks().wallMs);
      setView(() => next);
    },
    onTrouble: setTrouble,
    onRefusal: ({ message }) => tell(message),
  };
  const refresh = async (): Promise<void> => {
    setRuns(await deps.store.listRuns().catch(() => []));
  };
  /** Changes which run is open; a store that refuses is told, never swallowed. */
  const change = async (to: () => Promise<RunSession>): Promise<void> => {
    try {
      await session?.leave();
      session = await to();
      await refresh();
    } catch (error) {
      setTrouble({ kind: 'storage', message: words(error) });
    }
  };

  return {
    runs,
    view,
    trouble,
    notice,
    nowMs,
    tell,
    refresh,
    openRun: () => runs().find((run) => !run.closed),
    isOpen: () => view() !== undefined && view()?.status !== 'closed',
    /** Begins a run of a plan; an open one must be closed first. */
    start: (plan: Plan) => change(() => RunSession.draft(plan, deps, listener)),
    /** Opens a stored run as the one writer of it; asking twice opens once. */
    async reopen(entry: RunEntry): Promise<void> {
      if (session?.entry.id === entry.id || opening === entry.id) return;
      opening = entry.id;
      await change(() => RunSession.reopen(entry, deps, listener));
      opening = undefined;
    },
    /** False when it was refused or could not be stored. */
    async send(request: Request): Promise<boolean> {
      const done = (await session?.send(request)) ?? false;
      if (view()?.status === 'closed') await refresh();
      return done;
    },
    tick: () => session?.tick(),
    heartbeat: () => session?.heartbeat(),
    facts: async (runId: string): Promise<readonly Fact[]> =>
      decodeJournal(await deps.store.readAll(runId)).facts,
    exportText: (runId: string): Promise<string> => exportRun(deps.store, runId),
    async importText(text: string): Promise<void> {
      try {
        await importRun(deps.store, text, deps.newId(), deps.readClocks());
        await refresh();
      } catch (error) {
        tell(words(error));
      }
    },
  };
}

export type RunDesk = ReturnType<typeof createRunDesk>;
