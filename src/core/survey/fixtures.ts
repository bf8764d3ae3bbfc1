import { boundingBox, type Fixture, type Kitchen, type Point } from '../kitchen/index.ts';
import { MOST_FIXTURES } from './limits.ts';
import { put, type Edited } from './add.ts';
import { closeCuts, isLetIn } from './cut-outs.ts';
import { movedBy } from './move.ts';
import { fixtureOf, freeId, freeName, idsOf, withFixtures } from './names.ts';
import { boxMeets, lowerLeft, outlineOf, shiftBy, sizeOf } from './plane.ts';
import { isSoundFixture } from './sound-shape.ts';
import { counterSpot } from './spots.ts';
import { seatStovePots } from './stove-pots.ts';

/** Gap between a fixture and its copy, metres. */
const BESIDE_M = 0.05;
/** Where along a counter a copy is tried first, as a share of its length. */
const MIDDLE = 0.5;
/** A place whose length differs by more is for something turned, metres. */
const TURNED_M = 0.001;

/**
 * Takes a fixture out: the cut-out it lay in is closed, the rabbi's answer
 * about it and the oven's word of its cooktop are dropped, pots are put on
 * another burner. What stood in a counter stays.
 */
export function removeFixture(kitchen: Kitchen, id: string): Kitchen {
  const fixture = fixtureOf(kitchen, id);
  if (!fixture) return kitchen;
  const outline = outlineOf(fixture);
  const closed = outline && fixture.kind !== 'counter' ? closeCuts(kitchen, outline) : kitchen;
  const fixtures = closed.fixtures
    .filter((other) => other.id !== id)
    .map((other): Fixture => {
      if (other.kind !== 'oven' || other.sharesRangeWith !== id) return other;
      const { sharesRangeWith: _gone, ...alone } = other;
      return alone;
    });
  const overrides = kitchen.household.overrides.filter((answer) => answer.fixture !== id);
  return seatStovePots({
    ...closed,
    fixtures,
    household: { ...kitchen.household, overrides },
  });
}

/** Beside the original on a side that is free; otherwise to its right. */
function besideM(kitchen: Kitchen, fixture: Fixture): Point {
  const outline = outlineOf(fixture);
  if (!outline) return [0, 0];
  const { lengthM, depthM } = sizeOf(outline);
  const box = boundingBox(outline);
  const ways: readonly Point[] = [
    [lengthM + BESIDE_M, 0],
    [-lengthM - BESIDE_M, 0],
    [0, -depthM - BESIDE_M],
    [0, depthM + BESIDE_M],
  ];
  const others = kitchen.fixtures.flatMap((other) => {
    const drawn = outlineOf(other);
    // A sink may be copied within its counter, a counter only beside it.
    return drawn && other.kind !== 'counter' ? [drawn] : [];
  });
  const counters = kitchen.fixtures.flatMap((other) =>
    other.kind === 'counter' && fixture.kind === 'counter' ? [other.outline] : [],
  );
  const free = ways.find(([dx, dy]) => {
    const place = {
      xMinM: box.xMinM + dx,
      xMaxM: box.xMaxM + dx,
      yMinM: box.yMinM + dy,
      yMaxM: box.yMaxM + dy,
    };
    return [...others, ...counters].every((drawn) => !boxMeets(place, drawn));
  });
  return free ?? ways[0] ?? [0, 0];
}

/** A free place in a counter for the copy of what is let into one. */
function inCounterM(kitchen: Kitchen, fixture: Fixture): Point | undefined {
  const outline = outlineOf(fixture);
  if (!outline || !isLetIn(fixture)) return undefined;
  const size = sizeOf(outline);
  const [x, y] = lowerLeft(outline);
  for (const counter of kitchen.fixtures) {
    if (counter.kind !== 'counter') continue;
    const spot = counterSpot(kitchen, counter, size, 'in', MIDDLE);
    const found = spot && sizeOf(spot.outline);
    // Along another wall it would have to be turned, and a copy is not.
    if (!spot || Math.abs((found?.lengthM ?? 0) - size.lengthM) > TURNED_M) continue;
    const [toX, toY] = lowerLeft(spot.outline);
    return [toX - x, toY - y];
  }
  return undefined;
}

