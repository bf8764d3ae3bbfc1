import {
  lowerLeft,
  middleOf,
  pointInPolygon,
  quarterTurnAbout,
  rectangle,
  shiftBy,
  stretchOf,
  type Motion,
  type Point,
} from '../../geometry/index.ts';
import {
  drawingHolds,
  fixtureOf,
  outlineOf,
  type Fixture,
  type Kitchen,
} from '../../kitchen/index.ts';
import { fitBowls, pullIn } from './fit.ts';
import { closeCuts, cutFor, holdingCuts } from './cut-outs.ts';
import { withFixtures } from '../tables/names.ts';
import { sizesIn, USUAL } from '../tables/usual.ts';

/** Everything drawn of a fixture, moved. */
export function movedBy(fixture: Fixture, motion: Motion): Fixture {
  const outline = outlineOf(fixture)?.map(motion);
  if (!outline) return fixture;
  if (fixture.kind === 'counter') {
    return { ...fixture, outline, holes: fixture.holes.map((hole) => hole.map(motion)) };
  }
  if (fixture.kind === 'cooktop') {
    const burners = fixture.burners.map((burner) => ({ ...burner, at: motion(burner.at) }));
    return { ...fixture, outline, burners };
  }
  return { ...fixture, outline } as Fixture;
}

/** What stands in, on or under a counter or table goes where it goes. */
function carriedBy(kitchen: Kitchen, carrier: Fixture): readonly Fixture[] {
  if (carrier.kind !== 'counter' && carrier.kind !== 'table') return [];
  return kitchen.fixtures.filter((other) => {
    if (other.kind === 'counter' || other.kind === 'table') return false;
    const outline = outlineOf(other);
    return outline !== undefined && pointInPolygon(middleOf(outline), carrier.outline);
  });
}

/** The cooktop and the oven of one range move together. */
function rangeOf(kitchen: Kitchen, one: Fixture): readonly Fixture[] {
  return kitchen.fixtures.filter(
    (other) =>
      (other.kind === 'oven' && other.sharesRangeWith === one.id) ||
      (one.kind === 'oven' && one.sharesRangeWith === other.id),
  );
}

/** Ids of a fixture and of everything that moves along with it. */
export function movingWith(kitchen: Kitchen, id: string): ReadonlySet<string> {
  const start = fixtureOf(kitchen, id);
  const ids = new Set<string>();
  const queue = start ? [start] : [];
  for (let one = queue.pop(); one; one = queue.pop()) {
    if (ids.has(one.id)) continue;
    ids.add(one.id);
    queue.push(...carriedBy(kitchen, one), ...rangeOf(kitchen, one));
  }
  return ids;
}

/** Moves a fixture with what goes along; cut-outs it leaves are closed, new ones cut. */
function moveAll(kitchen: Kitchen, id: string, motion: Motion): Kitchen {
  const ids = movingWith(kitchen, id);
  const leavers = kitchen.fixtures.filter((fixture) => ids.has(fixture.id));
  const moved = leavers.map((fixture) => movedBy(fixture, motion));
  if (!moved.every(drawingHolds)) return kitchen;
  const left = leavers.reduce((now, fixture) => {
    const outline = outlineOf(fixture);
    if (!outline) return now;
    // A cut-out that moves along with its counter stays open.
    const closed = closeCuts(now, outline);
    const staying = closed.fixtures.filter(({ id: one }) => !ids.has(one));
    return withFixtures(now, staying);
  }, kitchen);
  const placed = withFixtures(left, moved);
  return [...ids].reduce(cutFor, placed);
}

/** Draws what was only told of: with its usual size, its lower-left corner at `at`. */
function drawn(kitchen: Kitchen, fixture: Fixture, at: Point): Kitchen {
  const usual = USUAL.find(({ kind }) => kind === fixture.kind);
  if (!usual) return kitchen;
  const { lengthM, depthM } = usual[sizesIn(kitchen.country)];
  const outline = rectangle(at, lengthM, depthM);
  const next = { ...fixture, outline } as Fixture;
  return drawingHolds(next) ? withFixtures(kitchen, [next]) : kitchen;
}

