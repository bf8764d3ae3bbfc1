import type { Backup } from '../../../core/backup/index.ts';
import { formatKitchen, parseKitchen, type Kitchen } from '../../../core/kitchen/index.ts';
import type { KitchenStore, SavedKitchen } from '../../../host/kitchens/index.ts';
import { freeName, nthName } from '../kitchen/kitchen-library.ts';

type Ports = { readonly kitchens: KitchenStore; readonly newId: () => string };

async function listed(kitchens: KitchenStore): Promise<readonly SavedKitchen[]> {
  return (await kitchens.list()).filter((one) => one.removedWallMs === undefined);
}

/** Did it get this name when another had the one it wanted? */
function standsInFor(name: string, wanted: string): boolean {
  const n = / \((\d+)\)$/.exec(name)?.[1];
  return name === wanted || (n !== undefined && name === nthName(wanted, Number(n)));
}

/** Is it the kitchen of the file but for the number behind its name, which it got when it came? */
function isSame({ name, text }: SavedKitchen, kitchen: Kitchen): boolean {
  if (!standsInFor(name, kitchen.name)) return false;
  const kept = parseKitchen(text);
  return (
    'kitchen' in kept &&
    formatKitchen({ ...kept.kitchen, name: kitchen.name }) === formatKitchen(kitchen)
  );
}

/** Adds each kitchen of the file that is not here yet. */
export async function bringKitchens({ kitchens, newId }: Ports, from: Backup['kitchens']) {
  let brought = 0;
  let same = 0;
  // Two of the file that differ by such a number are two: only what was here before stands for one.
  const before = await listed(kitchens);
  for (const { savedWallMs, text } of from) {
    const here = await listed(kitchens);
    const outcome = parseKitchen(text);
    if ('problems' in outcome) continue;
    const { kitchen } = outcome;
    if (here.some((one) => one.text === text) || before.some((one) => isSame(one, kitchen))) {
      same += 1;
      continue;
    }
    const taken = here.map(({ name }) => name);
    const name = freeName(kitchen.name, taken);
    const renamed = formatKitchen({ ...kitchen, name });
    await kitchens.save({ id: newId(), name, savedWallMs, text: renamed });
    brought += 1;
  }
  return { brought, same };
}
