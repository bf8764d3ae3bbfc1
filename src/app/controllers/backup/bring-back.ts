import { readBackup, type Backup } from '../../../core/backup/index.ts';
import { formatKitchen, parseKitchen, problemMessage } from '../../../core/kitchen/index.ts';
import { message, type Message } from '../../../core/messages/index.ts';
import type { Readings } from '../../../core/run/index.ts';
import { reasonOf } from '../failures/reason.ts';
import { freeName } from '../kitchen/kitchen-library.ts';
import { importRun } from '../run/import-run.ts';
import type { Kept } from './everything.ts';

/** What came of a backup; nothing that was here is changed or taken out by it. */
export type BroughtBack = {
  readonly kitchens: number;
  readonly runs: number;
  /** Kitchens and runs that are here already, letter by letter. */
  readonly same: number;
  /** What stays out, and why. */
  readonly left: readonly Message[];
};

type Ports = Kept & { readonly newId: () => string; readonly readClocks: () => Readings };

async function bringKitchens({ kitchens, newId }: Ports, from: Backup['kitchens']) {
  let brought = 0;
  let same = 0;
  for (const { savedWallMs, text } of from) {
    const here = (await kitchens.list()).filter((one) => one.removedWallMs === undefined);
    const outcome = parseKitchen(text);
    if ('problems' in outcome) continue;
    if (here.some((one) => one.text === text)) {
      same += 1;
      continue;
    }
    const taken = here.map(({ name }) => name);
    const name = freeName(outcome.kitchen.name, taken);
    const renamed = formatKitchen({ ...outcome.kitchen, name });
    await kitchens.save({ id: newId(), name, savedWallMs, text: renamed });
    brought += 1;
  }
  return { brought, same };
}

async function bringRuns(ports: Ports, from: Backup['runs']) {
  const { journals, exportText, newId, readClocks } = ports;
  const here = new Set<string>();
  for (const { id } of await journals.listRuns()) here.add(await exportText(id));
  const left: Message[] = [];
  let brought = 0;
  let same = 0;
  for (const [at, { name, openedWallMs, journal }] of from.entries()) {
    const text = `${JSON.stringify(journal)}\n`;
    if (here.has(text)) {
      same += 1;
      continue;
    }
    try {
      await importRun(journals, text, newId(), { ...readClocks(), wallMs: openedWallMs });
      here.add(text);
      brought += 1;
    } catch (error) {
      const path = `runs[${at}].journal`;
      left.push(message('record-page.restored.run', { path, name, why: reasonOf(error) }));
    }
  }
  return { brought, same, left };
}

/** Choices of the file for which nothing was chosen here. */
async function bringChoices({ settings }: Ports, from: Backup['settings']): Promise<void> {
  const here = await settings.readAll();
  for (const [name, value] of Object.entries(from))
    if (!Object.hasOwn(here, name)) await settings.write(name, value);
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
  await bringChoices(ports, read.backup.settings);
  return {
    kitchens: kitchens.brought,
    runs: runs.brought,
    same: kitchens.same + runs.same,
    left: [...read.problems.map(problemMessage), ...runs.left],
  };
}
