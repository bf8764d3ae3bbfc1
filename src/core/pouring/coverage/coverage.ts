/**
 * Proof that lanes cover a surface: no place of it farther than half a swath
 * from a lane. Three independent looks: the surface less everything the
 * lanes reach (clipper), the exact distance along every edge, and a dense
 * grid of places.
 */
import { between, distanceM, distanceToEdgeM, edgesOf, insideRings } from '../../geometry/index.ts';
import { subtract } from './clip.ts';
import { ringsOf, surfaceAreaM2, upright } from '../model/plane.ts';
import { repairSurface, SLIVER_M } from './repair.ts';
import { tidySpans, type Spans } from '../model/spans.ts';
import type { Lane, LanePoint, Ring, Surface } from '../model/types.ts';

export type Coverage = {
  readonly total: boolean;
  /** Share of the surface within half a swath of a lane, 0 to 1. */
  readonly share: number;
  /** Surface out of reach, m². */
  readonly missedM2: number;
  /** Largest distance found from a place of the surface to the lanes, metres. */
  readonly farthestM: number;
  /** The place of that distance. */
  readonly farthestAt: LanePoint;
  /** Longest stretch of an edge out of reach, metres. */
  readonly missedEdgeM: number;
  readonly placesLookedAt: number;
};

export type CoverageOptions = {
  /** Places looked at across one swath, each way. */
  readonly placesASwath?: number;
};

/** Rounding that counts as covered: a hundredth of a millimetre. */
export const COVERAGE_TOLERANCE_M = 1e-5;
/** How far the polygon drawn for what a stretch reaches may fall short of the circle, metres. */
const ARC_SHORTFALL_M = COVERAGE_TOLERANCE_M / 2;
const USUAL_PLACES_A_SWATH = 8;

export type Segment = readonly [LanePoint, LanePoint];

export function segmentsOf(lanes: readonly Pick<Lane, 'points'>[]): Segment[] {
  return lanes.flatMap(({ points }) => {
    const [only] = points;
    if (points.length === 1 && only) return [[only, only] as const];
    return points.slice(1).map((b, i) => [points[i] ?? b, b] as const);
  });
}

/** Everything within `reachM` of a stretch, drawn as a polygon that never reaches farther, and less by at most the shortfall. */
export function capsule([a, b]: Segment, reachM: number, shortfallM = ARC_SHORTFALL_M): Ring {
  const heading = Math.atan2(b[1] - a[1], b[0] - a[0]);
  const corners = Math.ceil(Math.PI / (2 * Math.acos(1 - shortfallM / reachM)));
  const arc = (centre: LanePoint, from: number): LanePoint[] =>
    Array.from({ length: corners + 1 }, (_, k) => {
      const angle = from + (Math.PI * k) / corners;
      return [centre[0] + reachM * Math.cos(angle), centre[1] + reachM * Math.sin(angle)];
    });
  return [...arc(b, heading - Math.PI / 2), ...arc(a, heading + Math.PI / 2)];
}

/** Shares of the edge `p` to `q` within `reachM` of a stretch: one span, as what is in reach is convex. */
export function edgeInReach(p: LanePoint, q: LanePoint, [a, b]: Segment, reachM: number): Spans {
  // Distance to a stretch is convex along the edge: find its least place, then both sides where it passes the reach.
  const at = (t: number) => distanceToEdgeM(between(p, q, t), a, b);
  let [low, high] = [0, 1];
  for (let i = 0; i < 100; i += 1) {
    const third = (high - low) / 3;
    if (at(low + third) <= at(high - third)) high -= third;
    else low += third;
  }
  const least = [0, 1, (low + high) / 2].reduce((x, y) => (at(y) < at(x) ? y : x));
  if (at(least) > reachM) return [];
  const side = (out: number) => {
    if (at(out) <= reachM) return out;
    let [inner, outer] = [least, out];
    for (let i = 0; i < 60; i += 1) {
      const middle = (inner + outer) / 2;
      if (at(middle) <= reachM) inner = middle;
      else outer = middle;
    }
    return inner;
  };
  return [[side(0), side(1)]];
}

function nearBox(p: LanePoint, q: LanePoint, [a, b]: Segment, reachM: number): boolean {
  return (
    Math.min(p[0], q[0]) <= Math.max(a[0], b[0]) + reachM &&
    Math.max(p[0], q[0]) >= Math.min(a[0], b[0]) - reachM &&
    Math.min(p[1], q[1]) <= Math.max(a[1], b[1]) + reachM &&
    Math.max(p[1], q[1]) >= Math.min(a[1], b[1]) - reachM
  );
}

