import { distanceM, edgesOf, insideRings, signedAreaM2 } from '../../geometry/index.ts';
import { legsOf, standsOnM, toFront, type Back, type Leg } from './legs.ts';
import { pathLengthM, withoutIdle } from '../model/plane.ts';
import type { EdgeLane, LanePoint, Ring, Surface } from '../model/types.ts';

/** A front edge looks away from the back: its outward side within this of straight to the front. */
const FRONT_COSINE = Math.cos((50 * Math.PI) / 180);
/** Shorter edges are corners cut off, metres. */
const SHORTEST_EDGE_M = 1e-3;
/** How far inside an edge its leg is looked for, metres. */
const PROBE_M = 1e-4;

/** Which edges of an outline look to the front of the leg they bound. */
function looksFront(outline: Ring, legs: readonly Leg[], backs: readonly Back[]): boolean[] {
  const turn = Math.sign(signedAreaM2(outline));
  return edgesOf(outline).map(([p, q]) => {
    const lengthM = distanceM(p, q);
    if (lengthM < SHORTEST_EDGE_M) return false;
    if (backs.some((back) => standsOnM([p, q], back) > SHORTEST_EDGE_M)) return false;
    const outward: LanePoint = [
      ((q[1] - p[1]) * turn) / lengthM,
      (-(q[0] - p[0]) * turn) / lengthM,
    ];
    const beside: LanePoint = [
      (p[0] + q[0]) / 2 - outward[0] * PROBE_M,
      (p[1] + q[1]) / 2 - outward[1] * PROBE_M,
    ];
    const leg = legs.find(({ surface }) => insideRings(beside, [surface.outer])) ?? legs[0];
    if (!leg) return false;
    const front = toFront(leg.back);
    return outward[0] * front[0] + outward[1] * front[1] > FRONT_COSINE;
  });
}

/** Runs of edges that look to the front, each a line. */
function frontRuns(outline: Ring, legs: readonly Leg[], backs: readonly Back[]): LanePoint[][] {
  const looks = looksFront(outline, legs, backs);
  const runs: LanePoint[][] = [];
  const count = outline.length;
  // Begin behind an edge that is not a front edge, so that no run is cut in two by the list's beginning.
  const begin = Math.max(0, looks.indexOf(false));
  for (let k = 1; k <= count; k += 1) {
    const i = (begin + k) % count;
    const [p, q] = [outline[i], outline[(i + 1) % count]];
    if (!looks[i] || !p || !q) continue;
    const open = runs[runs.length - 1];
    if (open && k > 1 && looks[(i + count - 1) % count]) open.push(q);
    else runs.push([p, q]);
  }
  return runs;
}

/**
 * Edges poured as lanes of their own after the surface: the front edge of
 * every leg, then the rim of every cut-out all the way round.
 */
export function edgeLanesOf(pieces: readonly Surface[], backs: readonly Back[]): EdgeLane[] {
  const lanes: EdgeLane[] = [];
  const add = (kind: EdgeLane['kind'], path: readonly LanePoint[]) => {
    const points = withoutIdle(path);
    lanes.push({ kind, points, lengthM: pathLengthM(points) });
  };
  for (const piece of pieces) {
    for (const run of frontRuns(piece.outer, legsOf(piece, backs), backs)) add('front', run);
  }
  for (const piece of pieces) {
    for (const hole of piece.holes) {
      const [first] = hole;

      if (first) add('rim', [...hole, first]);
    }
  }
  return lanes;
}
