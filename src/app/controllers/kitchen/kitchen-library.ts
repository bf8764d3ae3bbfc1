import { createSignal } from 'solid-js';
import type { Kitchen, KitchenProblem } from '../../../core/kitchen/index.ts';
import type { KitchenStore, SavedKitchen } from '../../../host/kitchens/index.ts';

/** How long a deleted kitchen can be put back, ms: a week. */
export const PUT_BACK_MS = 7 * 24 * 3_600_000;

/** Longest name of a kitchen, letters: as the kitchen file has it. */
const LONGEST_NAME = 80;

/** "Flat", "Flat (2)", "Flat (3)", from 1. */
export const nthName = (wanted: string, n: number): string =>
  n === 1 ? wanted : `${wanted.slice(0, LONGEST_NAME - 6)} (${n})`;

/** The first of these names that nobody has. */
export function freeName(wanted: string, taken: readonly string[]): string {
  for (let n = 1; ; n += 1) {
    const name = nthName(wanted, n);
    if (!taken.includes(name)) return name;
  }
}

type Kept = { readonly kitchen: Kitchen } | { readonly problems: readonly KitchenProblem[] };

/** The kitchens kept on this tablet. Every promise may reject with StorageError. */
export function createKitchenLibrary(store: KitchenStore, nowMs: () => number) {
  const [rows, setRows] = createSignal<readonly SavedKitchen[]>([]);
  const files = () => import('./kitchen-files.ts');

  const refresh = async (): Promise<void> => {
    const all = await store.list();
    const forgotten = all.filter(
      (row) => row.removedWallMs !== undefined && nowMs() - row.removedWallMs > PUT_BACK_MS,
    );
    for (const { id } of forgotten) await store.remove(id);
    setRows(all.filter((row) => !forgotten.includes(row)));
  };
  /** What each kitchen was when this page read or wrote it last: another page may change it meanwhile. */
  const known = new Map<string, string>();
  const changedElsewhere = (row: SavedKitchen): boolean =>
    row.removedWallMs !== undefined || row.text !== (known.get(row.id) ?? row.text);
  /** False: another page changed or deleted it since it was read here, and nothing was written. */
  const save = async (id: string, kitchen: Kitchen): Promise<boolean> => {
    const { formatKitchen } = await files();
    const text = formatKitchen(kitchen);
    const there = await store.read(id);
    if (there && changedElsewhere(there)) return false;
    const row: SavedKitchen = { id, name: kitchen.name, savedWallMs: nowMs(), text };
    await store.save(row);
    known.set(id, text);
    setRows((old) => [row, ...old.filter((one) => one.id !== id)]);
    return true;
  };
  const read = async (id: string): Promise<Kept | undefined> => {
    const row = await store.read(id);
    if (!row) return undefined;
    known.set(id, row.text);
    const { parseKitchen } = await files();
    return parseKitchen(row.text);
  };
  const kept = () => rows().filter((row) => row.removedWallMs === undefined);
  /** Names of deleted kitchens are free again. */
  const free = (wanted: string): string =>
    freeName(
      wanted,
      kept().map((row) => row.name),
    );
  const remove = async (id: string): Promise<void> => {
    const row = await store.read(id);
    if (row) await store.save({ ...row, removedWallMs: nowMs() });
    await refresh();
  };
  /** Under its own name, or the next free one when that was given away meanwhile. */
  const putBack = async (id: string): Promise<void> => {
    const row = await store.read(id);
    if (!row) return;
    const outcome = await read(id);
    const name = free(row.name);
    const { removedWallMs: _, ...rest } = row;
    await store.save(rest);
    if (name !== row.name && outcome && 'kitchen' in outcome)
      await save(id, { ...outcome.kitchen, name });
    await refresh();
  };
  return {
    kept,
    removed: () => rows().filter((row) => row.removedWallMs !== undefined),
    freeName: free,
    refresh,
    save,
    read,
    remove,
    putBack,
  };
}

export type KitchenLibrary = ReturnType<typeof createKitchenLibrary>;
