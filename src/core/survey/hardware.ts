import {
  countryOf,
  type Circuit,
  type Cooktop,
  type Fixture,
  type Kitchen,
} from '../kitchen/index.ts';
import type { Burner, Vessel, VesselKind } from '../kitchen/index.ts';
import { MOST_BURNERS, MOST_CIRCUITS, MOST_VESSELS } from './limits.ts';
import type { Edited } from './add.ts';
import { freePlace } from './fit.ts';
import { freeId, freeName, idsOf, withFixtures } from './names.ts';
import { seatStovePots, standsOnStove, strongestBurner } from './stove-pots.ts';
import { NEW_KETTLE_BODY, NEW_KITCHEN, socketCircuitA } from './usual.ts';

/** Where the table of countries has no row. */
const USUAL_KETTLE_W = 2200;

/** Usual vessels of each kind; common practice, no published source. */
const VESSELS = {
  'electric-kettle': { name: 'Kettle', body: NEW_KETTLE_BODY, maxFillL: NEW_KITCHEN.maxFillL },
  'stove-kettle': { name: 'Stove kettle', body: 'enamel', maxFillL: 2 },
  urn: { name: 'Urn', body: 'steel', maxFillL: 8 },
  pot: { name: 'Pot', body: 'steel', maxFillL: 5 },
} as const;

/** What a kind of vessel is heated by, all other sources left out. */
function heatOf(kitchen: Kitchen, vessel: Vessel): Vessel {
  const { circuit, burner, ...bare } = vessel;
  if (standsOnStove(vessel)) {
    const on = burner ?? strongestBurner(kitchen);
    return { ...bare, ...(on !== undefined && { burner: on }) };
  }
  const plug = circuit;
  const ratedW =
    bare.ratedW > 0 ? bare.ratedW : (countryOf(kitchen.country)?.kettleW ?? USUAL_KETTLE_W);
  return { ...bare, ratedW, ...(plug !== undefined && { circuit: plug }) };
}

/** Circuits of the mains voltage, the one with the fewest kettles first. */
function quietestCircuit(kitchen: Kitchen): string | undefined {
  const load = (id: string) =>
    kitchen.vessels.filter(({ circuit }) => circuit === id).reduce((n, v) => n + v.count, 0);
  return kitchen.circuits
    .filter(({ voltsV }) => voltsV === kitchen.supplyV)
    .toSorted((a, b) => load(a.id) - load(b.id))[0]?.id;
}

/** Adds a usual vessel; an electric one on the circuit with the fewest, a pot on the strongest burner. */
export function addVessel(kitchen: Kitchen, kind: VesselKind): Edited {
  if (kitchen.vessels.length >= MOST_VESSELS) return { kitchen, id: '' };
  const { name, body, maxFillL } = VESSELS[kind];
  const id = freeId(idsOf(kitchen), kind === 'electric-kettle' ? 'kettle' : kind);
  const stove = standsOnStove({ kind });
  const circuit = stove ? undefined : quietestCircuit(kitchen);
  const vessel = heatOf(kitchen, {
    id,
    name: freeName(
      kitchen.vessels.map((v) => v.name),
      name,
    ),
    kind,
    body,
    maxFillL,
    ratedW: stove ? 0 : (countryOf(kitchen.country)?.kettleW ?? USUAL_KETTLE_W),
    ratedV: kitchen.supplyV,
    count: 1,
    ...(circuit !== undefined && { circuit }),
  });
  return { kitchen: { ...kitchen, vessels: [...kitchen.vessels, vessel] }, id };
}

/** The patch without the fields that are there as `undefined`, which take the old one out. */
function patched<T extends object>(old: T, patch: Partial<T>): T {
  const next = Object.entries({ ...old, ...patch, id: 'id' in old ? old.id : undefined });
  return Object.fromEntries(next.filter(([, value]) => value !== undefined)) as T;
}

/** Changes fields of a vessel; another kind brings another source of heat with it. */
export function changeVessel(kitchen: Kitchen, id: string, patch: Partial<Vessel>): Kitchen {
  const old = kitchen.vessels.find((vessel) => vessel.id === id);
  if (!old) return kitchen;
  const next = patched(old, patch);
  const turned = standsOnStove(old) !== standsOnStove(next);
  const circuit = turned && !standsOnStove(next) ? quietestCircuit(kitchen) : undefined;
  const plugged = next.circuit === undefined && circuit !== undefined ? { ...next, circuit } : next;
  const heated = turned || standsOnStove(next) ? heatOf(kitchen, plugged) : plugged;
  return { ...kitchen, vessels: kitchen.vessels.map((v) => (v.id === id ? heated : v)) };
}

