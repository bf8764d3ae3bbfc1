import { distanceM, distanceToEdgeM, netAreaM2, signedAreaM2 } from '../../geometry/index.ts';
import type { LanePoint, Ring, Surface } from './types.ts';

/** Length of a path, metres. */
export function pathLengthM(points: readonly LanePoint[]): number {
  let sum = 0;
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1], points[i]];
    if (a && b) sum += distanceM(a, b);
  }
  return sum;
}

/** Every ring of a surface, outline first. */
export function ringsOf(surface: Surface): readonly Ring[] {
  return [surface.outer, ...surface.holes];
}

/** The same ring counter-clockwise, so that windings of separate rings add and never cancel. */
export function upright(ring: Ring): Ring {
  return signedAreaM2(ring) < 0 ? ring.toReversed() : ring;
}

/** Area of a clean surface less its holes, m². */
export function surfaceAreaM2(surface: Surface): number {
  return netAreaM2(surface.outer, surface.holes);
}

/** A path without repeated places and without corners that lie on the straight (to a thousandth of a millimetre). */
export function withoutIdle(points: readonly LanePoint[]): LanePoint[] {
  const kept: LanePoint[] = [];
  for (const p of points) {
    const last = kept[kept.length - 1];
    if (last && distanceM(last, p) < 1e-6) continue;
    const before = kept[kept.length - 2];
    // Only a corner passed straight through is idle: a path that turns back on itself keeps its turning place.
    if (before && last && distanceToEdgeM(last, before, p) < 1e-6) kept.pop();
    kept.push(p);
  }
  return kept;
}
