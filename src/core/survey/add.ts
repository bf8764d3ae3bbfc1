import type { Cooktop, Counter, Fixture, Kitchen, Oven, Point } from '../kitchen/index.ts';
import { MOST_FIXTURES } from './limits.ts';
import { cutFor } from './cut-outs.ts';
import { fixtureFrom } from './offers.ts';
import { rectangle } from './plane.ts';
import { seatStovePots } from './stove-pots.ts';
import { isSoundFixture } from './sound-shape.ts';
import { counterSpot, floorSpot, outsideSpot, wallSpot, type Spot } from './spots.ts';
import { sizesIn, USUAL, type Usual, type UsualSize } from './usual.ts';

/** What an edit made, and the id of what it is about. */
export type Edited = { readonly kitchen: Kitchen; readonly id: string };

/** Shares of its usual length at which a counter still fits a short wall. */
const SHORTER = [1, 0.75, 0.5, 0.25];

/** Puts a finished fixture into the kitchen, cutting its counter, giving pots their burner. */
export function put(kitchen: Kitchen, fixture: Fixture): Edited {
  const held = { ...kitchen, fixtures: [...kitchen.fixtures, fixture] };
  return { kitchen: seatStovePots(cutFor(held, fixture.id)), id: fixture.id };
}

function inCounters(
  kitchen: Kitchen,
  usual: Usual,
  size: UsualSize,
  into: string | undefined,
): Spot | undefined {
  const counters = kitchen.fixtures.filter(
    (fixture): fixture is Counter =>
      fixture.kind === 'counter' && (into === undefined || fixture.id === into),
  );
  for (const counter of counters) {
    const spot = counterSpot(kitchen, counter, size, usual.stands, usual.alongShare ?? 0.5);
    if (spot) return spot;
  }
  return undefined;
}

function alongWall(kitchen: Kitchen, usual: Usual, size: UsualSize): Spot | undefined {
  const shares = usual.kind === 'counter' ? SHORTER : [1];
  for (const share of shares) {
    const spot = wallSpot(kitchen, { ...size, lengthM: size.lengthM * share });
    if (spot) return spot;
  }
  return undefined;
}

function spotFor(
  kitchen: Kitchen,
  usual: Usual,
  o: { readonly into?: string; readonly at?: Point },
): Spot | undefined {
  const size = usual[sizesIn(kitchen.country)];
  if (o.at) return { outline: rectangle(o.at, size.lengthM, size.depthM) };
  if (usual.stands === 'undrawn') return undefined;
  const inside =
    usual.stands === 'in' || usual.stands === 'on' || usual.stands === 'under'
      ? inCounters(kitchen, usual, size, o.into)
      : undefined;
  const free = usual.stands === 'floor' ? floorSpot(kitchen, size) : undefined;
  return inside ?? free ?? alongWall(kitchen, usual, size) ?? outsideSpot(kitchen, size);
}

/** The cooktop an oven belongs under: the one named, or the first without an oven. */
function cooktopFor(kitchen: Kitchen, into: string | undefined): Cooktop | undefined {
  const taken = kitchen.fixtures.map((f) => (f.kind === 'oven' ? f.sharesRangeWith : undefined));
  return kitchen.fixtures.find(
    (fixture): fixture is Cooktop =>
      fixture.kind === 'cooktop' &&
      (into === undefined || fixture.id === into) &&
      !taken.includes(fixture.id) &&
      fixture.burners.some(({ type }) => type !== 'portable-plate'),
  );
}

const GAS: readonly string[] = ['gas-sealed', 'gas-open', 'gas-wok', 'commercial-open'];

/** An oven and the cooktop above it in one appliance; under gas it may burn gas. */
function inRange(kitchen: Kitchen, usual: Usual, oven: Oven, cooktop: Cooktop): Oven {
  const gasW = usual.gasRangeW?.[sizesIn(kitchen.country)];
  const burnsGas = gasW !== undefined && cooktop.burners.every(({ type }) => GAS.includes(type));
  return {
    ...oven,
    outline: cooktop.outline,
    sharesRangeWith: cooktop.id,
    ...(burnsGas && { heat: 'gas' as const, ratedW: gasW }),
  };
}

/**
 * Adds an offer where it fits: a counter along a free wall, a sink or cooktop
 * into a counter (cutting it out), an oven under its cooktop, others against
 * free floor. What usually hangs or hides (hood, cupboard, drawer) is not drawn.
 * @param o into: id of the counter or cooktop; at: lower-left corner in metres,
 *   for an oven one of its own
 * @returns its id; for an unknown offer or a full kitchen the same kitchen and an empty id
 */
export function addFixture(
  kitchen: Kitchen,
  offer: string,
  o: { readonly into?: string; readonly at?: Point } = {},
): Edited {
  const usual = USUAL.find(({ id }) => id === offer);
  if (!usual || kitchen.fixtures.length >= MOST_FIXTURES) return { kitchen, id: '' };
  const cooktop = usual.kind === 'oven' && !o.at ? cooktopFor(kitchen, o.into) : undefined;
  const spot = cooktop ? { outline: cooktop.outline } : spotFor(kitchen, usual, o);
  const made = fixtureFrom(kitchen, usual, spot);
  const fixture = cooktop && made.kind === 'oven' ? inRange(kitchen, usual, made, cooktop) : made;
  return isSoundFixture(fixture) ? put(kitchen, fixture) : { kitchen, id: '' };
}
