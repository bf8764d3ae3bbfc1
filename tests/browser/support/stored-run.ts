import type { Screen } from './screen.ts';

/** An entry of a run's journal as it is on the disk. */
export type StoredEntry = {
  readonly seq: number;
  readonly sum: string;
  readonly kind: string;
  readonly session: string;
  /** Of a note. */
  readonly text?: string;
};

/** Entries of the newest run as they are on the disk, read past the app. */
export function storedEntries(screen: Screen): Promise<readonly StoredEntry[]> {
  return screen.see(
    `new Promise((resolve, reject) => {
      const open = indexedDB.open('glowpour');
      open.onerror = () => reject(open.error);
      open.onsuccess = () => {
        const db = open.result;
        if (!db.objectStoreNames.contains('records')) { db.close(); return resolve([]); }
        const all = db.transaction(['records'], 'readonly').objectStore('records').getAll();
        all.onsuccess = () => {
          db.close();
          resolve(all.result.map((r) => ({ seq: r.seq, sum: r.sum, kind: r.fact?.body?.kind, session: r.fact?.at?.session, text: r.fact?.body?.text })));
        };
        all.onerror = () => reject(all.error);
      };
    })`,
  );
}

/** A run as a file, as far as the tests look into it. */
export type SavedRun = {
  entries: { seq: number; sum: string; fact: { body: { kind: string } } }[];
};

/** What saving the run hands to the device, read where the page makes it; `save` presses the button. */
export async function savedRun(screen: Screen, save: () => Promise<void>): Promise<SavedRun> {
  await screen.see(
    `{
      const make = URL.createObjectURL.bind(URL);
      globalThis.saved = undefined;
      URL.createObjectURL = (blob) => {
        blob.text().then((text) => (globalThis.saved = text));
        return make(blob);
      };
      undefined;
    }`,
  );
  await save();
  return JSON.parse(await screen.waitFor<string>('globalThis.saved', 'the file')) as SavedRun;
}
