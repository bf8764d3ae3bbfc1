import {
  JournalStoreError,
  type JournalStore,
  type RunJournal,
  type StoredEntry,
  type StoredRun,
} from '../../../core/journal/index.ts';

/**
 * When the stored journal was deleted from outside while a page leads the run,
 * the page is the only place that has it: it is written down again whole.
 * Undefined when that is not what the error says.
 * @throws JournalStoreError when it cannot be written
 */
async function writeAnew(
  store: JournalStore,
  entry: StoredRun,
  records: readonly StoredEntry[],
  error: unknown,
): Promise<RunJournal | undefined> {
  if (!(error instanceof JournalStoreError) || !['lost', 'gone'].includes(error.code))
    return undefined;
  if ((await store.readAll(entry.id)).length > 0) return undefined;
  const journal = await store.openRun(entry);
  await journal.append(records);
  return journal;
}

/**
 * What could not be stored is stored now; gives the journal that goes on, another one where all had
 * to be written down anew.
 * @throws the reason why it cannot be stored yet
 */
export async function saveAgain(
  store: JournalStore,
  entry: StoredRun,
  journal: RunJournal,
  unsaved: readonly StoredEntry[],
  records: readonly StoredEntry[],
): Promise<RunJournal> {
  try {
    await journal.append(unsaved);
    return journal;
  } catch (error) {
    const anew = await writeAnew(store, entry, records, error);
    if (!anew) throw error;
    return anew;
  }
}
