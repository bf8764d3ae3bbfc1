import type { LanePoint, LanesOptions, LanesPlan, Ring } from '../../../src/core/pouring/index.ts';

/** Rounding of clipper and arcs, metres. */
export const ROUNDING_M = 2e-5;
/** No arm is told more finely, metres. */
const ARM_ROUNDING_M = 2e-4;

/** Distance to a stretch, written anew so that the planner's own is not asked. */
export function awayM([x, y]: LanePoint, [ax, ay]: LanePoint, [bx, by]: LanePoint): number {
  const [dx, dy] = [bx - ax, by - ay];
  const t = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1);
  const s = Math.min(1, Math.max(0, t));
  return Math.hypot(x - ax - s * dx, y - ay - s * dy);
}

function isInside([x, y]: LanePoint, rings: readonly Ring[]): boolean {
  let inside = false;
  for (const ring of rings) {
    ring.forEach(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length] ?? [ax, ay];
      if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
    });
  }
  return inside;
}

type Raster = {
  /** Places within an arm of a side that no lane wets; none is allowed. */
  readonly forgotten: readonly string[];
  /** Places that no lane wets and the plan does not name; none is allowed. */
  readonly unnamed: readonly string[];
  readonly dryM2: number;
};

/** Looks at a plan by a raster of its own: which places are in reach, which are wetted, which are named. */
export function rastered(plan: LanesPlan, options: LanesOptions, stepM: number): Raster {
  const { sides = [], armM = 0.65, swathM } = options;
  const rings = plan.pieces.flatMap(({ outer, holes }) => [outer, ...holes]);
  const segments = plan.lanes.flatMap(({ points }) =>
    points.slice(1).map((b, i) => [points[i] ?? b, b] as const),
  );
  const xs = rings.flatMap((ring) => ring.map(([x]) => x));
  const ys = rings.flatMap((ring) => ring.map(([, y]) => y));
  const forgotten: string[] = [];
  const unnamed: string[] = [];
  let dry = 0;
  for (let x = Math.min(...xs) + stepM / 2; x < Math.max(...xs); x += stepM) {
    for (let y = Math.min(...ys) + stepM / 2; y < Math.max(...ys); y += stepM) {
      const p: LanePoint = [x, y];
      if (!isInside(p, rings)) continue;
      if (segments.some(([a, b]) => awayM(p, a, b) <= swathM / 2 + ROUNDING_M)) continue;
      dry += 1;
      if (sides.some(({ a, b }) => awayM(p, a, b) <= armM - ARM_ROUNDING_M))
        forgotten.push(p.join());
      if (!plan.unreached.some(({ outline }) => isInside(p, [outline]))) unnamed.push(p.join());
    }
  }
  return { forgotten, unnamed, dryM2: dry * stepM * stepM };
}
