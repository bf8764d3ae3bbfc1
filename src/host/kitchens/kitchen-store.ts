import { del, get, set, values } from 'idb-keyval';
import { keyValues, type Database } from '../database/index.ts';

/** A kitchen as its file's text: what is stored is what would be exported, and is parsed when read. */
export type SavedKitchen = {
  readonly id: string;
  readonly name: string;
  readonly savedWallMs: number;
  readonly text: string;
  /** When a person deleted it; until it is forgotten it can be put back. */
  readonly removedWallMs?: number;
};

/** Every promise rejects with StorageError and nothing else. */
export type KitchenStore = {
  /** The latest saved first, the deleted ones among them. */
  list(): Promise<readonly SavedKitchen[]>;
  read(id: string): Promise<SavedKitchen | undefined>;
  /** On disk when resolved. */
  save(kitchen: SavedKitchen): Promise<void>;
  /** For good. */
  remove(id: string): Promise<void>;
};

export function createKitchenStore(database: Database): KitchenStore {
  const table = keyValues(database, 'kitchens');
  return {
    async list() {
      const all = await values<SavedKitchen>(table);
      return all.toSorted((a, b) => b.savedWallMs - a.savedWallMs);
    },
    read: (id) => get<SavedKitchen>(id, table),
    save: (kitchen) => set(kitchen.id, kitchen, table),
    remove: (id) => del(id, table),
  };
}
