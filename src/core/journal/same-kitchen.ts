import type { StoredRun } from './port.ts';

/** What a kitchen is known by: its id where it is kept on this tablet, and its name. */
export type KitchenOfRun = Pick<StoredRun, 'kitchen' | 'name'>;

/**
 * Is a run of this kitchen? By the id, which a new name does not change; by the name where either
 * has no id.
 */
export function isSameKitchen(run: KitchenOfRun, { kitchen, name }: KitchenOfRun): boolean {
  return run.kitchen !== undefined && kitchen !== undefined
    ? run.kitchen === kitchen
    : run.name === name;
}
