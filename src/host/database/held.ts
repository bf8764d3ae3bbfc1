import { withTimeout } from '../timeout/index.ts';
import { TABLES, type TableName } from './tables.ts';

/** Longest wait for an answer from a table that nobody writes, ms. Common practice, no published source: a read takes a few. */
const PROBE_LIMIT_MS = 1000;

/**
 * Tables gave no answer: do others? Then the storage lives, and another page
 * holds these: it was frozen in the midst of writing, and its transaction,
 * which nobody else can end, bars all that comes after it.
 */
export async function othersAnswer(
  connection: IDBDatabase,
  tables: readonly TableName[],
): Promise<boolean> {
  const other = TABLES.find((name) => !tables.includes(name));
  if (!other) return false;
  try {
    const asked = connection.transaction([other], 'readonly').objectStore(other).count();
    const answer = new Promise<boolean>((resolve) => {
      asked.addEventListener('success', () => resolve(true));
      asked.addEventListener('error', () => resolve(false));
    });
    return await withTimeout('database', PROBE_LIMIT_MS, answer);
  } catch {
    return false;
  }
}
