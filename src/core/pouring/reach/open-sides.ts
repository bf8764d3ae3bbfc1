/**
 * At which stretches of an outline one can stand: as told; else in front of
 * the walls; else, round what stands at no wall, everywhere. What is built in
 * front of a side takes its stretch away.
 */
import {
  between,
  distanceM,
  distanceToEdgeM,
  edgesOf,
  insideRings,
  signedAreaM2,
} from '../../geometry/index.ts';
import { repairSurface } from '../coverage/repair.ts';
import { backsOf } from '../lanes/backs.ts';
import { edgeLanesOf } from '../lanes/edge-lanes.ts';
import { surfaceAreaM2 } from '../model/plane.ts';
import type { EdgeOfOuter, LanePoint, Ring, StandSide, Surface } from '../model/types.ts';

export type OpenSidesOptions = {
  /** Edges that stand at a wall. */
  readonly backEdges: readonly EdgeOfOuter[];
  /** Edges at which the household says one can stand. */
  readonly told?: readonly EdgeOfOuter[];
  /** Outlines of what stands on the floor nearby. */
  readonly inTheWay: readonly Ring[];
};

/**
 * Room in front of an edge in which a person stands, metres: half of what a
 * body takes, and how far off the edge its middle is. Together a gap of 0.4 m
 * is enough (common practice, no published source).
 */
const BODY = { radiusM: 0.15, offM: 0.25 } as const;
/** Places tried along an edge lie this far apart, metres. */
const STEP_M = 0.025;
/** Shorter stretches are no place to stand, metres. */
const LEAST_STAND_M = 0.05;
/** An edge lies on a front run when its middle is this near, metres. */
const ON_RUN_M = 1e-3;

function sameEdge([a, b]: EdgeOfOuter, from: number, to: number): boolean {
  return (a === from && b === to) || (a === to && b === from);
}

/** Front edges of a surface at walls, as its edge lanes have them. */
function frontRuns(surface: Surface, backEdges: readonly EdgeOfOuter[]): readonly LanePoint[][] {
  const { pieces } = repairSurface({ outer: surface.outer, holes: [] });
  const [largest] = pieces.toSorted((p, q) => surfaceAreaM2(q) - surfaceAreaM2(p));
  const backs = backsOf(surface.outer, (largest ?? surface).outer, backEdges);
  return edgeLanesOf(pieces, backs)
    .filter(({ kind }) => kind === 'front')
    .map(({ points }) => [...points]);
}

function onRun(p: LanePoint, runs: readonly LanePoint[][]): boolean {
  return runs.some((run) =>
    run.some((q, i) => i > 0 && distanceToEdgeM(p, run[i - 1] ?? q, q) < ON_RUN_M),
  );
}

/** Whether a person has room in front of a place of an edge. */
function hasRoom(at: LanePoint, out: LanePoint, inTheWay: readonly Ring[]): boolean {
  const middle: LanePoint = [at[0] + out[0] * BODY.offM, at[1] + out[1] * BODY.offM];
  return inTheWay.every(
    (ring) =>
      !insideRings(middle, [ring]) &&
      edgesOf(ring).every(([a, b]) => distanceToEdgeM(middle, a, b) >= BODY.radiusM),
  );
}

/** Stretches of an edge with room in front of them. */
function freeStretches(
  edge: EdgeOfOuter,
  [a, b]: readonly [LanePoint, LanePoint],
  turn: number,
  inTheWay: readonly Ring[],
): readonly StandSide[] {
  const lengthM = distanceM(a, b);
  const out: LanePoint = [((b[1] - a[1]) / lengthM) * turn, ((a[0] - b[0]) / lengthM) * turn];
  const steps = Math.max(1, Math.ceil(lengthM / STEP_M));
  const found: [number, number][] = [];
  for (let k = 0; k < steps; k += 1) {
    if (!hasRoom(between(a, b, (k + 0.5) / steps), out, inTheWay)) continue;
    const last = found[found.length - 1];
    if (last && last[1] === k) last[1] = k + 1;
    else found.push([k, k + 1]);
  }
  // Where its middle may stand a body is half a width wider.
  const share = (k: number, sideM: number) => Math.min(1, Math.max(0, k / steps + sideM / lengthM));
  return found
    .map(([from, to]) => ({
      edge,
      a: between(a, b, share(from, -BODY.radiusM)),
      b: between(a, b, share(to, BODY.radiusM)),
    }))
    .filter((side) => distanceM(side.a, side.b) >= LEAST_STAND_M);
}

/**
 * Stretches of a surface's edges at which one can stand.
 * @throws LanesRefusal as `repairSurface`, no-such-edge
 */
export function openSides(surface: Surface, options: OpenSidesOptions): readonly StandSide[] {
  const { outer } = surface;
  const { backEdges, told, inTheWay } = options;
  const count = outer.length;
  const turn = Math.sign(signedAreaM2(outer));
  const runs = told || backEdges.length === 0 ? [] : frontRuns(surface, backEdges);
  return edgesOf(outer).flatMap((line, from): readonly StandSide[] => {
    const to = (from + 1) % count;
    if (backEdges.some((edge) => sameEdge(edge, from, to))) return [];
    if (distanceM(...line) < LEAST_STAND_M) return [];
    if (told) {
      const open = told.some((edge) => sameEdge(edge, from, to));
      return open ? [{ edge: [from, to], a: line[0], b: line[1] }] : [];
    }
    if (backEdges.length > 0 && !onRun(between(...line, 0.5), runs)) return [];
    return freeStretches([from, to], line, turn, inTheWay);
  });
}
