import type { JournalStore, StoredRun } from '../../../core/journal/index.ts';

/**
 * Closes a run whose journal is damaged, by a person's word: its row says that
 * it ended by a fault. Its entries stay as they are, to be seen and saved.
 * @throws JournalStoreError
 */
export async function putAside(store: JournalStore, run: StoredRun): Promise<void> {
  const journal = await store.openRun(run);
  await journal.describe({ ...run, closed: true, closedAs: 'failed' });
  await journal.close();
}
