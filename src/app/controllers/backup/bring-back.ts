import { readBackup, type Backup } from '../../../core/backup/index.ts';
import { problemMessage } from '../../../core/kitchen/index.ts';
import type { Message } from '../../../core/messages/index.ts';
import type { Readings } from '../../../core/run/index.ts';
import { LEFT_OUT } from '../kitchen/planning.ts';
import { bringKitchens } from './bring-kitchens.ts';
import { bringRuns } from './bring-runs.ts';
import type { Kept } from './everything.ts';

/** What came of a backup; nothing that was here is changed or taken out by it. */
export type BroughtBack = {
  readonly kitchens: number;
  readonly runs: number;
  /** Kitchens and runs that are here already: nothing in the file is more than what is here. */
  readonly same: number;
  /** What stays out, and why. */
  readonly left: readonly Message[];
};

type Ports = Kept & { readonly newId: () => string; readonly readClocks: () => Readings };

/** Choices of the file for which nothing was chosen here; those of a run under its id here, or not at all. */
async function bringChoices(
  { settings, journals }: Ports,
  from: Backup['settings'],
  idsHere: ReadonlyMap<string, string>,
): Promise<void> {
  const here = await settings.readAll();
  const runs = new Set((await journals.listRuns()).map(({ id }) => id));
  for (const [named, value] of Object.entries(from)) {
    const isOfRun = named.startsWith(LEFT_OUT);
    const idThere = named.slice(LEFT_OUT.length);
    // A file of before does not say its runs' ids; on the tablet that saved it they are the same.
    const id = idsHere.get(idThere) ?? idThere;
    const name = isOfRun ? LEFT_OUT + id : named;
    if ((!isOfRun || runs.has(id)) && !Object.hasOwn(here, name)) await settings.write(name, value);
  }
}

/**
 * Brings back what lies in a backup and is not here yet. A kitchen whose name was given away comes
 * under the next free one; a run is checked as one from another tablet is.
 * @throws StorageError, JournalStoreError; what was written before stays
 */
export async function bringBack(
  ports: Ports,
  text: string,
): Promise<BroughtBack | { readonly refused: Message }> {
  const read = readBackup(text);
  if ('refused' in read) return { refused: problemMessage(read.refused) };
  const kitchens = await bringKitchens(ports, read.backup.kitchens);
  const runs = await bringRuns(ports, read.backup.runs);
  await bringChoices(ports, read.backup.settings, runs.idsHere);
  return {
    kitchens: kitchens.brought,
    runs: runs.brought,
    same: kitchens.same + runs.same,
    left: [...read.problems.map(problemMessage), ...runs.left],
  };
}