function missedOnEdges(surface: Surface, segments: readonly Segment[], reachM: number): number {
  let worstM = 0;
  for (const [p, q] of ringsOf(surface).flatMap(edgesOf)) {
    const lengthM = distanceM(p, q);
    const spans = tidySpans(
      segments
        .filter((s) => nearBox(p, q, s, reachM))
        .flatMap((s) => [...edgeInReach(p, q, s, reachM)]),
      1e-6 / Math.max(lengthM, 1e-6),
    );
    let reached = 0;
    for (const [from, to] of [...spans, [1, 1] as const]) {
      worstM = Math.max(worstM, (from - reached) * lengthM);
      reached = Math.max(reached, to);
    }
  }
  return worstM;
}

/** Stretches by the square of a grid they come near to, so that a place asks only its neighbours. */
function byTile(segments: readonly Segment[], tileM: number): (p: LanePoint) => readonly Segment[] {
  const tiles = new Map<string, Segment[]>();
  const tile = (v: number) => Math.floor(v / tileM);
  for (const s of segments) {
    const [a, b] = s;
    for (let x = tile(Math.min(a[0], b[0])) - 1; x <= tile(Math.max(a[0], b[0])) + 1; x += 1) {
      for (let y = tile(Math.min(a[1], b[1])) - 1; y <= tile(Math.max(a[1], b[1])) + 1; y += 1) {
        const key = `${x},${y}`;
        const list = tiles.get(key);
        if (list) list.push(s);
        else tiles.set(key, [s]);
      }
    }
  }
  return (p) => tiles.get(`${tile(p[0])},${tile(p[1])}`) ?? segments;
}

function* places(surface: Surface, stepM: number): Generator<LanePoint> {
  const rings = ringsOf(surface);
  for (const ring of rings) {
    for (const [a, b] of edgesOf(ring)) {
      const steps = Math.max(1, Math.ceil(distanceM(a, b) / stepM));
      for (let k = 0; k < steps; k += 1) yield between(a, b, k / steps);
    }
  }
  const xs = surface.outer.map((p) => p[0]);
  const ys = surface.outer.map((p) => p[1]);
  for (let x = Math.min(...xs) + stepM / 2; x < Math.max(...xs); x += stepM) {
    for (let y = Math.min(...ys) + stepM / 2; y < Math.max(...ys); y += stepM) {
      if (insideRings([x, y], rings)) yield [x, y];
    }
  }
}

/**
 * Looks whether lanes reach every place of a surface.
 * @param swathM width of a pass, metres; a place is reached within half of it
 * @throws LanesRefusal when the surface is none
 */
export function coverage(
  lanes: readonly Pick<Lane, 'points'>[],
  surface: Surface,
  swathM: number,
  options: CoverageOptions = {},
): Coverage {
  const { pieces } = repairSurface(surface);
  const reachM = swathM / 2 + COVERAGE_TOLERANCE_M;
  const segments = segmentsOf(lanes);
  const reach = segments.map((s) => capsule(s, reachM));
  let missedM2 = 0;
  let areaM2 = 0;
  let missedEdgeM = 0;
  let farthest = { farM: 0, at: [0, 0] as LanePoint, looked: 0 };
  const near = byTile(segments, swathM);
  for (const piece of pieces) {
    areaM2 += surfaceAreaM2(piece);
    missedM2 += subtract([upright(piece.outer)], [...piece.holes.map(upright), ...reach])
      .filter((s) => !isThin(s))
      .reduce((sum, s) => sum + surfaceAreaM2(s), 0);
    missedEdgeM = Math.max(missedEdgeM, missedOnEdges(piece, segments, reachM));
    for (const p of places(piece, swathM / (options.placesASwath ?? USUAL_PLACES_A_SWATH))) {
      const farM = near(p).reduce(
        (least, [a, b]) => Math.min(least, distanceToEdgeM(p, a, b)),
        Infinity,
      );
      farthest.looked += 1;
      if (farM > farthest.farM) farthest = { farM, at: p, looked: farthest.looked };
    }
  }
  return {
    total: missedM2 === 0 && missedEdgeM <= COVERAGE_TOLERANCE_M && farthest.farM <= reachM,
    share: 1 - missedM2 / areaM2,
    missedM2,
    farthestM: farthest.farM,
    farthestAt: farthest.at,
    missedEdgeM,
    placesLookedAt: farthest.looked,
  };
}

/** Rounding of the clipper's grid leaves threads. */
export function isThin(surface: Surface): boolean {
  const perimeterM = edgesOf(surface.outer).reduce((sum, [a, b]) => sum + distanceM(a, b), 0);
  return (2 * surfaceAreaM2(surface)) / perimeterM < SLIVER_M / 2;
}
