import type { VesselUnit } from '../../plan/index.ts';
import type { Plan1 } from './plan-1.ts';
import { written } from './written.ts';

const RESOURCE = 'vessel-';

/** A vessel of a plan of version 1 by the id of one of those alike: `kettle`, or `kettle-2` of two. */
export function vesselUnit(plan: Plan1, unit: string): VesselUnit {
  const { vessels } = plan.kitchen;
  const alone = vessels.find(({ id }) => id === unit);
  const [, id = unit, number = ''] = /^(.+)-(\d+)$/.exec(unit) ?? [];
  const oneOfSome = vessels.find((vessel) => vessel.id === id && vessel.count > 1);
  const vessel = alone ?? oneOfSome;
  // A kettle to be bought was in no kitchen: its resource alone knew its name.
  const bought = plan.resources.find((resource) => resource.id === `${RESOURCE}${unit}`)?.name;
  const name = vessel ? (alone ? vessel.name : `${vessel.name} ${number}`) : (bought ?? unit);
  return { id: vessel?.id ?? unit, unit, name: written(name) };
}

/** Id of the one that a step holds, by its demands; undefined: it holds none that version 1 named so. */
export function heldUnit(demands: Readonly<Record<string, number>>): string | undefined {
  const resource = Object.keys(demands).find((id) => id.startsWith(RESOURCE));
  return resource?.slice(RESOURCE.length);
}
