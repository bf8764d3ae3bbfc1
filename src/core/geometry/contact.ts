import { boundingBox } from './box.ts';
import { edgesOf, pointInPolygon, signedAreaM2 } from './polygon.ts';
import { between, distanceToEdgeM } from './segment.ts';
import type { Point, Polygon } from './types.ts';

/** Corners closer than this are one corner: a tape measure shows no less. Metres. */
export const SAME_PLACE_M = 0.001;

function cross(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

/** Whether two stretches cross in their insides (touching is not crossing). */
function crosses(a: Point, b: Point, c: Point, d: Point): boolean {
  return cross(a, b, c) * cross(a, b, d) < 0 && cross(c, d, a) * cross(c, d, b) < 0;
}

/** Whether two stretches are too far apart in x or in y to touch; spares most of the work. */
function farApart(a: Point, b: Point, c: Point, d: Point): boolean {
  return (
    Math.max(a[0], b[0]) < Math.min(c[0], d[0]) - SAME_PLACE_M ||
    Math.max(c[0], d[0]) < Math.min(a[0], b[0]) - SAME_PLACE_M ||
    Math.max(a[1], b[1]) < Math.min(c[1], d[1]) - SAME_PLACE_M ||
    Math.max(c[1], d[1]) < Math.min(a[1], b[1]) - SAME_PLACE_M
  );
}

function meets([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]): boolean {
  if (farApart(a, b, c, d)) return false;
  const near = (p: Point, q: Point, r: Point) => distanceToEdgeM(p, q, r) <= SAME_PLACE_M;
  return crosses(a, b, c, d) || near(a, c, d) || near(b, c, d) || near(c, a, b) || near(d, a, b);
}

/** The first pair of edges that cross or touch although they are no neighbours. */
export function crossingEdges(polygon: Polygon): readonly [number, number] | undefined {
  const edges = edgesOf(polygon);
  for (const [i, one] of edges.entries()) {
    for (let j = i + 2; j < edges.length; j += 1) {
      const other = edges[j];
      const neighbours = i === 0 && j === edges.length - 1;
      if (other && !neighbours && meets(one, other)) return [i, j];
    }
  }
  return undefined;
}

/** A corner where the outline turns straight back on itself. */
export function spikeCorner(polygon: Polygon): number | undefined {
  const count = polygon.length;
  for (const [i, corner] of polygon.entries()) {
    const before = polygon[(i + count - 1) % count] ?? corner;
    const after = polygon[(i + 1) % count] ?? corner;
    const onNext = distanceToEdgeM(before, corner, after) <= SAME_PLACE_M;
    const onLast = distanceToEdgeM(after, before, corner) <= SAME_PLACE_M;
    if (onNext || onLast) return i;
  }
  return undefined;
}

/** The corner that the next one repeats. */
export function repeatedCorner(polygon: Polygon): number | undefined {
  const index = edgesOf(polygon).findIndex(
    ([a, b]) => Math.hypot(a[0] - b[0], a[1] - b[1]) <= SAME_PLACE_M,
  );
  return index === -1 ? undefined : index;
}

/** Whether one polygon lies inside another; they may touch at edges. */
export function liesInside(inner: Polygon, outer: Polygon): boolean {
  const outerEdges = edgesOf(outer);
  const inside = (p: Point) => pointInPolygon(p, outer) || isOnEdge(p, outerEdges);
  return edgesOf(inner).every(([a, b]) => {
    const clear = outerEdges.every(([c, d]) => !crossesWell(a, b, c, d));
    const cuts = cutsOf(a, b, outer);
    const middles = cuts.slice(1).map((cut, i) => between(a, b, ((cuts[i] ?? 0) + cut) / 2));
    return clear && inside(a) && middles.every(inside);
  });
}

/** Where the corners of the other outline cut a stretch, as shares of its length. */
function cutsOf(a: Point, b: Point, other: Polygon): readonly number[] {
  const lengthM = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const on = other.filter((p) => !farApart(p, p, a, b) && distanceToEdgeM(p, a, b) <= SAME_PLACE_M);
  const shares = on.map((p) => Math.hypot(p[0] - a[0], p[1] - a[1]) / lengthM);
  return [0, ...shares.toSorted((x, y) => x - y), 1];
}

/**
 * Whether a step inward from an edge of `one` lands in `other`. Where two
 * surfaces overlap without their edges crossing, some stretch of an edge
 * between two corners borders the shared part.
 */
function sharesInside(one: Polygon, other: Polygon): boolean {
  const stepM = 2 * SAME_PLACE_M * Math.sign(signedAreaM2(one));
  return edgesOf(one).some(([a, b]) => {
    const lengthM = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const [ux, uy] = [(b[0] - a[0]) / lengthM, (b[1] - a[1]) / lengthM];
    const cuts = cutsOf(a, b, other);
    return cuts.slice(1).some((cut, i) => {
      const from = cuts[i] ?? 0;
      if ((cut - from) * lengthM <= SAME_PLACE_M) return false;
      const along = ((from + cut) / 2) * lengthM;
      return pointInPolygon(
        [a[0] + ux * along - uy * stepM, a[1] + uy * along + ux * stepM],
        other,
      );
    });
  });
}

function isOnEdge(p: Point, edges: readonly (readonly [Point, Point])[]): boolean {
  return edges.some(([a, b]) => !farApart(p, p, a, b) && distanceToEdgeM(p, a, b) <= SAME_PLACE_M);
}

/** Whether two polygons share more than an edge or a corner. */
export function overlap(one: Polygon, other: Polygon): boolean {
  const [a, b] = [boundingBox(one), boundingBox(other)];
  const apart =
    a.xMaxM <= b.xMinM || b.xMaxM <= a.xMinM || a.yMaxM <= b.yMinM || b.yMaxM <= a.yMinM;
  if (apart) return false;
  const otherEdges = edgesOf(other);
  const crossing = edgesOf(one).some(([p, q]) =>
    otherEdges.some(([r, s]) => crossesWell(p, q, r, s)),
  );
  return crossing || sharesInside(one, other) || sharesInside(other, one);
}

/** Crosses by more than a tape measure's error. */
function crossesWell(a: Point, b: Point, c: Point, d: Point): boolean {
  if (farApart(a, b, c, d)) return false;
  const clear = [
    distanceToEdgeM(a, c, d),
    distanceToEdgeM(b, c, d),
    distanceToEdgeM(c, a, b),
    distanceToEdgeM(d, a, b),
  ].every((distance) => distance > SAME_PLACE_M);
  return clear && crosses(a, b, c, d);
}
