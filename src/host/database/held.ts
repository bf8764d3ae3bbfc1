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
  const others = TABLES.filter((name) => !tables.includes(name));
  try {
    const answers = Promise.any(others.map((name) => answerOf(connection, name)));
    await withTimeout('database', PROBE_LIMIT_MS, answers);
    return true;
  } catch {
    return false;
  }
}

/** Resolves when the table answers. */
function answerOf(connection: IDBDatabase, name: TableName): Promise<void> {
  return new Promise((resolve, reject) => {
    const asked = connection.transaction([name], 'readonly').objectStore(name).count();
    asked.addEventListener('success', () => resolve());
    asked.addEventListener('error', () => reject(asked.error ?? new Error('no count')));
  });
}
