import { boundingBox, type Polygon } from '../../geometry/index.ts';
import {
  LIMITS,
  fixtureOf,
  outlineHolds,
  outlineOf,
  type Counter,
  type Fixture,
  type Kitchen,
} from '../../kitchen/index.ts';
import { withFixtures } from '../tables/names.ts';

/** A cut-out and the rim of what lies in it may differ by this much, metres. */
const RIM_M = 0.03;

function isSamePlace(one: Polygon, other: Polygon): boolean {
  const [a, b] = [boundingBox(one), boundingBox(other)];
  return [a.xMinM - b.xMinM, a.yMinM - b.yMinM, a.xMaxM - b.xMaxM, a.yMaxM - b.yMaxM].every(
    (off) => Math.abs(off) <= RIM_M,
  );
}

/** Whether a fixture is let into a counter rather than set on it. */
export function isLetIn(fixture: Fixture): boolean {
  if (fixture.kind === 'sink') return true;
  return (
    fixture.kind === 'cooktop' && fixture.burners.some(({ type }) => type !== 'portable-plate')
  );
}

/** The cut-outs that fixtures of the kitchen lie in, with the counter they are in. */
function cutsFor(
  kitchen: Kitchen,
  outline: Polygon,
): readonly { readonly counter: Counter; readonly hole: Polygon }[] {
  return kitchen.fixtures.flatMap((fixture) =>
    fixture.kind === 'counter'
      ? fixture.holes
          .filter((hole) => isSamePlace(hole, outline))
          .map((hole) => ({ counter: fixture, hole }))
      : [],
  );
}

/** Closes the cut-outs that lie under an outline. */
export function closeCuts(kitchen: Kitchen, outline: Polygon): Kitchen {
  const cuts = cutsFor(kitchen, outline);
  if (cuts.length === 0) return kitchen;
  const gone = new Set(cuts.map(({ hole }) => hole));
  const counters = [...new Set(cuts.map(({ counter }) => counter))];
  return withFixtures(
    kitchen,
    counters.map((counter) => ({
      ...counter,
      holes: counter.holes.filter((hole) => !gone.has(hole)),
    })),
  );
}

/**
 * Cuts the first counter that holds a sink or cooktop wholly; what sticks out
 * of every counter, or lies over another cut-out, cuts nothing.
 */
export function cutFor(kitchen: Kitchen, id: string): Kitchen {
  const fixture = fixtureOf(kitchen, id);
  const outline = fixture && outlineOf(fixture);
  if (!fixture || !outline || !isLetIn(fixture)) return kitchen;
  if (cutsFor(kitchen, outline).length > 0) return kitchen;
  const around = kitchen.fixtures.find(
    (other): other is Counter =>
      other.kind === 'counter' &&
      other.holes.length < LIMITS.holes.most &&
      outlineHolds(other.outline, [...other.holes, outline]),
  );
  if (!around) return kitchen;
  return withFixtures(kitchen, [{ ...around, holes: [...around.holes, outline] }]);
}

/** Cut-outs that lie well in a counter: the others are closed. */
export function holdingCuts(outline: Polygon, holes: readonly Polygon[]): readonly Polygon[] {
  return holes.reduce<readonly Polygon[]>(
    (kept, hole) => (outlineHolds(outline, [...kept, hole]) ? [...kept, hole] : kept),
    [],
  );
}
