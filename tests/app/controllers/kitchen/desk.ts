import { readFileSync } from 'node:fs';
import { parseKitchen, type Kitchen } from '../../../../src/core/kitchen/index.ts';
import type { Message } from '../../../../src/core/messages/index.ts';
import type { SavedKitchen } from '../../../../src/host/kitchens/index.ts';
import { createKitchenController } from '../../../../src/app/controllers/kitchen/kitchen-controller.ts';
import { withOpening } from '../../../../src/app/controllers/kitchen/kitchen-opening.ts';
import { askHere } from '../planner/ask-here.ts';

export const FLAT = readFileSync('demo-kitchens/flat-coils.kitchen.json', 'utf8');

export const demoText = (id: string): Promise<string | undefined> =>
  Promise.resolve(id === 'flat-coils' ? FLAT : undefined);

export function flat(): Kitchen {
  const outcome = parseKitchen(FLAT);
  if ('problems' in outcome) throw new Error('The demo does not parse.');
  return outcome.kitchen;
}

/** Both stores in memory; `failing` makes each write reject. */
export function tablet(textOf = demoText) {
  const rows = new Map<string, SavedKitchen>();
  const settings = new Map<string, unknown>();
  const told: Message[] = [];
  const world = { wallMs: 1000, ids: 0, failing: false, rows, settings, writes: 0, told };
  const tell = (message: Message): void => void told.push(message);
  const desk = () =>
    withOpening(
      createKitchenController({
        store: {
          list: async () => [...rows.values()].toSorted((a, b) => b.savedWallMs - a.savedWallMs),
          read: async (id) => rows.get(id),
          save: async (row) => {
            world.writes += 1;
            if (world.failing) throw new Error('full');
            rows.set(row.id, row);
          },
          remove: async (id) => void rows.delete(id),
        },
        settings: {
          readAll: async () => Object.fromEntries(settings),
          write: async (name, value) => void settings.set(name, value),
        },
        nowMs: () => (world.wallMs += 1),
        newId: () => `k${(world.ids += 1)}`,
        tell,
        ask: askHere,
      }),
      textOf,
      tell,
    );
  return { world, desk };
}
