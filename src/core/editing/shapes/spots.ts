import {
  boundingBox,
  boxMeets,
  overlap,
  rectangle,
  signedAreaM2,
  tidyPoint,
  type Box,
  type Point,
  type Polygon,
} from '../../geometry/index.ts';
import {
  drawnOutlines,
  outlineHolds,
  outlineOf,
  type Counter,
  type Kitchen,
} from '../../kitchen/index.ts';
import { roomBox } from './room.ts';
import { counterDepthM, type Stands, type UsualSize } from '../tables/usual.ts';

/** A place found, with the edge that stands at a wall, if one does. */
export type Spot = { readonly outline: Polygon; readonly backEdge?: number };

/** Room left between what lies in one counter, metres. */
const APART_M = 0.05;
/** Steps in which a place along a counter is looked for, metres. */
const STEP_M = 0.05;
/** Free room round a table or island, tried from roomy to none, metres. */
const CLEARANCES_M = [0.9, 0.6, 0.3, 0];
/** Gap to what is already drawn when nothing fits in the room, metres. */
const OUTSIDE_M = 0.3;

function isFree(box: Box, obstacles: readonly Polygon[]): boolean {
  return obstacles.every((obstacle) => !boxMeets(box, obstacle));
}

/** Edges of the {@link rectangle}: near, right, far, left. */
const NEAR = 0;
const RIGHT = 1;
const FAR = 2;
const LEFT = 3;

/** The first free place against a wall: the far one, then right, left, near. */
export function wallSpot(kitchen: Kitchen, { lengthM, depthM }: UsualSize): Spot | undefined {
  const room = roomBox(kitchen);
  const obstacles = drawnOutlines(kitchen);
  const boxes = obstacles.map(boundingBox);
  const starts = (min: number, max: number, ends: readonly number[]) =>
    [min, ...ends, max - lengthM]
      .filter((start) => start >= min - 1e-6 && start + lengthM <= max + 1e-6)
      .toSorted((a, b) => a - b);
  const across = starts(
    room.xMinM,
    room.xMaxM,
    boxes.flatMap((b) => [b.xMaxM, b.xMinM - lengthM]),
  );
  const along = starts(
    room.yMinM,
    room.yMaxM,
    boxes.flatMap((b) => [b.yMaxM, b.yMinM - lengthM]),
  );
  const candidates: readonly (readonly [Point, number])[] = [
    ...across.map((x) => [[x, room.yMaxM - depthM], FAR] as const),
    ...along.toReversed().map((y) => [[room.xMaxM - depthM, y], RIGHT] as const),
    ...along.toReversed().map((y) => [[room.xMinM, y], LEFT] as const),
    ...across.map((x) => [[x, room.yMinM], NEAR] as const),
  ];
  for (const [at, backEdge] of candidates) {
    const level = backEdge === FAR || backEdge === NEAR;
    const outline = rectangle(at, level ? lengthM : depthM, level ? depthM : lengthM);
    if (isFree(boundingBox(outline), obstacles)) return { outline, backEdge };
  }
  return undefined;
}

/** A place free on all sides, as near the middle of the room as there is one. */
export function floorSpot(kitchen: Kitchen, { lengthM, depthM }: UsualSize): Spot | undefined {
  const room = roomBox(kitchen);
  const obstacles = drawnOutlines(kitchen);
  const GRID_M = 0.1;
  const xs = Math.floor((room.xMaxM - room.xMinM - lengthM) / GRID_M);
  const ys = Math.floor((room.yMaxM - room.yMinM - depthM) / GRID_M);
  const places: Point[] = [];
  for (let i = 0; i <= xs; i += 1) {
    for (let j = 0; j <= ys; j += 1)
      places.push([room.xMinM + i * GRID_M, room.yMinM + j * GRID_M]);
  }
  const off = ([x, y]: Point) =>
    Math.hypot(
      x + lengthM / 2 - (room.xMinM + room.xMaxM) / 2,
      y + depthM / 2 - (room.yMinM + room.yMaxM) / 2,
    );
  places.sort((a, b) => off(a) - off(b));
  for (const clearM of CLEARANCES_M) {
    const found = places.find(([x, y]) =>
      isFree(
        {
          xMinM: x - clearM,
          yMinM: y - clearM,
          xMaxM: x + lengthM + clearM,
          yMaxM: y + depthM + clearM,
        },
        obstacles,
      ),
    );
    if (found) return { outline: rectangle(found, lengthM, depthM) };
  }
  return undefined;
}

