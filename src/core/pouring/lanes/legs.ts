/**
 * A counter with several back edges (L, U) falls into legs, each with its own
 * back. It is cut from an inner corner straight back to a wall, where the cut
 * is shortest.
 */
import {
  between,
  distanceM,
  distanceToEdgeM,
  edgesOf,
  insideRings,
  nearestShare,
  signedAreaM2,
} from '../../geometry/index.ts';
import { subtract } from '../coverage/clip.ts';
import { upright } from '../model/plane.ts';
import type { LanePoint, Ring, Surface } from '../model/types.ts';

/** An edge at a wall, with a place on the side of the surface. */
export type Back = { readonly a: LanePoint; readonly b: LanePoint; readonly inside: LanePoint };

export type Leg = { readonly surface: Surface; readonly back: Back };

/** An outline's edge lies on a back edge when it is this near, metres. */
const ON_BACK_M = 1e-4;
/** A leg stands at a back edge along at least this much of it, metres. */
const STANDS_M = 0.01;
/** A cut through a cut-out counts as longer by this, metres: cut elsewhere if it can be done. */
const THROUGH_HOLE_M = 10;
const SAME_PLACE_M = 1e-6;
/** A part of a cut counter is at least this large, m². */
const SMALLEST_PART_M2 = 1e-3;
/** Back edges whose fronts differ by less than this are poured as one. */
const SAME_WAY_COSINE = Math.cos((10 * Math.PI) / 180);

/** How much of an outline lies on a back edge, metres. */
export function standsOnM(ring: Ring, back: Back): number {
  const lengthM = distanceM(back.a, back.b);
  let sum = 0;
  for (const [p, q] of edgesOf(ring)) {
    const alongM =
      Math.abs(nearestShare(p, back.a, back.b) - nearestShare(q, back.a, back.b)) * lengthM;
    if (alongM < SAME_PLACE_M) continue;
    const slope = Math.abs(alongM - distanceM(p, q));
    const near =
      Math.min(distanceToEdgeM(p, back.a, back.b), distanceToEdgeM(q, back.a, back.b)) < ON_BACK_M;
    const parallel = onLine(p, back) < ON_BACK_M && onLine(q, back) < ON_BACK_M;
    if (parallel && (near || slope < distanceM(p, q))) sum += alongM;
  }
  return sum;
}

/** Unit vector from a back edge into the surface. */
export function toFront({ a, b, inside }: Back): LanePoint {
  const lengthM = distanceM(a, b);
  const normal: LanePoint = [-(b[1] - a[1]) / lengthM, (b[0] - a[0]) / lengthM];
  const side = normal[0] * (inside[0] - a[0]) + normal[1] * (inside[1] - a[1]);
  return side >= 0 ? normal : [-normal[0], -normal[1]];
}

/** Whether two back edges have the same front: a wall with a pillar or a jog has several edges. */
function sameWay(one: Back, two: Back): boolean {
  const [a, b] = [toFront(one), toFront(two)];
  return a[0] * b[0] + a[1] * b[1] > SAME_WAY_COSINE;
}

