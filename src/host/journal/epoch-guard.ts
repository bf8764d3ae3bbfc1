import { promisifyRequest } from 'idb-keyval';
import { JournalStoreError } from '../../core/journal/index.ts';
import { StorageError, type Tables } from '../database/index.ts';

/** Keys of the records of a run, all or from a number on: a list sorts after every number. */
export function entriesOf(runId: string, fromSeq?: number): IDBKeyRange {
  return IDBKeyRange.bound(fromSeq === undefined ? [runId] : [runId, fromSeq], [runId, []]);
}

export async function epochOf(tables: Tables, runId: string): Promise<number> {
  const stored = await promisifyRequest<unknown>(tables('epochs').get(runId));
  return typeof stored === 'number' ? stored : 0;
}

/** Refuses a writer that is not the latest, inside the transaction of its write. No epoch at all: the data was deleted from outside. */
export async function checkEpoch(tables: Tables, runId: string, epoch: number): Promise<void> {
  const stored = await epochOf(tables, runId);
  if (stored === 0) {
    throw new JournalStoreError(
      'gone',
      `Run ${runId} has no epoch any more: the browser’s data was cleared.`,
    );
  }
  if (stored !== epoch) {
    throw new JournalStoreError(
      'fenced',
      `Writer ${epoch} of run ${runId} was replaced (stored: ${stored}). Another page writes it now.`,
    );
  }
}

/** Number of the last record stored, 0 when there is none. */
export async function lastSeq(tables: Tables, runId: string): Promise<number> {
  const cursor = await promisifyRequest<IDBCursor | null>(
    tables('records').openKeyCursor(entriesOf(runId), 'prev'),
  );
  const key = cursor?.key;
  return Array.isArray(key) && typeof key[1] === 'number' ? key[1] : 0;
}

/** Passes a result on, and names every failure as the port promises. */
export async function named<T>(work: Promise<T>): Promise<T> {
  try {
    return await work;
  } catch (error) {
    if (error instanceof JournalStoreError) throw error;
    if (error instanceof StorageError) throw new JournalStoreError(error.code, error.message);
    const message = error instanceof Error ? error.message : String(error);
    throw new JournalStoreError('unknown', message);
  }
}
