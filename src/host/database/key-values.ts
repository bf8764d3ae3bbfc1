import type { UseStore } from 'idb-keyval';
import type { Database, Durability } from './database.ts';
import type { TableName } from './tables.ts';

/**
 * A store function for idb-keyval over one table. The library's own has no
 * durability option and does not wait for reads' transactions; this one opens
 * strict transactions and resolves on `complete`.
 */
export function keyValues(
  database: Database,
  table: TableName,
  durability: Durability = 'strict',
): UseStore {
  return (mode, callback) =>
    database.transact(
      [table],
      mode === 'versionchange' ? 'readwrite' : mode,
      (of) => callback(of(table)),
      durability,
    );
}
