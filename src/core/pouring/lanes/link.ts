/**
 * How the kettle gets from the end of one row to the beginning of the next:
 * pouring on, straight or along the rim, or lifted and carried.
 */
import {
  between,
  distanceM,
  distanceToEdgeM,
  edgesOf,
  insideRings,
  nearestShare,
} from '../../geometry/index.ts';
import { pathLengthM } from '../model/plane.ts';
import type { LanePoint, Ring, Surface } from '../model/types.ts';
import { ringsOf } from '../model/plane.ts';

type Link = {
  readonly pours: boolean;
  /** From end to beginning, both included. */
  readonly points: readonly LanePoint[];
  readonly lengthM: number;
  /** Metres of pouring this link is worth: its length, and for a lift the bother. */
  readonly costM: number;
};

export type Linker = (from: LanePoint, to: LanePoint) => Link;

/** A lift (tilt back, move, begin anew) is worth this much pouring, in swaths. */
const LIFT_SWATHS = 4;
/** A metre of carrying against a metre of pouring: it costs steps and no water. */
const CARRY_WEIGHT = 0.3;
/** This near an edge counts as inside, metres: rows end on edges. */
const ON_EDGE_M = 5e-6;

type Edge = { readonly ring: number; readonly a: LanePoint; readonly b: LanePoint };

function onOrInside(p: LanePoint, rings: readonly Ring[], edges: readonly Edge[]): boolean {
  return insideRings(p, rings) || edges.some(({ a, b }) => distanceToEdgeM(p, a, b) <= ON_EDGE_M);
}

/** Whether the straight from `from` to `to` stays on the surface. */
function straightInside(
  from: LanePoint,
  to: LanePoint,
  rings: readonly Ring[],
  edges: readonly Edge[],
): boolean {
  const shares = [0, 1];
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  for (const { a, b } of edges) {
    const sideA = dx * (a[1] - from[1]) - dy * (a[0] - from[0]);
    const sideB = dx * (b[1] - from[1]) - dy * (b[0] - from[0]);
    if (sideA > 0 === sideB > 0 && sideA !== 0 && sideB !== 0) continue;
    const place = sideA === sideB ? a : between(a, b, sideA / (sideA - sideB));
    const share = nearestShare(place, from, to);
    if (share > 0 && share < 1) shares.push(share);
  }
  shares.sort((x, y) => x - y);
  const lengthM = Math.hypot(dx, dy);
  for (let i = 1; i < shares.length; i += 1) {
    const [s, t] = [shares[i - 1] ?? 0, shares[i] ?? 0];
    if ((t - s) * lengthM < ON_EDGE_M) continue;
    if (!onOrInside(between(from, to, (s + t) / 2), rings, edges)) return false;
  }
  return true;
}

type OnRim = {
  readonly ring: number;
  readonly edge: number;
  readonly place: LanePoint;
  readonly farM: number;
};

function nearestRim(p: LanePoint, rings: readonly Ring[]): OnRim | undefined {
  let best: OnRim | undefined;
  rings.forEach((ring, ringNumber) => {
    edgesOf(ring).forEach(([a, b], edge) => {
      const place = between(a, b, nearestShare(p, a, b));
      const farM = distanceM(p, place);
      if (!best || farM < best.farM) best = { ring: ringNumber, edge, place, farM };
    });
  });
  return best;
}

/** The shorter way round a ring between two places on it. */
function alongRim(ring: Ring, from: OnRim, to: OnRim): LanePoint[] {
  const count = ring.length;
  const corner = (i: number) => ring[((i % count) + count) % count] ?? from.place;
  const ahead: LanePoint[] = [from.place];
  const startShare = distanceM(corner(from.edge), from.place);
  const sameEdgeAhead = from.edge === to.edge && distanceM(corner(to.edge), to.place) >= startShare;
  if (!sameEdgeAhead) {
    for (let i = from.edge + 1; ; i += 1) {
      ahead.push(corner(i));
      if (((i % count) + count) % count === to.edge) break;
    }
  }
  ahead.push(to.place);
  const back: LanePoint[] = [from.place];
  if (!(from.edge === to.edge && !sameEdgeAhead)) {
    for (let i = from.edge; ; i -= 1) {
      back.push(corner(i));
      if ((((i - 1) % count) + count) % count === to.edge) break;
    }
  }
  back.push(to.place);
  return pathLengthM(ahead) <= pathLengthM(back) ? ahead : back;
}

/** The kettle lifted and carried straight over. */
function lifted(from: LanePoint, to: LanePoint, swathM: number): Link {
  const lengthM = distanceM(from, to);
  const costM = LIFT_SWATHS * swathM + CARRY_WEIGHT * lengthM;
  return { pours: false, points: [from, to], lengthM, costM };
}

/** The same linker, which lifts where pouring on would lead out of `reached`. */
export function linkWithin(
  link: Linker,
  swathM: number,
  reached: (points: readonly LanePoint[]) => boolean,
): Linker {
  return (from, to) => {
    const way = link(from, to);
    return !way.pours || reached(way.points) ? way : lifted(from, to, swathM);
  };
}

/** A linker over clean surfaces; answers are kept, as the same ends are asked for often. */
export function linker(pieces: readonly Surface[], swathM: number): Linker {
  const rings = pieces.flatMap(ringsOf);
  const edges = rings.flatMap((ring, i) => edgesOf(ring).map(([a, b]) => ({ ring: i, a, b })));
  const liftM = LIFT_SWATHS * swathM;
  const rims = new Map<LanePoint, OnRim | undefined>();
  const rimOf = (p: LanePoint) => {
    if (!rims.has(p)) rims.set(p, nearestRim(p, rings));
    return rims.get(p);
  };
  return (from, to) => {
    const straightM = distanceM(from, to);
    const lift = lifted(from, to, swathM);
    if (straightM > liftM) return lift;
    if (straightInside(from, to, rings, edges)) {
      return { pours: true, points: [from, to], lengthM: straightM, costM: straightM };
    }
    const [a, b] = [rimOf(from), rimOf(to)];
    const ring = a && rings[a.ring];
    if (!a || !b || !ring || a.ring !== b.ring || Math.max(a.farM, b.farM) > swathM / 2)
      return lift;
    const points = [from, ...alongRim(ring, a, b), to];
    const lengthM = pathLengthM(points);
    return lengthM < lift.costM ? { pours: true, points, lengthM, costM: lengthM } : lift;
  };
}
