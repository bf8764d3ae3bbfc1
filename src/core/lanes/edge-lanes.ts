import { legsOf, standsOnM, toFront, type Back } from './legs.ts';
import {
  distanceM,
  pathLengthM,
  ringEdges,
  signedAreaM2,
  toSegmentM,
  withoutIdle,
} from './plane.ts';
import type { EdgeLane, LanePoint, Ring, Surface } from './types.ts';

/** A front edge looks away from the back: its outward side within this of straight to the front. */
const FRONT_COSINE = Math.cos((50 * Math.PI) / 180);
/** Shorter edges are corners cut off, metres. */
const SHORTEST_EDGE_M = 1e-3;
/** Edges of a leg this near the surface's outline are on it, and not cuts between legs, metres. */
const ON_OUTLINE_M = 1e-4;

/** Runs of edges of a leg that look to the front, each a line. */
function frontRuns(ring: Ring, back: Back, outline: Ring, backs: readonly Back[]): LanePoint[][] {
  const front = toFront(back);
  const turn = Math.sign(signedAreaM2(ring));
  const onOutline = (p: LanePoint) =>
    ringEdges(outline).some(([a, b]) => toSegmentM(p, a, b) < ON_OUTLINE_M);
  const looksFront = ringEdges(ring).map(([p, q]) => {
    const lengthM = distanceM(p, q);
    if (lengthM < SHORTEST_EDGE_M) return false;
    const outward: LanePoint = [
      ((q[1] - p[1]) * turn) / lengthM,
      (-(q[0] - p[0]) * turn) / lengthM,
    ];
    const faces = outward[0] * front[0] + outward[1] * front[1] > FRONT_COSINE;
    const middle: LanePoint = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
    const atWall = backs.some((b) => standsOnM([p, q], b) > SHORTEST_EDGE_M);
    return faces && onOutline(middle) && !atWall;
  });
  const runs: LanePoint[][] = [];
  const count = ring.length;
  // Begin behind an edge that is not a front edge, so that no run is cut in two by the list's beginning.
  const begin = Math.max(0, looksFront.indexOf(false));
  for (let k = 1; k <= count; k += 1) {
    const i = (begin + k) % count;
    const [p, q] = [ring[i], ring[(i + 1) % count]];
    if (!looksFront[i] || !p || !q) continue;
    const open = runs[runs.length - 1];
    const continues = looksFront[(i + count - 1) % count] && k > 1;
    if (open && continues) open.push(q);
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
    for (const { surface, back } of legsOf(piece, backs)) {
      for (const run of frontRuns(surface.outer, back, piece.outer, backs)) add('front', run);
    }
  }
  for (const piece of pieces) {
    for (const hole of piece.holes) {
      const [first] = hole;

      if (first) add('rim', [...hole, first]);
    }
  }
  return lanes;
}
