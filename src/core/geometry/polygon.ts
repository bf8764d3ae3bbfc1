import { boundingBox, middleOf } from './box.ts';
import { distanceM, distanceToEdgeM } from './segment.ts';
import type { Box, Point, Polygon } from './types.ts';

/** The edges of a polygon, last corner back to the first. */
export function edgesOf(polygon: Polygon): readonly (readonly [Point, Point])[] {
  return polygon.map((from, i) => [from, polygon[(i + 1) % polygon.length] ?? from]);
}

/** Shoelace sum: square metres, positive when the corners run counter-clockwise. */
export function signedAreaM2(polygon: Polygon): number {
  let twice = 0;
  for (const [[ax, ay], [bx, by]] of edgesOf(polygon)) twice += ax * by - bx * ay;
  return twice / 2;
}

/** Area of a simple polygon in m², whichever way its corners run. */
export function areaM2(polygon: Polygon): number {
  return Math.abs(signedAreaM2(polygon));
}

/** Area of an outline less its holes, m²; holes are taken to lie inside and apart. */
export function netAreaM2(outline: Polygon, holes: readonly Polygon[]): number {
  return holes.reduce((area, hole) => area - areaM2(hole), areaM2(outline));
}

/** Which way an edge looks in the plan view, where y grows away from the viewer. */
export type SideName = 'far' | 'near' | 'left' | 'right';

/** Which way the edge from corner `edge` to the next looks, outward. */
export function sideName(polygon: Polygon, edge: number): SideName {
  const [a, b] = [polygon[edge] ?? [0, 0], polygon[(edge + 1) % polygon.length] ?? [0, 0]];
  const turn = Math.sign(signedAreaM2(polygon)) || 1;
  const outX = turn * (b[1] - a[1]);
  const outY = turn * (a[0] - b[0]);
  if (Math.abs(outY) >= Math.abs(outX)) return outY > 0 ? 'far' : 'near';
  return outX > 0 ? 'right' : 'left';
}

/** Length round a polygon, metres. */
export function perimeterM(polygon: Polygon): number {
  return edgesOf(polygon).reduce((sum, [a, b]) => sum + distanceM(a, b), 0);
}

/** Whether a point lies in some polygons taken together (even–odd rule); points on an edge go either way. */
export function insideRings(p: Point, rings: readonly Polygon[]): boolean {
  let inside = false;
  for (const ring of rings) {
    let before = ring.at(-1);
    for (const corner of ring) {
      if (before && corner[1] > p[1] !== before[1] > p[1]) {
        const t = (p[1] - corner[1]) / (before[1] - corner[1]);
        if (p[0] < corner[0] + t * (before[0] - corner[0])) inside = !inside;
      }
      before = corner;
    }
  }
  return inside;
}

/**
 * Whether a point lies in a polygon (even–odd rule).
 * @param toleranceM a point this close to an edge counts as inside; 0 leaves edge points to rounding
 */
export function pointInPolygon(point: Point, polygon: Polygon, toleranceM = 0): boolean {
  const onEdge =
    toleranceM > 0 && edgesOf(polygon).some(([a, b]) => distanceToEdgeM(point, a, b) <= toleranceM);
  return onEdge || insideRings(point, [polygon]);
}

/** Level lines on which a point inside is looked for, as shares of the depth. */
const LEVELS = [0.5, 0.3, 0.7, 0.1, 0.9, 0.23, 0.77, 0.017, 0.983];

/** A point well inside a simple polygon: the middle of its widest level stretch. */
export function insidePoint(polygon: Polygon): Point {
  const box = boundingBox(polygon);
  let best: Point = middleOf(polygon);
  let widest = 0;
  for (const level of LEVELS) {
    const y = box.yMinM + (box.yMaxM - box.yMinM) * level;
    const crossings = edgesOf(polygon)
      .filter(([a, b]) => a[1] > y !== b[1] > y)
      .map(([a, b]) => a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]))
      .toSorted((p, q) => p - q);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const [left = 0, right = 0] = crossings.slice(i, i + 2);
      if (right - left > widest) {
        widest = right - left;
        best = [(left + right) / 2, y];
      }
    }
  }
  return best;
}

/** Things that touch do not stand in each other's way, metres. */
const TOUCH_M = 0.002;

function edgeMeetsBox([a, b]: readonly [Point, Point], box: Box): boolean {
  let [from, to] = [0, 1];
  const sides = [
    [a[0], b[0] - a[0], box.xMinM, box.xMaxM],
    [a[1], b[1] - a[1], box.yMinM, box.yMaxM],
  ] as const;
  for (const [start, run, min, max] of sides) {
    if (run === 0) {
      if (start < min || start > max) return false;
      continue;
    }
    const one = (min - start) / run;
    const other = (max - start) / run;
    from = Math.max(from, Math.min(one, other));
    to = Math.min(to, Math.max(one, other));
  }
  return from <= to;
}

/** Whether an upright box and a polygon share more than a touch. */
export function boxMeets(box: Box, polygon: Polygon): boolean {
  const inner: Box = {
    xMinM: box.xMinM + TOUCH_M,
    yMinM: box.yMinM + TOUCH_M,
    xMaxM: box.xMaxM - TOUCH_M,
    yMaxM: box.yMaxM - TOUCH_M,
  };
  if (edgesOf(polygon).some((edge) => edgeMeetsBox(edge, inner))) return true;
  return pointInPolygon(
    [(inner.xMinM + inner.xMaxM) / 2, (inner.yMinM + inner.yMaxM) / 2],
    polygon,
  );
}
