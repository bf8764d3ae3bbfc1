import {
  decodeJournal,
  exportJournal,
  importJournal,
  type JournalStore,
  type StoredEntry,
  type StoredRun,
} from '../../../core/journal/index.ts';
import type { Readings } from '../../../core/run/index.ts';
import { say } from '../../context/language.ts';

/**
 * A run as a file, to keep it elsewhere or carry it to another tablet.
 * `inMemory`: what the page that leads it knows; more than the store has when
 * that cannot be written, or was deleted.
 */
export async function exportRun(
  store: JournalStore,
  runId: string,
  inMemory: readonly StoredEntry[] | undefined,
): Promise<string> {
  return exportJournal(inMemory ?? (await store.readAll(runId)));
}

/**
 * A run from another tablet, checked record by record, comes in under a new
 * id. One that is not closed goes on here; so it is refused while another is open.
 */
export async function importRun(
  store: JournalStore,
  text: string,
  id: string,
  now: Readings,
): Promise<StoredRun> {
  const file = importJournal(text);
  if ('problem' in file) throw new Error(say(file.problem));
  const { facts, entries, problem } = decodeJournal(file.entries);
  const first = facts[0]?.body;
  if (problem)
    throw new Error(
      `Nothing was brought in: the file is not whole at record ${problem.seq} (${problem.name}). Save the run again on the other tablet, and choose that file.`,
    );
  if (first?.kind !== 'drafted')
    throw new Error('The file does not begin with a plan. Choose another.');
  const closed = facts.some(({ body }) => body.kind === 'run-closed');
  const open = (await store.listRuns()).find((run) => !run.closed);
  if (!closed && open)
    throw new Error(
      `The run in the file is not closed, and the run “${open.name}” is open here; allowed: one open run. Close it first, then bring the file in.`,
    );
  const entry: StoredRun = { id, name: first.plan.kitchen.name, openedWallMs: now.wallMs, closed };
  const journal = await store.openRun(entry);
  await journal.append(entries);
  await journal.close();
  return entry;
}
