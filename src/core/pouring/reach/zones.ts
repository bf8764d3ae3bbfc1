/**
 * A leg parted among the sides from which it is poured. Each zone is as deep
 * as an arm reaches from its side, its rows run along that side from far to
 * near; an island that is wider than an arm is poured from both its long
 * sides, parted where the lanes divide its width evenly.
 */
import { distanceM, distanceToEdgeM, insideRings } from '../../geometry/index.ts';
import { intersect, subtract } from '../coverage/clip.ts';
import { capsule, isThin } from '../coverage/coverage.ts';
import { frameOn, outOfFrame, surfaceIntoFrame, turned, type Frame } from '../lanes/frame.ts';
import type { Leg } from '../lanes/legs.ts';
import type { Row } from '../lanes/rows.ts';
import { surfaceAreaM2, upright } from '../model/plane.ts';
import type { LanePoint, Ring, StandSide, Surface } from '../model/types.ts';
import { ARM_ROUNDING_M, inReach } from './arm.ts';

/** Part of a leg poured from one side; no side when it was not told where one can stand. */
export type Zone = {
  readonly surface: Surface;
  readonly frame: Frame;
  readonly rows: readonly Row[];
  readonly side?: StandSide;
};

type Zones = { readonly zones: readonly Zone[]; readonly wholly: boolean };

/** Rows of a surface; `firstWhole` when the farthest strip has to be a full swath deep. */
export type RowLayer = (surface: Surface, frame: Frame, firstWhole?: boolean) => readonly Row[];

export type Reach = {
  readonly sides: readonly StandSide[];
  readonly armM: number;
  readonly swathM: number;
  readonly outline: Ring;
  readonly layRows: RowLayer;
  /** Lanes need not run along a side when one side reaches all. */
  readonly free: boolean;
  /** Near before far. */
  readonly fromFront: boolean;
};

/** Two sides whose outward ways differ by less than this look the same way. */
const SAME_WAY_COSINE = Math.cos((10 * Math.PI) / 180);
/** No arm is told to a tenth of a millimetre, metres: keeps the corners of its circle few. */
const ARM_SHORTFALL_M = 1e-4;
/** Less than a square millimetre is not worth a zone. */
const LEAST_GAIN_M2 = 1e-6;
/** Most zones of one leg: a stop for outlines that no person stands round. */
const MOST_ZONES = 40;

/** Unit vector out of the surface at a side. */
function outward({ a, b }: StandSide, outline: Ring): LanePoint {
  const lengthM = distanceM(a, b);
  const normal: LanePoint = [(b[1] - a[1]) / lengthM, (a[0] - b[0]) / lengthM];
  const probeM = 1e-4;
  const beside: LanePoint = [
    (a[0] + b[0]) / 2 + normal[0] * probeM,
    (a[1] + b[1]) / 2 + normal[1] * probeM,
  ];
  return insideRings(beside, [outline]) ? [-normal[0], -normal[1]] : normal;
}

function cosine(p: LanePoint, q: LanePoint): number {
  return p[0] * q[0] + p[1] * q[1];
}

/** The strip behind a side from one depth to another, as a ring. */
function behind({ a, b }: StandSide, out: LanePoint, toM: number, wideM = 0): Ring {
  const lengthM = distanceM(a, b);
  const u: LanePoint = [(b[0] - a[0]) / lengthM, (b[1] - a[1]) / lengthM];
  const place = (p: LanePoint, alongM: number, deepM: number): LanePoint => [
    p[0] + u[0] * alongM - out[0] * deepM,
    p[1] + u[1] * alongM - out[1] * deepM,
  ];
  return upright([
    place(a, -wideM, 0),
    place(b, wideM, 0),
    place(b, wideM, toM),
    place(a, -wideM, toM),
  ]);
}

/** How deep the first of two opposite sides pours when both reach their half: a whole number of even lanes. */
function sharedDepthM(side: StandSide, reach: Reach, out: LanePoint): number | undefined {
  const { armM, swathM } = reach;
  let wideM: number | undefined;
  for (const other of reach.sides) {
    if (cosine(out, outward(other, reach.outline)) > -SAME_WAY_COSINE) continue;
    const acrossM = Math.abs(cosine(out, [other.a[0] - side.a[0], other.a[1] - side.a[1]]));
    if (wideM === undefined || acrossM < wideM) wideM = acrossM;
  }
  if (wideM === undefined) return undefined;
  const lanes = Math.ceil(wideM / swathM - 1e-9);
  const laneM = wideM / lanes;
  // The other side pours the larger half, its farthest lane half a lane short of the border.
  const even = Math.ceil(lanes / 2) * laneM - laneM / 2 <= armM;
  if (even) return Math.floor(lanes / 2) * laneM;
  return wideM > 2 * armM ? undefined : wideM / 2;
}

/** Lanes run along the leg's own back where the side looks the way the leg does; else along the side. */
function frameFor(legFrame: Frame, side: StandSide, out: LanePoint): Frame {
  if (cosine(legFrame.front, out) > SAME_WAY_COSINE) return legFrame;
  const seen = frameOn(side.a, side.b, [side.a[0] + out[0], side.a[1] + out[1]]);
  return cosine(seen.front, out) > 0 ? seen : turned(seen);
}

function rowsInReach(rows: readonly Row[], frame: Frame, side: StandSide, armM: number): boolean {
  return rows.every(({ line }) =>
    inReach(
      line.map((p) => outOfFrame(frame, p)),
      side,
      armM,
    ),
  );
}

function solid(surfaces: readonly Surface[]): readonly Surface[] {
  return surfaces.filter((surface) => !isThin(surface));
}

