/**
 * Object stores of the app's one database, all with keys outside the values:
 * - `runs`: run id → its row in the list of runs;
 * - `epochs`: run id → number of the writer that may write;
 * - `records`: [run id, seq] → journal record;
 * - `heartbeats`: run id → last proof of life;
 * - `kitchens`: kitchen id → saved kitchen;
 * - `settings`: name → value.
 */
export const TABLES = ['runs', 'epochs', 'records', 'heartbeats', 'kitchens', 'settings'] as const;

export type TableName = (typeof TABLES)[number];

/** Grows by one with each change of `TABLES`. */
export const DATABASE_VERSION = 1;

/** Makes what is missing; never deletes. */
export function upgrade(database: IDBDatabase): void {
  for (const name of TABLES) {
    if (!database.objectStoreNames.contains(name)) database.createObjectStore(name);
  }
}
