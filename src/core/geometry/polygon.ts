import type { Point, Polygon } from '../kitchen/model/kitchen.ts';

/** Smallest upright rectangle round some points, metres. */
export type Box = {
  readonly xMinM: number;
  readonly yMinM: number;
  readonly xMaxM: number;
  readonly yMaxM: number;
};

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

/** Length round a polygon, metres. */
export function perimeterM(polygon: Polygon): number {
  return edgesOf(polygon).reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0);
}

/** Smallest upright rectangle round the points; a list with no point gives a box turned inside out. */
export function boundingBox(points: readonly Point[]): Box {
  let box: Box = { xMinM: Infinity, yMinM: Infinity, xMaxM: -Infinity, yMaxM: -Infinity };
  for (const [x, y] of points) {
    box = {
      xMinM: Math.min(box.xMinM, x),
      yMinM: Math.min(box.yMinM, y),
      xMaxM: Math.max(box.xMaxM, x),
      yMaxM: Math.max(box.yMaxM, y),
    };
  }
  return box;
}

/** Shortest distance in metres from a point to the stretch from `a` to `b`. */
export function distanceToEdgeM(point: Point, a: Point, b: Point): number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const lengthSquared = dx * dx + dy * dy;
  const along =
    lengthSquared === 0 ? 0 : ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / lengthSquared;
  const t = Math.min(1, Math.max(0, along));
  return Math.hypot(point[0] - a[0] - t * dx, point[1] - a[1] - t * dy);
}

/**
 * Whether a point lies in a polygon (even–odd rule).
 * @param toleranceM a point this close to an edge counts as inside; 0 leaves edge points to rounding
 */
export function pointInPolygon(point: Point, polygon: Polygon, toleranceM = 0): boolean {
  if (
    toleranceM > 0 &&
    edgesOf(polygon).some(([a, b]) => distanceToEdgeM(point, a, b) <= toleranceM)
  ) {
    return true;
  }
  let inside = false;
  let from = polygon.at(-1);
  for (const to of polygon) {
    const [ax, ay] = from ?? to;
    const [bx, by] = to;
    const straddles = ay > point[1] !== by > point[1];
    if (straddles && point[0] < ((bx - ax) * (point[1] - ay)) / (by - ay) + ax) inside = !inside;
    from = to;
  }
  return inside;
}
