import type { Burner, Kitchen, Vessel } from '../kitchen/index.ts';

/** Kettles and pots that are heated on a burner. */
export function standsOnStove({ kind }: Pick<Vessel, 'kind'>): boolean {
  return kind === 'stove-kettle' || kind === 'pot';
}

export function burnersIn(kitchen: Kitchen): readonly Burner[] {
  return kitchen.fixtures.flatMap((fixture) => (fixture.kind === 'cooktop' ? fixture.burners : []));
}

/** The burner that boils fastest. */
export function strongestBurner(kitchen: Kitchen): string | undefined {
  const [first, ...others] = burnersIn(kitchen);
  return others.reduce((best, one) => (best && one.ratedW > best.ratedW ? one : best), first)?.id;
}

/** Pots whose burner is gone, or that never had one, stand on the strongest there is. */
export function seatStovePots(kitchen: Kitchen): Kitchen {
  const known = new Set(burnersIn(kitchen).map(({ id }) => id));
  const lost = (vessel: Vessel) =>
    standsOnStove(vessel) && (vessel.burner === undefined || !known.has(vessel.burner));
  if (!kitchen.vessels.some(lost)) return kitchen;
  const burner = strongestBurner(kitchen);
  const vessels = kitchen.vessels.map((vessel): Vessel => {
    if (!lost(vessel)) return vessel;
    const { burner: _gone, ...bare } = vessel;
    return burner === undefined ? bare : { ...bare, burner };
  });
  return { ...kitchen, vessels };
}
