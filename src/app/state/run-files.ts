import {
  decodeJournal,
  encodeRecords,
  exportJournal,
  importJournal,
  type JournalStore,
  type RunEntry,
} from '../../core/journal/index.ts';
import type { Readings } from '../../core/run/index.ts';

/** A run as a file, to keep it elsewhere or carry it to another tablet. */
export async function exportRun(store: JournalStore, runId: string): Promise<string> {
  return exportJournal(await store.readAll(runId));
}

/** A run from another tablet, checked record by record, comes in under a new id. */
export async function importRun(
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