export function removeVessel(kitchen: Kitchen, id: string): Kitchen {
  const vessels = kitchen.vessels.filter((vessel) => vessel.id !== id);
  return vessels.length === kitchen.vessels.length ? kitchen : { ...kitchen, vessels };
}

/** Adds a socket circuit as usual in the country, at the mains voltage. */
export function addCircuit(kitchen: Kitchen): Edited {
  if (kitchen.circuits.length >= MOST_CIRCUITS) return { kitchen, id: '' };
  const id = freeId(idsOf(kitchen), 'sockets-1');
  const names = kitchen.circuits.map(({ name }) => name);
  const circuit: Circuit = {
    id,
    name: freeName(names, 'Counter sockets'),
    ratingA: socketCircuitA(kitchen.country),
    voltsV: kitchen.supplyV,
  };
  return { kitchen: { ...kitchen, circuits: [...kitchen.circuits, circuit] }, id };
}

export function changeCircuit(kitchen: Kitchen, id: string, patch: Partial<Circuit>): Kitchen {
  if (!kitchen.circuits.some((circuit) => circuit.id === id)) return kitchen;
  const circuits = kitchen.circuits.map((one) => (one.id === id ? patched(one, patch) : one));
  return { ...kitchen, circuits };
}

function unplugged<T extends { readonly circuit?: string }>(thing: T, id: string): T {
  if (thing.circuit !== id) return thing;
  const { circuit: _gone, ...bare } = thing;
  return bare as T;
}

/** Takes a circuit out; what was plugged into it is plugged into nothing. */
export function removeCircuit(kitchen: Kitchen, id: string): Kitchen {
  const circuits = kitchen.circuits.filter((circuit) => circuit.id !== id);
  if (circuits.length === kitchen.circuits.length) return kitchen;
  const fixtures = kitchen.fixtures.map((fixture): Fixture => {
    if (fixture.kind === 'cooktop') {
      return { ...fixture, burners: fixture.burners.map((burner) => unplugged(burner, id)) };
    }
    return 'circuit' in fixture ? unplugged(fixture, id) : fixture;
  });
  const vessels = kitchen.vessels.map((vessel) => unplugged(vessel, id));
  return { ...kitchen, circuits, vessels, fixtures };
}

function cooktopOf(kitchen: Kitchen, id: string): Cooktop | undefined {
  return kitchen.fixtures.find((f): f is Cooktop => f.kind === 'cooktop' && f.id === id);
}

/** Changes fields of a burner; its id stays. */
export function changeBurner(
  kitchen: Kitchen,
  cooktop: string,
  burner: string,
  patch: Partial<Burner>,
): Kitchen {
  const top = cooktopOf(kitchen, cooktop);
  if (!top?.burners.some(({ id }) => id === burner)) return kitchen;
  const burners = top.burners.map((one) => (one.id === burner ? patched(one, patch) : one));
  return withFixtures(kitchen, [{ ...top, burners }]);
}

/** Adds a burner like the first one, where there is most room; at most 16. */
export function addBurner(kitchen: Kitchen, cooktop: string): Edited {
  const top = cooktopOf(kitchen, cooktop);
  const like = top?.burners[0];
  if (!top || !like || top.burners.length >= MOST_BURNERS) return { kitchen, id: '' };
  const id = freeId(idsOf(kitchen), `${cooktop}-burner`);
  const name = freeName(
    top.burners.map((burner) => burner.name),
    'burner',
  );
  const burner: Burner = { ...like, id, name, at: freePlace(top.outline, top.burners) };
  const next = withFixtures(kitchen, [{ ...top, burners: [...top.burners, burner] }]);
  return { kitchen: next, id };
}

/** Takes a burner out; the last one stays. A pot that stood on it stands on the strongest left. */
export function removeBurner(kitchen: Kitchen, cooktop: string, burner: string): Kitchen {
  const top = cooktopOf(kitchen, cooktop);
  const burners = top?.burners.filter(({ id }) => id !== burner) ?? [];
  if (!top || burners.length === 0 || burners.length === top.burners.length) return kitchen;
  return seatStovePots(withFixtures(kitchen, [{ ...top, burners }]));
}
