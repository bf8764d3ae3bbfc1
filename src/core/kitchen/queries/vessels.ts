import type { Vessel } from '../model/kitchen.ts';

/** Kettles and pots that are heated on a burner. */
export function standsOnStove({ kind }: Pick<Vessel, 'kind'>): boolean {
  return kind === 'stove-kettle' || kind === 'pot';
}

/** Kettles and urns with a plug. */
export function isElectric(vessel: Pick<Vessel, 'kind'>): boolean {
  return !standsOnStove(vessel);
}
