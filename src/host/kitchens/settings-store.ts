import { entries, set } from 'idb-keyval';
import { keyValues, type Database } from '../database/index.ts';

/** Small choices of a person (theme, language, units). Every promise rejects with StorageError and nothing else. */
export type SettingsStore = {
  /** All settings as stored; the reader checks each, since an older app may have written it. */
  readAll(): Promise<Readonly<Record<string, unknown>>>;
  write(name: string, value: string | number | boolean): Promise<void>;
};

export function createSettingsStore(database: Database): SettingsStore {
  // Losing the last choice in a power cut costs a tap; not waiting for the disk keeps switches quick.
  const table = keyValues(database, 'settings', 'relaxed');
  return {
    readAll: async () => Object.fromEntries(await entries<string, unknown>(table)),
    write: (name, value) => set(name, value, table),
  };
}
