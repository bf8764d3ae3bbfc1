import type { Point } from '../../core/kitchen/index.ts';
import type { Stretch } from '../../core/plan/index.ts';

/** What has been poured of some stretches, and where the stream is now. */
export type PouredSoFar = {
  readonly lines: readonly (readonly Point[])[];
  readonly at: Point | undefined;
};

function distanceM(a: Point, b: Point): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

function lengthM(points: readonly Point[]): number {
  return points.reduce((sum, p, i) => sum + (i === 0 ? 0 : distanceM(points[i - 1] ?? p, p)), 0);
}

/**
 * The first `share` of the stretches by length, at an even hand speed.
 * @param share 0 to 1; outside it is taken as the nearer end
 */
export function pouredUpTo(stretches: readonly Stretch[], share: number): PouredSoFar {
  const total = stretches.reduce((sum, { points }) => sum + lengthM(points), 0);
  let leftM = Math.min(1, Math.max(0, share)) * total;
  const lines: (readonly Point[])[] = [];
  let at: Point | undefined = stretches[0]?.points[0];
  for (const { points } of stretches) {
    const done: Point[] = [];
    for (const [i, p] of points.entries()) {
      const before = points[i - 1];
      if (!before) {
        done.push(p);
        at = p;
        continue;
      }
      const stepM = distanceM(before, p);
      if (stepM > leftM) {
        const t = stepM === 0 ? 0 : leftM / stepM;
        at = [before[0] + (p[0] - before[0]) * t, before[1] + (p[1] - before[1]) * t];
        lines.push([...done, at]);
        return { lines, at };
      }
      leftM -= stepM;
      done.push(p);
      at = p;
    }
    lines.push(done);
    if (leftM <= 1e-9) break;
  }
  return { lines, at };
}
