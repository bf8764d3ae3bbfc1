import type { Backup } from '../../../core/backup/index.ts';
import { formatKitchen, parseKitchen } from '../../../core/kitchen/index.ts';
import type { KitchenStore } from '../../../host/kitchens/index.ts';
import { freeName } from '../kitchen/kitchen-library.ts';

type Ports = { readonly kitchens: KitchenStore; readonly newId: () => string };

/** Adds each kitchen of the file that is not here yet. */
export async function bringKitchens({ kitchens, newId }: Ports, from: Backup['kitchens']) {
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
