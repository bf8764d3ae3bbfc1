import { distanceM, edgesOf, signedAreaM2 } from '../../geometry/index.ts';
import { subtract, unite } from './clip.ts';
import { surfaceAreaM2, upright } from '../model/plane.ts';
import { LanesRefusal } from '../model/refusal.ts';
import type { LanePoint, Repair, Ring, Surface } from '../model/types.ts';

/** Corners closer than this are one corner, metres: the grid of the clipper. */
const SAME_CORNER_M = 1e-6;
/** Pieces thinner than this, metres, are rounding and not surface. */
export const SLIVER_M = 1e-5;
/** No room is larger, metres; keeps the clipper's products exact. */
const LARGEST_M = 50;
const MOST_POINTS = 5000;
/** Smallest surface that is one at all: 1 cm². */
const SMALLEST_AREA_M2 = 1e-4;

export type Repaired = { readonly pieces: readonly Surface[]; readonly repairs: readonly Repair[] };

function checkedRing(name: string, ring: unknown): Ring {
  if (!Array.isArray(ring) || ring.length < 3) {
    const found = Array.isArray(ring) ? `${ring.length} points` : ring;
    const advice = 'Give the corners in order, three or more.';
    throw new LanesRefusal('too-few-points', name, found, '3 or more [x, y] points', advice);
  }
  if (ring.length > MOST_POINTS) {
    const advice = 'Leave out corners closer than a few millimetres.';
    const found = `${ring.length} points`;
    throw new LanesRefusal('too-many-points', name, found, `up to ${MOST_POINTS} points`, advice);
  }
  ring.forEach((p: unknown, i) => {
    const good =
      Array.isArray(p) && p.length === 2 && Number.isFinite(p[0]) && Number.isFinite(p[1]);
    if (!good) {
      const advice = 'Give two numbers in metres.';
      const found = JSON.stringify(p) ?? String(p);
      throw new LanesRefusal('not-a-number', `${name}[${i}]`, found, '[xM, yM]', advice);
    }
    if (Math.abs(p[0]) > LARGEST_M || Math.abs(p[1]) > LARGEST_M) {
      const allowed = `-${LARGEST_M} to ${LARGEST_M} m`;
      const advice = 'Give metres from a corner of the room.';
      throw new LanesRefusal('too-large', `${name}[${i}]`, `[${p.join(', ')}]`, allowed, advice);
    }
  });
  return ring as Ring;
}

function withoutDoubles(ring: Ring): LanePoint[] {
  const kept = ring.filter((p, i) => {
    const before = ring[(i + ring.length - 1) % ring.length];
    return !before || distanceM(p, before) > SAME_CORNER_M;
  });
  return kept;
}

function isSliver(surface: Surface): boolean {
  const perimeterM = edgesOf(surface.outer).reduce((sum, [a, b]) => sum + distanceM(a, b), 0);
  return (2 * Math.abs(signedAreaM2(surface.outer))) / perimeterM < SLIVER_M;
}

function areaOf(surfaces: readonly Surface[]): number {
  return surfaces.reduce((sum, s) => sum + surfaceAreaM2(s), 0);
}

function differs(a: number, b: number): boolean {
  return Math.abs(a - b) > 1e-5 * Math.max(a, b) + 1e-8;
}

function holeRepairs(outer: readonly Surface[], holes: readonly Ring[], cut: number): Set<Repair> {
  const repairs = new Set<Repair>();
  const outerArea = areaOf(outer);
  const rings = outer.map((s) => s.outer);
  const allHoles = holes.reduce((sum, hole) => sum + areaOf(unite([hole])), 0);
  let insideArea = 0;
  for (const hole of holes) {
    const outside = areaOf(subtract([hole], rings));
    const whole = areaOf(unite([hole]));
    if (!differs(outside, whole)) repairs.add('hole-outside');
    else if (differs(outside, 0)) repairs.add('hole-crosses-edge');
    insideArea += whole - outside;
  }
  if (differs(insideArea, outerArea - cut) && allHoles > 0) repairs.add('holes-overlap');
  return repairs;
}

/**
 * Makes clean surfaces of an outline and its cut-outs: windings, doubled
 * corners, self-crossings, overlapping or overhanging cut-outs are put right
 * and named; what has no surface is refused.
 * @throws LanesRefusal too-few-points, not-a-number, too-large, too-many-points, no-area, all-cut-away
 */
export function repairSurface(surface: Surface): Repaired {
  const repairs = new Set<Repair>();
  const clean = (name: string, ring: Ring): Ring => {
    const given = checkedRing(name, ring);
    const kept = withoutDoubles(given);
    if (kept.length < given.length) repairs.add('duplicate-points');
    return upright(kept);
  };
  const outerRing = clean('outer', surface.outer);
  const holes = surface.holes.map((hole, i) => clean(`holes[${i}]`, hole));
  const outer = unite([outerRing]).filter((s) => !isSliver(s));
  const wholeArea = areaOf(outer);
  if (wholeArea < SMALLEST_AREA_M2) {
    const advice = 'Check the corners: they lie on one line or on one place.';
    const found = `a surface of ${wholeArea.toPrecision(3)} m²`;
    throw new LanesRefusal('no-area', 'outer', found, `${SMALLEST_AREA_M2} m² or more`, advice);
  }
  if (differs(wholeArea, Math.abs(signedAreaM2(outerRing)))) repairs.add('self-crossing');
  const outlines = outer.flatMap((s) => [s.outer, ...s.holes]);
  const realHoles = holes.filter((hole) => hole.length >= 3);
  const cut = subtract(outlines, realHoles);
  const pieces = cut.filter((s) => !isSliver(s)).map(withoutSliverHoles);
  if (pieces.length < cut.length) repairs.add('sliver-dropped');
  if (areaOf(pieces) < SMALLEST_AREA_M2) {
    const advice = 'Check the cut-outs: they leave nothing to pour over.';
    throw new LanesRefusal('all-cut-away', 'holes', 'all of it', 'part of the surface', advice);
  }
  if (pieces.length > 1) repairs.add('several-pieces');
  for (const repair of holeRepairs(outer, realHoles, areaOf(cut))) repairs.add(repair);
  return { pieces, repairs: [...repairs] };
}

function withoutSliverHoles(surface: Surface): Surface {
  const holes = surface.holes.filter((hole) => !isSliver({ outer: hole, holes: [] }));
  return { outer: surface.outer, holes };
}
