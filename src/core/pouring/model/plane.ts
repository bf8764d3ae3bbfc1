import type { LanePoint, Ring, Surface } from './types.ts';

/** Distance between two places, metres. */
export function distanceM(a: LanePoint, b: LanePoint): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

/** Length of a path, metres. */
export function pathLengthM(points: readonly LanePoint[]): number {
  let sum = 0;
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1], points[i]];
    if (a && b) sum += distanceM(a, b);
  }
  return sum;
}

/** The place a share `t` (0 to 1) of the way from `a` to `b`. */
export function between(a: LanePoint, b: LanePoint, t: number): LanePoint {
  return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
}

/** Share (0 to 1) of the way from `a` to `b` at which that stretch passes nearest to `p`. */
export function nearestShare(p: LanePoint, a: LanePoint, b: LanePoint): number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const squared = dx * dx + dy * dy;
  if (squared === 0) return 0;
  return Math.min(1, Math.max(0, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / squared));
}

/** Distance from `p` to the stretch `a` to `b`, metres. */
export function toSegmentM(p: LanePoint, a: LanePoint, b: LanePoint): number {
  return distanceM(p, between(a, b, nearestShare(p, a, b)));
}

/** Edges of a ring, the last back to the first. */
export function ringEdges(ring: Ring): readonly (readonly [LanePoint, LanePoint])[] {
  return ring.map((from, i) => [from, ring[(i + 1) % ring.length] ?? from]);
}

/** Every ring of a surface, outline first. */
export function ringsOf(surface: Surface): readonly Ring[] {
  return [surface.outer, ...surface.holes];
}

/** Shoelace area, m²: positive when the corners run counter-clockwise. */
export function signedAreaM2(ring: Ring): number {
  let twice = 0;
  for (const [a, b] of ringEdges(ring)) twice += a[0] * b[1] - b[0] * a[1];
  return twice / 2;
}

/** The same ring counter-clockwise, so that windings of separate rings add and never cancel. */
export function upright(ring: Ring): Ring {
  return signedAreaM2(ring) < 0 ? ring.toReversed() : ring;
}

/** Area of a clean surface less its holes, m². */
export function surfaceAreaM2(surface: Surface): number {
  return surface.holes.reduce(
    (area, hole) => area - Math.abs(signedAreaM2(hole)),
    Math.abs(signedAreaM2(surface.outer)),
  );
}

/** Whether a place lies in the rings taken together (even–odd rule); places on an edge go either way. */
export function insideRings(p: LanePoint, rings: readonly Ring[]): boolean {
  let inside = false;
  for (const ring of rings) {
    let before = ring[ring.length - 1];
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

/** A path without repeated places and without corners that lie on the straight (to a thousandth of a millimetre). */
export function withoutIdle(points: readonly LanePoint[]): LanePoint[] {
  const kept: LanePoint[] = [];
  for (const p of points) {
    const last = kept[kept.length - 1];
    if (last && distanceM(last, p) < 1e-6) continue;
    const before = kept[kept.length - 2];
    // Only a corner passed straight through is idle: a path that turns back on itself keeps its turning place.
    if (before && last && toSegmentM(last, before, p) < 1e-6) kept.pop();
    kept.push(p);
  }
  return kept;
}
