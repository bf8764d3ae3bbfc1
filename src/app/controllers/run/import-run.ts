import { importJournal, type JournalStore, type StoredRun } from '../../../core/journal/index.ts';
import { readRun } from '../../../core/import/index.ts';
import type { Readings } from '../../../core/run/index.ts';
import { message } from '../../../core/messages/index.ts';
import { sayPlain } from '../../context/language.ts';
import { ToldError } from '../failures/reason.ts';

/**
 * A run from another tablet, checked whole, comes in under a new
 * id. One that is not closed goes on here; so it is refused while another is open.
 * @throws ToldError for a file that cannot come in; JournalStoreError
 */
export async function importRun(
  store: JournalStore,
  text: string,
  id: string,
  now: Readings,
): Promise<StoredRun> {
  const file = importJournal(text);
  if ('problem' in file) throw new ToldError(file.problem);
  const read = readRun(file.entries, sayPlain);
  if ('problems' in read) throw new ToldError(read.problems[0] ?? message('shell.import.no-plan'));
  const { entries, state } = read;
  const closed = state.status === 'closed';
  const open = (await store.listRuns()).find((run) => !run.closed);
  if (!closed && open) throw new ToldError(message('shell.import.open-run', { open: open.name }));
  const entry: StoredRun = {
    id,
    name: state.plan.kitchen.name,
    openedWallMs: now.wallMs,
    closed,
    ...(state.closedAs !== null && { closedAs: state.closedAs }),
  };
  const journal = await store.openRun(entry);
  await journal.append(entries);
  await journal.close();
  return entry;
}