/** A copy of the fixture's own fields under new ids, standing by itself. */
function namesake(kitchen: Kitchen, fixture: Fixture): Fixture {
  const taken = new Set(idsOf(kitchen));
  const id = freeId(taken, fixture.id);
  taken.add(id);
  const names = kitchen.fixtures.map(({ name }) => name);
  const base = { id, name: freeName(names, fixture.name) };
  if (fixture.kind === 'counter') return { ...fixture, ...base, holes: [] };
  if (fixture.kind === 'cooktop') {
    const burners = fixture.burners.map((burner) => {
      const burnerId = freeId(taken, burner.id);
      taken.add(burnerId);
      return { ...burner, id: burnerId };
    });
    return { ...fixture, ...base, burners };
  }
  if (fixture.kind === 'oven') {
    const { sharesRangeWith: _other, ...alone } = fixture;
    return { ...alone, ...base };
  }
  return { ...fixture, ...base };
}

/** A second one beside the first; a counter's copy has no cut-outs, an oven's stands alone. */
export function copyFixture(kitchen: Kitchen, id: string): Edited {
  const fixture = fixtureOf(kitchen, id);
  if (!fixture || kitchen.fixtures.length >= MOST_FIXTURES) return { kitchen, id: '' };
  const twin = namesake(kitchen, fixture);
  const beside = movedBy(
    twin,
    shiftBy(...(inCounterM(kitchen, fixture) ?? besideM(kitchen, fixture))),
  );
  return put(kitchen, isSoundFixture(beside) ? beside : twin);
}

const ALWAYS = ['name', 'comment', 'designation'];
/** The fields a patch may change, by kind; outlines, burners and cut-outs have their own edits. */
const OWN: Readonly<Record<Fixture['kind'], readonly string[]>> = {
  counter: ['material', 'condition', 'backsplashHeightM'],
  sink: ['material', 'condition', 'bowls', 'rimWidthM', 'tap', 'drainboard'],
  cooktop: ['surface'],
  oven: [
    'cleaning',
    'heat',
    'ratedW',
    'cycleMin',
    'racksStayInCycle',
    'sharesRangeWith',
    'circuit',
  ],
  table: ['material', 'condition'],
  cupboard: ['material', 'condition', 'shelves'],
  drawer: ['material', 'condition', 'shelves'],
  fridge: ['material', 'ratedW', 'circuit'],
  freezer: ['material', 'ratedW', 'circuit'],
  microwave: ['material', 'ratedW', 'circuit'],
  dishwasher: ['material', 'ratedW', 'circuit'],
  'warming-drawer': ['material', 'ratedW', 'circuit'],
  hood: ['material', 'ratedW', 'circuit'],
};
const MAY_BE_UNDRAWN: readonly Fixture['kind'][] = [
  'cupboard',
  'drawer',
  'fridge',
  'freezer',
  'microwave',
  'dishwasher',
  'warming-drawer',
  'hood',
];

/**
 * Changes a fixture's own fields; others in the patch are passed over.
 * `undefined` takes an optional field out (`outline: undefined` takes a
 * cupboard or appliance off the drawing). A value no file may hold is kept as
 * typed and told by `problemsOf`. An oven that no longer cleans itself loses
 * its cycle.
 */
export function changeFixture(
  kitchen: Kitchen,
  id: string,
  patch: Readonly<Record<string, unknown>>,
): Kitchen {
  const fixture = fixtureOf(kitchen, id);
  if (!fixture) return kitchen;
  const own = [...ALWAYS, ...OWN[fixture.kind]];
  const changes = Object.entries(patch).filter(([field]) => own.includes(field));
  const undraw =
    'outline' in patch && patch['outline'] === undefined && MAY_BE_UNDRAWN.includes(fixture.kind);
  if (undraw) changes.push(['outline', undefined]);
  if (patch['cleaning'] === 'none') changes.push(['cycleMin', undefined]);
  const old: ReadonlyMap<string, unknown> = new Map(Object.entries(fixture));
  if (changes.every(([field, value]) => old.get(field) === value)) return kitchen;
  const next = Object.entries({ ...fixture, ...Object.fromEntries(changes) });
  // Values are the household's words; the reader of files judges them.
  const changed = Object.fromEntries(next.filter(([, v]) => v !== undefined)) as Fixture;
  return withFixtures(kitchen, [changed]);
}
