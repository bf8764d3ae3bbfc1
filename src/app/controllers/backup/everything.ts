import { formatBackup, type Backup } from '../../../core/backup/index.ts';
import type { JournalStore } from '../../../core/journal/index.ts';
import type { KitchenStore, SettingsStore } from '../../../host/kitchens/index.ts';

/** All that a tablet keeps. */
export type Kept = {
  readonly kitchens: KitchenStore;
  readonly journals: JournalStore;
  readonly settings: SettingsStore;
  /** A run as it is saved to a file of its own. */
  readonly exportText: (runId: string) => Promise<string>;
};

/** What is of one page of one run is worth nothing on another tablet. */
const OF_A_RUN = /^run-note-/;

/** Choices that may lie in a file: plain values, none of a run that is open. */
async function choicesOf(settings: SettingsStore): Promise<Backup['settings']> {
  const plain = ['string', 'number', 'boolean'];
  const all = Object.entries(await settings.readAll());
  return Object.fromEntries(
    all.filter(([name, value]) => plain.includes(typeof value) && !OF_A_RUN.test(name)),
  ) as Backup['settings'];
}

/** Everything as one file: each kitchen that is not deleted, each run, ticks and choices. */
export async function everythingAsText(kept: Kept): Promise<string> {
  const kitchens = (await kept.kitchens.list()).filter(
    ({ removedWallMs }) => removedWallMs === undefined,
  );
  const runs: Backup['runs'][number][] = [];
  for (const { id, name, openedWallMs } of await kept.journals.listRuns()) {
    const journal: unknown = JSON.parse(await kept.exportText(id));
    runs.push({ id, name, openedWallMs, journal });
  }
  return formatBackup({
    kitchens: kitchens.map(({ name, savedWallMs, text }) => ({ name, savedWallMs, text })),
    runs,
    settings: await choicesOf(kept.settings),
  });
}