/** Beside everything drawn, for what fits nowhere in the room. */
export function outsideSpot(kitchen: Kitchen, { lengthM, depthM }: UsualSize): Spot {
  const corners = drawnOutlines(kitchen).flat();
  const room = roomBox(kitchen);
  const x = corners.length === 0 ? room.xMinM : boundingBox(corners).xMaxM + OUTSIDE_M;
  const outline = rectangle([x, room.yMaxM - depthM], lengthM, depthM);
  return { outline: outlineHolds(outline) ? outline : rectangle([0, 0], lengthM, depthM) };
}

/** The edges of a counter a person would measure from: at the wall first, the longest first. */
function measuringEdges(counter: Counter): readonly (readonly [Point, Point])[] {
  const { outline, backEdges } = counter;
  const wall = backEdges.map(([from, to]) => (from + 1 === to || to === 0 ? from : to));
  const longest = (a: readonly [Point, Point], b: readonly [Point, Point]) =>
    Math.hypot(b[1][0] - b[0][0], b[1][1] - b[0][1]) -
    Math.hypot(a[1][0] - a[0][0], a[1][1] - a[0][1]);
  const edges = outline.map(
    (from, i) => [from, outline[(i + 1) % outline.length] ?? from] as const,
  );
  const back = edges.filter((_, i) => wall.includes(i)).toSorted(longest);
  // Of two edges as long, the far one: people draw themselves on the near side.
  const free = edges.filter((_, i) => !wall.includes(i)).toReversed();
  return [...back, ...free.toSorted(longest)];
}

/** Edge of a {@link standing} rectangle that is nearest the edge it is measured from. */
const BACK = 2;

/**
 * A rectangle measured along an edge from `startM`, and inwards from `gapM`.
 * Corners run counter-clockwise, the front edge first, from left to right for
 * who stands before it.
 * @param inward 1 when the surface lies to the left of the edge, -1 to its right
 */
function standing(
  [from, to]: readonly [Point, Point],
  inward: 1 | -1,
  { lengthM, depthM }: UsualSize,
  startM: number,
  gapM: number,
): Polygon {
  const runM = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [ux, uy] = [(to[0] - from[0]) / runM, (to[1] - from[1]) / runM];
  const [nx, ny] = [-uy * inward, ux * inward];
  const corner = (s: number, n: number) =>
    tidyPoint([from[0] + ux * s + nx * n, from[1] + uy * s + ny * n]);
  const [one, other] = [startM, startM + lengthM];
  const [left, right] = inward === 1 ? [other, one] : [one, other];
  return [
    corner(left, gapM + depthM),
    corner(right, gapM + depthM),
    corner(right, gapM),
    corner(left, gapM),
  ];
}

/** Gaps to the back edge that are tried, metres. */
function gapsM(stands: Stands, freeM: number): readonly number[] {
  const tries = stands === 'in' ? [freeM / 2, APART_M, 0.03, 0.01, 0] : [0.02, 0];
  return tries.filter((gap) => gap >= 0);
}

/** A place in, on or under one counter, clear of what is there, near its usual place along it. */
export function counterSpot(
  kitchen: Kitchen,
  counter: Counter,
  size: UsualSize,
  stands: Stands,
  alongShare: number,
): Spot | undefined {
  const around = boundingBox(counter.outline);
  const inTheWay = [
    ...counter.holes,
    ...kitchen.fixtures.flatMap((fixture) => {
      const outline = fixture.id === counter.id ? undefined : outlineOf(fixture);
      return outline && boxMeets(around, outline) ? [outline] : [];
    }),
  ];
  const inward = signedAreaM2(counter.outline) > 0 ? 1 : -1;
  const sideM = stands === 'under' ? 0 : APART_M;
  for (const edge of measuringEdges(counter)) {
    const runM = Math.hypot(edge[1][0] - edge[0][0], edge[1][1] - edge[0][1]);
    const starts: number[] = [];
    for (let s = sideM; s + size.lengthM + sideM <= runM + 1e-6; s += STEP_M) starts.push(s);
    // Along the wall as seen from the room, so that left stays left whichever way corners run.
    const flips = edge[1][0] < edge[0][0] || (edge[1][0] === edge[0][0] && edge[1][1] > edge[0][1]);
    const wanted = (flips ? 1 - alongShare : alongShare) * runM - size.lengthM / 2;
    starts.sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted));
    for (const gapM of gapsM(stands, counterDepthM(kitchen.country) - size.depthM)) {
      for (const startM of starts) {
        const outline = standing(edge, inward, size, startM, gapM);
        if (!outlineHolds(counter.outline, [outline])) continue;
        const wide = { lengthM: size.lengthM + 2 * sideM, depthM: size.depthM };
        const roomy = standing(edge, inward, wide, startM - sideM, gapM);
        if (inTheWay.every((other) => !overlap(roomy, other))) {
          return { outline, backEdge: BACK };
        }
      }
    }
  }
  return undefined;
}