/**
 * Puts the lower-left corner of the box round a fixture at `to`, metres.
 * Burners, cut-outs, what stands in or on it and the other half of a range go
 * along. One that was not drawn is drawn there. The same kitchen comes back
 * when the place is out of the plan.
 */
export function moveFixture(kitchen: Kitchen, id: string, to: Point): Kitchen {
  const fixture = fixtureOf(kitchen, id);
  if (!fixture) return kitchen;
  const outline = outlineOf(fixture);
  if (!outline) return drawn(kitchen, fixture, to);
  const [x, y] = lowerLeft(outline);
  if (x === to[0] && y === to[1]) return kitchen;
  return moveAll(kitchen, id, shiftBy(to[0] - x, to[1] - y));
}

/** Turns a fixture a quarter, counter-clockwise, about its middle, with what goes along. */
export function turnFixture(kitchen: Kitchen, id: string): Kitchen {
  const fixture = fixtureOf(kitchen, id);
  const outline = fixture && outlineOf(fixture);
  if (!outline) return kitchen;
  return moveAll(kitchen, id, quarterTurnAbout(middleOf(outline)));
}

/** A fixture stretched by a motion: burners go along, bowls and cut-outs keep their size. */
function stretched(fixture: Fixture, motion: Motion): Fixture {
  if (fixture.kind === 'counter') {
    const outline = fixture.outline.map(motion);
    const holes = fixture.holes.map((hole) => {
      const [from, to] = [middleOf(hole), motion(middleOf(hole))];
      return hole.map(shiftBy(to[0] - from[0], to[1] - from[1]));
    });
    return { ...fixture, outline, holes };
  }
  const moved = movedBy(fixture, motion);
  if (moved.kind === 'sink') return { ...moved, bowls: fitBowls(moved.outline, moved.bowls) };
  if (moved.kind === 'cooktop') return { ...moved, burners: pullIn(moved.outline, moved.burners) };
  return moved;
}

/**
 * Gives the box round a fixture a new length (along x) and depth (along y),
 * metres, its lower-left corner staying. The sizes are kept as typed. What
 * lies in a counter keeps its own size and moves with its part of the counter;
 * what no longer fits has no cut-out. The same kitchen comes back for sizes no
 * file can hold.
 */
export function resizeFixture(
  kitchen: Kitchen,
  id: string,
  lengthM: number,
  depthM: number,
): Kitchen {
  const fixture = fixtureOf(kitchen, id);
  const outline = fixture && outlineOf(fixture);
  if (!fixture || !outline || !(lengthM > 0) || !(depthM > 0)) return kitchen;
  const motion = stretchOf(outline, lengthM, depthM);
  const next = stretched(fixture, motion);
  return reshape(kitchen, fixture, next, motion);
}

/** Puts a reshaped fixture in its place, with what stands in it and the cut-outs. */
export function reshape(
  kitchen: Kitchen,
  before: Fixture,
  after: Fixture,
  motion?: Motion,
): Kitchen {
  const holding =
    after.kind === 'counter' ? { ...after, holes: holdingCuts(after.outline, after.holes) } : after;
  if (!drawingHolds(holding)) return kitchen;
  const old = outlineOf(before);
  const closed = old && before.kind !== 'counter' ? closeCuts(kitchen, old) : kitchen;
  const along = [...movingWith(kitchen, before.id)].filter((id) => id !== before.id);
  const placed = withFixtures(closed, [holding]);
  const companions = along.flatMap((id) => {
    const other = fixtureOf(placed, id);
    if (!other || !motion) return [];
    return [companionOf(before, other, motion)];
  });
  if (!companions.every(drawingHolds)) return kitchen;
  return [before.id, ...along].reduce(cutFor, withFixtures(placed, companions));
}

/** The other half of a range takes the same shape; what stands on a counter moves with its place. */
function companionOf(before: Fixture, other: Fixture, motion: Motion): Fixture {
  const outline = outlineOf(other);
  if (!outline) return other;
  if (before.kind !== 'counter' && before.kind !== 'table') return stretched(other, motion);
  const [from, to] = [middleOf(outline), motion(middleOf(outline))];
  return movedBy(other, shiftBy(to[0] - from[0], to[1] - from[1]));
}
