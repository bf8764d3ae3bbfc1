import { exportJournal, type JournalStore, type StoredEntry } from '../../../core/journal/index.ts';

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
