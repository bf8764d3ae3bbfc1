import { distanceM } from '../../geometry/index.ts';
import { LanesRefusal } from '../model/refusal.ts';
import type { LanePoint, Ring } from '../model/types.ts';

function cross(o: LanePoint, a: LanePoint, b: LanePoint): number {
  return (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);
}

/** Convex hull, counter-clockwise, without corners on the straight (Andrew's monotone chain, 1979). */
export function convexHull(points: readonly LanePoint[]): Ring {
  const sorted = points.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (list: readonly LanePoint[]) => {
    const chain: LanePoint[] = [];
    for (const p of list) {
      for (;;) {
        const [a, b] = [chain[chain.length - 2], chain[chain.length - 1]];
        if (!a || !b || cross(a, b, p) > 0) break;
        chain.pop();
      }
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}

/** The narrowest way through a surface: between two parallel lines, one on the edge `a` to `b`. */
export type MinimumWidth = {
  readonly widthM: number;
  readonly a: LanePoint;
  readonly b: LanePoint;
  readonly opposite: LanePoint;
};

/**
 * Smallest distance between parallel lines that hold all points between them,
 * by rotating calipers (Shamos 1978; Toussaint 1983): one of the lines lies
 * on an edge of the hull.
 * @throws LanesRefusal no-area when the points lie on one line
 */
export function minimumWidth(points: readonly LanePoint[]): MinimumWidth {
  const hull = convexHull(points);
  const count = hull.length >= 3 ? hull.length : 0;
  let best: MinimumWidth | undefined;
  let far = 1;
  for (let i = 0; i < count; i += 1) {
    const [a, b] = [hull[i], hull[(i + 1) % count]];
    if (!a || !b) continue;
    for (let steps = 0; steps < count; steps += 1) {
      const [p, next] = [hull[far % count], hull[(far + 1) % count]];
      if (!p || !next || cross(a, b, next) < cross(a, b, p)) break;
      far += 1;
    }
    const opposite = hull[far % count];
    if (!opposite) continue;
    const widthM = cross(a, b, opposite) / distanceM(a, b);
    if (!best || widthM < best.widthM) best = { widthM, a, b, opposite };
  }
  if (!best) {
    const advice = 'Give corners that enclose a surface.';
    throw new LanesRefusal('no-area', 'points', 'all on one line', 'three or more apart', advice);
  }
  return best;
}
