import type { Point } from './types.ts';

/** Distance between two points, metres. */
export function distanceM(a: Point, b: Point): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

/** The point a share `t` (0 to 1) of the way from `a` to `b`. */
export function between(a: Point, b: Point, t: number): Point {
  return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
}

/** Share (0 to 1) of the way from `a` to `b` at which that stretch passes nearest to `p`. */
export function nearestShare(p: Point, a: Point, b: Point): number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const squared = dx * dx + dy * dy;
  if (squared === 0) return 0;
  return Math.min(1, Math.max(0, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / squared));
}

/** Shortest distance in metres from a point to the stretch from `a` to `b`. */
export function distanceToEdgeM(p: Point, a: Point, b: Point): number {
  return distanceM(p, between(a, b, nearestShare(p, a, b)));
}
