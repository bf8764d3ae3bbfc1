import { createSignal } from 'solid-js';
import {
  decodeJournal,
  encodeRecords,
  exportJournal,
  importJournal,
  type JournalStore,
  type RunEntry,
} from '../../core/journal/index.ts';
import type { Plan } from '../../core/plan/index.ts';
import type { Fact, Readings, Request, RunView } from '../../core/run/index.ts';
import { RunSession, type SessionDeps, type SessionListener, type Trouble } from './run-session.ts';

/** How long a refusal stays on the screen, ms. */
const REFUSAL_SHOWN_MS = 8000;

/** The runs on this tablet, and the one that is open. */
export function createRunDesk(deps: SessionDeps) {
  const [runs, setRuns] = createSignal<readonly RunEntry[]>([]);
  const [view, setView] = createSignal<RunView>();
  const [trouble, setTrouble] = createSignal<Trouble>();
  const [refusal, setRefusal] = createSignal<string>();
  const [nowMs, setNowMs] = createSignal(deps.readClocks().wallMs);
  let session: RunSession | undefined;
  let refusalTimer: ReturnType<typeof setTimeout> | undefined;

  /** A sentence for the person, for a while. */
  const tell = (message: string) => {
    setRefusal(message);
    clearTimeout(refusalTimer);
    refusalTimer = setTimeout(() => setRefusal(undefined), REFUSAL_SHOWN_MS);
  };
  const listener: SessionListener = {
    onView: (next) => {
      setNowMs(deps.readClocks().wallMs);
      setView(() => next);
    },
    onTrouble: setTrouble,
    onRefusal: ({ message }) => tell(message),
  };
  const refresh = async () => {
    setRuns(await deps.store.listRuns().catch(() => []));
  };
  const asTrouble = (error: unknown) =>
    setTrouble({
      kind: 'storage',
      message: error instanceof Error ? error.message : String(error),
    });

  return {
    runs,
    view,
    trouble,
    refusal,
    nowMs,
    tell,
    refresh,
    openRun: () => runs().find((run) => !run.closed),
    isOpen: () => session !== undefined && view()?.status !== 'closed',
    /** Begins a run of a plan; an open one must be closed first. */
    async start(plan: Plan): Promise<void> {
      try {
        await session?.leave();
        session = await RunSession.draft(plan, deps, listener);
        await refresh();
      } catch (error) {
        asTrouble(error);
      }
    },
    /** Opens a stored run as the one writer of it. */
    async reopen(entry: RunEntry): Promise<void> {
      if (session?.entry.id === entry.id) return;
      try {
        await session?.leave();
        session = await RunSession.reopen(entry, deps, listener);
      } catch (error) {
        asTrouble(error);
      }
    },
    async send(request: Request): Promise<void> {
      await session?.send(request);
      if (view()?.status === 'closed') await refresh();
    },
    tick: () => session?.tick(),
    heartbeat: () => session?.heartbeat(),
    closing: () => session?.send({ kind: 'session-closed' }),
    facts: async (runId: string): Promise<readonly Fact[]> =>
      decodeJournal(await deps.store.readAll(runId)).facts,
    exportText: (runId: string): Promise<string> => exportRun(deps.store, runId),
    async importText(text: string): Promise<void> {
      try {
        await importRun(deps.store, text, deps.newId(), deps.readClocks());
        await refresh();
      } catch (error) {
        tell(error instanceof Error ? error.message : String(error));
      }
    },
  };
}

export type RunDesk = ReturnType<typeof createRunDesk>;

async function exportRun(store: JournalStore, runId: string): Promise<string> {
  return exportJournal(await store.readAll(runId));
}

/** A run from another tablet, checked record by record, comes in under a new id. */
async function importRun(
  store: JournalStore,
  text: string,
  id: string,
  now: Readings,
): Promise<void> {
  const file = importJournal(text);
  if ('problem' in file) throw new Error(file.problem);
  const { facts, problem } = decodeJournal(file.records);
  const first = facts[0]?.body;
  if (problem) throw new Error(problem.message);
  if (first?.kind !== 'drafted')
    throw new Error('The file does not begin with a plan. Choose another.');
  const closed = facts.some(({ body }) => body.kind === 'run-closed');
  const entry: RunEntry = { id, name: first.plan.kitchen.name, openedWallMs: now.wallMs, closed };
  const journal = await store.openRun(entry);
  await journal.append(encodeRecords(facts));
  await journal.close();
}
