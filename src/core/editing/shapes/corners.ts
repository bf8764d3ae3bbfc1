import { tidyPoint, type Point, type Polygon } from '../../geometry/index.ts';
import {
  LIMITS,
  fixtureOf,
  outlineHolds,
  outlineOf,
  type Fixture,
  type Kitchen,
} from '../../kitchen/index.ts';
import { fitBowls, pullIn } from './fit.ts';
import { reshape } from './move.ts';
import { withFixtures } from '../tables/names.ts';

type Edge = readonly [number, number];

/** Number of the edge between two neighbouring corners: the one it starts at. */
function edgeNumber([from, to]: Edge, count: number): number {
  return (from + 1) % count === to ? from : to;
}

function edgeFrom(edge: number, count: number): Edge {
  return [edge, (edge + 1) % count];
}

/** Renumbers told edges of an outline; an edge may become several or none. */
function edgesAs(
  told: readonly Edge[],
  oldCount: number,
  count: number,
  become: (edge: number) => readonly number[],
): readonly Edge[] {
  const edges = told.map((edge) => edgeNumber(edge, oldCount));
  return [...new Set(edges.flatMap(become))].map((edge) => edgeFrom(edge, count));
}

/** A fixture with another outline; refused when the outline does not hold or uncovers a cut-out. */
function redrawn(
  kitchen: Kitchen,
  fixture: Fixture,
  outline: Polygon,
  become: (edge: number) => readonly number[],
): Kitchen {
  const holes = fixture.kind === 'counter' ? fixture.holes : [];
  if (!outlineHolds(outline, holes)) return kitchen;
  if (fixture.kind === 'counter' || fixture.kind === 'table') {
    const as = (told: readonly Edge[]) =>
      edgesAs(told, fixture.outline.length, outline.length, become);
    const { openSides } = fixture;
    const open = openSides && { openSides: as(openSides) };
    const back = fixture.kind === 'counter' && { backEdges: as(fixture.backEdges) };
    return reshape(kitchen, fixture, { ...fixture, outline, ...back, ...open });
  }
  if (fixture.kind === 'sink') {
    return reshape(kitchen, fixture, {
      ...fixture,
      outline,
      bowls: fitBowls(outline, fixture.bowls),
    });
  }
  if (fixture.kind === 'cooktop') {
    const burners = pullIn(outline, fixture.burners);
    return reshape(kitchen, fixture, { ...fixture, outline, burners });
  }
  return reshape(kitchen, fixture, { ...fixture, outline } as Fixture);
}

const same = (edge: number): readonly number[] => [edge];

/**
 * Puts one corner at `to`, metres. The same kitchen comes back when the outline
 * would cross itself, shrink to nothing, or no longer hold a cut-out.
 */
export function moveCorner(kitchen: Kitchen, id: string, corner: number, to: Point): Kitchen {
  const fixture = fixtureOf(kitchen, id);
  const outline = fixture && outlineOf(fixture);
  const old = outline?.[corner];
  if (!fixture || !outline || !old) return kitchen;
  const at = tidyPoint(to);
  if (old[0] === at[0] && old[1] === at[1]) return kitchen;
  return redrawn(kitchen, fixture, outline.with(corner, at), same);
}

/** A new corner in the middle of an edge (edge 0 begins at corner 0); at most 500 corners. */
export function addCorner(kitchen: Kitchen, id: string, edge: number): Kitchen {
  const fixture = fixtureOf(kitchen, id);
  const outline = fixture && outlineOf(fixture);
  const from = outline?.[edge];
  const to = outline?.[(edge + 1) % outline.length];
  if (!fixture || !outline || !from || !to || outline.length >= LIMITS.corners.most) return kitchen;
  const middle = tidyPoint([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2]);
  return redrawn(kitchen, fixture, outline.toSpliced(edge + 1, 0, middle), (old) =>
    old < edge ? [old] : old === edge ? [edge, edge + 1] : [old + 1],
  );
}

/** Takes a corner out; at least three stay. The edge that closes the gap is a back edge if both were. */
export function removeCorner(kitchen: Kitchen, id: string, corner: number): Kitchen {
  const fixture = fixtureOf(kitchen, id);
  const outline = fixture && outlineOf(fixture);
  if (!fixture || !outline?.[corner] || outline.length <= LIMITS.corners.least) return kitchen;
  const count = outline.length;
  const before = (corner + count - 1) % count;
  const isBack = (edge: number): boolean =>
    fixture.kind === 'counter' &&
    fixture.backEdges.some((pair) => edgeNumber(pair, count) === edge);
  const both = isBack(before) && isBack(corner);
  return redrawn(kitchen, fixture, outline.toSpliced(corner, 1), (old) => {
    if (old === corner) return [];
    if (old === before && !both) return [];
    return [old > corner ? old - 1 : old];
  });
}

/** Says whether an edge of a counter stands at a wall, the other way than now. */
export function toggleBackEdge(kitchen: Kitchen, id: string, edge: number): Kitchen {
  const counter = fixtureOf(kitchen, id);
  if (counter?.kind !== 'counter' || !counter.outline[edge]) return kitchen;
  const count = counter.outline.length;
  const others = counter.backEdges.filter((pair) => edgeNumber(pair, count) !== edge);
  const backEdges =
    others.length < counter.backEdges.length ? others : [...others, edgeFrom(edge, count)];
  return backEdges.length > LIMITS.backEdges.most
    ? kitchen
    : withFixtures(kitchen, [{ ...counter, backEdges }]);
}

/** Says at which edges of a counter or a table one can stand; the same kitchen for anything else. */
export function tellOpenSides(kitchen: Kitchen, id: string, edges: readonly number[]): Kitchen {
  const fixture = fixtureOf(kitchen, id);
  if (fixture?.kind !== 'counter' && fixture?.kind !== 'table') return kitchen;
  const count = fixture.outline.length;
  const openSides = edges.filter((edge) => edge < count).map((edge) => edgeFrom(edge, count));
  return openSides.length > LIMITS.openSides.most
    ? kitchen
    : withFixtures(kitchen, [{ ...fixture, openSides }]);
}
