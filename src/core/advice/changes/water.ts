import {
  burnersOf,
  countryOf,
  kettlePlateV,
  LIMITS,
  type Kitchen,
  type Vessel,
} from '../../kitchen/index.ts';
import type { Plan } from '../../plan/index.ts';
import type { Change } from './change.ts';

/** An ordinary kettle, L: common practice, no published source. */
const ORDINARY_L = 1.7;
/** An ordinary urn for a household: common practice, no published source. */
const URN = { maxFillL: 8, ratedW: 1500 } as const;
/** More circuits than this are not tried one by one. */
const MOST_CIRCUITS = 3;

/** Id of a vessel that comes to the kitchen: one that no other has. */
function freeId(kitchen: Kitchen, wish: string): string {
  const taken = new Set(kitchen.vessels.map(({ id }) => id));
  let id = wish;
  for (let n = 2; taken.has(id); n++) id = `${wish}-${n}`;
  return id;
}

/** The largest kettle of the kitchen: the next one is made like it, so that no pour gets smaller. */
function largest(kitchen: Kitchen, kind: Vessel['kind']): Vessel | undefined {
  return kitchen.vessels
    .filter((one) => one.kind === kind && (kind !== 'electric-kettle' || one.ratedW > 0))
    .toSorted((a, b) => b.maxFillL - a.maxFillL)[0];
}

function usualKettle(kitchen: Kitchen): Vessel {
  return {
    id: freeId(kitchen, 'second-kettle'),
    name: '',
    kind: 'electric-kettle',
    body: 'steel',
    maxFillL: largest(kitchen, 'stove-kettle')?.maxFillL ?? ORDINARY_L,
    ratedW: countryOf(kitchen.country)?.kettleW ?? 0,
    ratedV: kettlePlateV(kitchen.country, kitchen.supplyV),
    count: 1,
  };
}

/** Sockets that bear a kettle, the strongest first; those that one is on already last. */
function socketsOf(kitchen: Kitchen) {
  const taken = new Set(kitchen.vessels.map(({ circuit }) => circuit));
  const hard = new Set(
    kitchen.fixtures.flatMap((one) =>
      one.kind === 'cooktop'
        ? one.burners.map(({ circuit }) => circuit)
        : 'circuit' in one
          ? [one.circuit]
          : [],
    ),
  );
  return kitchen.circuits
    .filter(({ id, voltsV }) => voltsV === kitchen.supplyV && (taken.has(id) || !hard.has(id)))
    .toSorted((a, b) => Number(taken.has(a.id)) - Number(taken.has(b.id)) || b.ratingA - a.ratingA)
    .slice(0, MOST_CIRCUITS);
}

/** A second electric kettle: like the largest there is, on each circuit that bears one. */
export function kettleChanges(kitchen: Kitchen, name: string): readonly Change[] {
  const like = largest(kitchen, 'electric-kettle') ?? usualKettle(kitchen);
  if (like.ratedW <= 0 || kitchen.vessels.length >= LIMITS.vessels.most) return [];
  const { circuit: _own, lastHotAt: _its, comment: _said, ...plain } = like;
  const vessel: Vessel = {
    ...plain,
    id: freeId(kitchen, 'second-kettle'),
    name,
    // Without a kettle one is planned to be bought: a second one is two.
    count: kitchen.vessels.some(({ kind }) => kind.endsWith('kettle')) ? 1 : 2,
  };
  const sockets = socketsOf(kitchen);
  if (sockets.length === 0) return [{ kind: 'kettle', vessel }];
  return sockets.map((socket) => ({
    kind: 'kettle',
    vessel: { ...vessel, circuit: socket.id },
    on: socket.name,
  }));
}

/** A kettle, or a pan one can pour from, on the strongest burner that has been purged by fire and carries none. */
export function stoveKettleChanges(
  kitchen: Kitchen,
  { steps }: Plan,
  name: string,
): readonly Change[] {
  const lit = new Set(
    steps.flatMap(({ kind, work }) =>
      kind === 'glow' && work.on === 'burner' ? [work.burner] : [],
    ),
  );
  const carries = new Set(kitchen.vessels.map(({ burner }) => burner));
  const burner = burnersOf(kitchen)
    .filter(({ id }) => lit.has(id) && !carries.has(id))
    .toSorted((a, b) => b.ratedW - a.ratedW)[0];
  if (!burner || kitchen.vessels.length >= LIMITS.vessels.most) return [];
  const kettles = kitchen.vessels.filter(({ kind }) => kind.endsWith('kettle'));
  const vessel: Vessel = {
    id: freeId(kitchen, 'stove-kettle'),
    name,
    kind: 'stove-kettle',
    body: 'steel',
    maxFillL: Math.max(ORDINARY_L, ...kettles.map(({ maxFillL }) => maxFillL)),
    ratedW: 0,
    ratedV: kitchen.supplyV,
    burner: burner.id,
    count: 1,
  };
  return [{ kind: 'stove-kettle', vessel, on: burner.name }];
}

/** An urn that keeps water near boiling, where there is none. */
export function urnChanges(kitchen: Kitchen, name: string): readonly Change[] {
  const has = kitchen.vessels.some(({ kind }) => kind === 'urn');
  if (has || kitchen.vessels.length >= LIMITS.vessels.most) return [];
  const vessel: Vessel = {
    id: freeId(kitchen, 'urn'),
    name,
    kind: 'urn',
    body: 'steel',
    ...URN,
    ratedV: kettlePlateV(kitchen.country, kitchen.supplyV),
    count: 1,
  };
  return [{ kind: 'urn', vessel }];
}
