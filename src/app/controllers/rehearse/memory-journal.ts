import type { JournalStore, StoredEntry } from '../../../core/journal/index.ts';

/**
 * A journal that is kept nowhere: it hands on what is written, and forgets
 * it. For one run, written by one page.
 */
export function createMemoryJournal(
  onEntries: (entries: readonly StoredEntry[]) => void,
): JournalStore {
  const nothing = (): Promise<void> => Promise.resolve();
  const empty = (): Promise<readonly never[]> => Promise.resolve([]);
  return {
    listRuns: empty,
    readAll: empty,
    readHeartbeat: () => Promise.resolve(null),
    openRun: ({ id }) =>
      Promise.resolve({
        runId: id,
        epoch: 1,
        readAll: empty,
        append: (entries) => {
          onEntries(entries);
          return nothing();
        },
        dropFrom: nothing,
        writeHeartbeat: nothing,
        describe: nothing,
        close: nothing,
      }),
  };
}