function ringsOfAll(surfaces: readonly Surface[]): Ring[] {
  return surfaces.flatMap((s) => [
    upright(s.outer),
    ...s.holes.map((hole) => upright(hole).toReversed()),
  ]);
}

/** The only side a leg needs: one that reaches all of it, the one in front of the leg's back before any other. */
function wholeZone(leg: Leg, legFrame: Frame, reach: Reach): Zone | undefined {
  const { sides, armM, swathM, outline } = reach;
  const ranked = sides
    .map((side) => ({ side, out: outward(side, outline) }))
    .map((one) => ({
      ...one,
      inFront: cosine(legFrame.front, one.out) > SAME_WAY_COSINE,
      lengthM: distanceM(one.side.a, one.side.b),
    }))
    .toSorted((p, q) => Number(q.inFront) - Number(p.inFront) || q.lengthM - p.lengthM);
  for (const { side, out } of ranked) {
    const wets = behind(side, out, armM + swathM / 2, ARM_ROUNDING_M);
    const whole =
      inReach(leg.surface.outer, side, armM) ||
      leg.surface.outer.every(
        (p) => insideRings(p, [wets]) || distanceToEdgeM(p, side.a, side.b) <= armM,
      );
    if (!whole) continue;
    const frame = framed(reach.free ? legFrame : frameFor(legFrame, side, out), reach);
    const rows = firstInReach(leg.surface, frame, side, reach);
    if (rows) return { surface: leg.surface, frame, rows, side };
  }
  return undefined;
}

/** Rows of a surface that keep within an arm of a side: as they come, or with the farthest strip a full swath deep. */
function firstInReach(
  surface: Surface,
  frame: Frame,
  side: StandSide,
  { layRows, armM }: Reach,
): readonly Row[] | undefined {
  return [false, true]
    .map((firstWhole) => layRows(surface, frame, firstWhole))
    .find((rows) => rowsInReach(rows, frame, side, armM));
}

function framed(frame: Frame, { fromFront }: Reach): Frame {
  return fromFront ? turned(frame) : frame;
}

/** What one side can pour of what is left, deep to where it shares with the side opposite. */
type Share = {
  readonly side: StandSide;
  readonly surfaces: readonly Surface[];
  readonly areaM2: number;
};

function shareOf(rest: readonly Surface[], side: StandSide, reach: Reach, shared: boolean): Share {
  const { armM, swathM, outline } = reach;
  const out = outward(side, outline);
  const arm = capsule([side.a, side.b], armM, ARM_SHORTFALL_M);
  const deepM = shared ? sharedDepthM(side, reach, out) : undefined;
  const wets = intersect(ringsOfAll(rest), [arm, behind(side, out, armM + swathM / 2)]);
  const mine =
    deepM === undefined ? wets : intersect(ringsOfAll(wets), [behind(side, out, deepM, 2 * armM)]);
  const surfaces = solid(mine);
  return { side, surfaces, areaM2: areaOf(surfaces) };
}

/** Whether one lane straight away from a side would do for what it pours. */
function isOneLane(surface: Surface, frame: Frame, { swathM }: Reach): boolean {
  const along = surfaceIntoFrame(frame, surface).outer.map(([x]) => x);
  return Math.max(...along) - Math.min(...along) <= swathM;
}

function turnedAside({ origin, along, front }: Frame): Frame {
  return { origin, along: front, front: along };
}

/** The zones of a share: its rows keep within an arm, or what lies beyond the arm is left out of it. */
function zonesIn({ side, surfaces }: Share, legFrame: Frame, reach: Reach): readonly Zone[] {
  const { armM, outline, layRows } = reach;
  const frame = framed(frameFor(legFrame, side, outward(side, outline)), reach);
  const arm = capsule([side.a, side.b], armM, ARM_SHORTFALL_M);
  return surfaces.flatMap((surface): readonly Zone[] => {
    const best = isOneLane(surface, frame, reach) ? turnedAside(frame) : frame;
    const rows = firstInReach(surface, best, side, reach);
    if (rows) return [{ surface, frame: best, rows, side }];
    return solid(intersect(ringsOfAll([surface]), [arm])).map((near) => ({
      surface: near,
      frame: best,
      rows: layRows(near, best),
      side,
    }));
  });
}

function areaOf(surfaces: readonly Surface[]): number {
  return surfaces.reduce((sum, surface) => sum + surfaceAreaM2(surface), 0);
}

/**
 * Zones of a leg in the order in which the sides reach most of it.
 * `wholly` is false when something of the leg may lie out of reach.
 */
export function zonesOf(leg: Leg, legFrame: Frame, reach: Reach): Zones {
  const whole = wholeZone(leg, legFrame, reach);
  if (whole) return { zones: [whole], wholly: true };
  const zones: Zone[] = [];
  let rest: readonly Surface[] = [leg.surface];
  while (zones.length < MOST_ZONES && rest.length > 0) {
    const open = rest;
    const shares = reach.sides
      .map((side) => shareOf(open, side, reach, zones.length === 0))
      .filter(({ areaM2 }) => areaM2 > LEAST_GAIN_M2)
      .toSorted((a, b) => b.areaM2 - a.areaM2);
    let best: readonly Zone[] = [];
    for (const share of shares) {
      best = zonesIn(share, legFrame, reach);
      if (areaOf(best.map(({ surface }) => surface)) > LEAST_GAIN_M2) break;
      best = [];
    }
    if (best.length === 0) break;
    zones.push(...best);
    rest = solid(
      subtract(
        ringsOfAll(rest),
        best.flatMap(({ surface }) => ringsOfAll([surface])),
      ),
    );
  }
  return { zones, wholly: false };
}