function onLine(p: LanePoint, { a, b }: Back): number {
  const cross = (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
  return Math.abs(cross) / distanceM(a, b);
}

/** The back edge along which most of an outline stands, and how much, metres. */
function bestBack(ring: Ring, backs: readonly Back[]): { back: Back | undefined; standsM: number } {
  let best: Back | undefined;
  let standsM = 0;
  for (const back of backs) {
    const here = standsOnM(ring, back);
    if (here > standsM) [best, standsM] = [back, here];
  }
  return { back: best, standsM };
}

type Cut = { readonly parts: readonly [Ring, Ring]; readonly costM: number };

/** Where a line from a corner, in a direction, first meets the outline again. */
function firstHit(
  ring: Ring,
  from: number,
  direction: LanePoint,
): { edge: number; place: LanePoint; farM: number } | undefined {
  const start = ring[from];
  if (!start) return undefined;
  let best: { edge: number; place: LanePoint; farM: number } | undefined;
  edgesOf(ring).forEach(([a, b], edge) => {
    if (edge === from || (edge + 1) % ring.length === from) return;
    const ex = b[0] - a[0];
    const ey = b[1] - a[1];
    const cross = direction[0] * ey - direction[1] * ex;
    if (Math.abs(cross) < 1e-12) return;
    const t = ((a[0] - start[0]) * ey - (a[1] - start[1]) * ex) / cross;
    const u = ((a[0] - start[0]) * direction[1] - (a[1] - start[1]) * direction[0]) / cross;
    if (t < SAME_PLACE_M || u < -1e-9 || u > 1 + 1e-9 || (best && best.farM <= t)) return;
    best = { edge, place: [start[0] + t * direction[0], start[1] + t * direction[1]], farM: t };
  });
  return best;
}

/** The outline cut from corner `from` straight to `hit`. */
function cutRing(ring: Ring, from: number, edge: number, place: LanePoint): readonly [Ring, Ring] {
  const count = ring.length;
  const walk = (first: number, last: number) => {
    const points: LanePoint[] = [];
    for (let i = first; ; i = (i + 1) % count) {
      const p = ring[i];
      if (p) points.push(p);
      if (i === last) return points;
    }
  };
  return [
    [...walk(from, edge), place],
    [place, ...walk((edge + 1) % count, from)],
  ];
}

function crossesHole(a: LanePoint, b: LanePoint, holes: readonly Ring[]): boolean {
  const steps = 50;
  for (let k = 1; k < steps; k += 1) {
    const t = k / steps;
    if (insideRings([a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t], holes)) return true;
  }
  return false;
}

/** Every cut at an inner corner that parts two back edges. */
function cuts(ring: Ring, holes: readonly Ring[], backs: readonly Back[]): Cut[] {
  const found: Cut[] = [];
  const count = ring.length;
  const turn = Math.sign(signedAreaM2(ring));
  ring.forEach((corner, i) => {
    const before = ring[(i + count - 1) % count] ?? corner;
    const after = ring[(i + 1) % count] ?? corner;
    const cross =
      (corner[0] - before[0]) * (after[1] - corner[1]) -
      (corner[1] - before[1]) * (after[0] - corner[0]);
    if (cross * turn >= -1e-9) return;
    for (const back of backs) {
      const front = toFront(back);
      const direction: LanePoint = [-front[0], -front[1]];
      const hit = firstHit(ring, i, direction);
      if (!hit || !insideRings(between(corner, hit.place, 0.5), [ring])) continue;
      const parts = cutRing(ring, i, hit.edge, hit.place);
      const [one, two] = parts.map((part) => bestBack(part, backs));
      if (!one?.back || !two?.back || sameWay(one.back, two.back)) continue;
      if (parts.some((part) => Math.abs(signedAreaM2(part)) < SMALLEST_PART_M2)) continue;
      if (Math.min(one.standsM, two.standsM) < STANDS_M) continue;
      const holeM = crossesHole(corner, hit.place, holes) ? THROUGH_HOLE_M : 0;
      found.push({ parts, costM: hit.farM + holeM });
    }
  });
  return found;
}

function split(ring: Ring, holes: readonly Ring[], backs: readonly Back[]): Ring[] {
  const touching = backs.filter((back) => standsOnM(ring, back) >= STANDS_M);
  const [main] = touching;
  if (!main || touching.every((back) => sameWay(back, main))) return [ring];
  let best: Cut | undefined;
  for (const cut of cuts(ring, holes, touching)) {
    if (!best || cut.costM < best.costM - 1e-6) best = cut;
  }
  return best ? best.parts.flatMap((part) => split(part, holes, touching)) : [ring];
}

function centre(ring: Ring): LanePoint {
  const sum = ring.reduce(([x, y], p) => [x + p[0], y + p[1]] as const, [0, 0] as const);
  return [sum[0] / ring.length, sum[1] / ring.length];
}

/** Cuts a clean surface into legs; a leg that touches no back edge takes the nearest. */
export function legsOf(surface: Surface, backs: readonly Back[]): readonly Leg[] {
  const [firstBack] = backs;
  if (!firstBack) return [];
  const backFor = (ring: Ring): Back => {
    const middle = centre(ring);
    const nearest = backs.toSorted(
      (p, q) => distanceToEdgeM(middle, p.a, p.b) - distanceToEdgeM(middle, q.a, q.b),
    )[0];
    return bestBack(ring, backs).back ?? nearest ?? firstBack;
  };
  const rings = split(surface.outer, surface.holes, backs);
  if (rings.length === 1) return [{ surface, back: backFor(surface.outer) }];
  // Neighbours with the same back are one leg again.
  const byBack = new Map<Back, Ring[]>();
  for (const ring of rings) {
    const own = backFor(ring);
    const back = [...byBack.keys()].find((known) => sameWay(known, own)) ?? own;
    byBack.set(back, [...(byBack.get(back) ?? []), upright(ring)]);
  }
  const holes = surface.holes.map(upright);
  return [...byBack].flatMap(([back, list]) =>
    subtract(list, holes).map((part): Leg => ({ surface: part, back })),
  );
}
