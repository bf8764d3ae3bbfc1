import { SECONDS_PER_HOUR, band, inRange, type Band } from '../../units/index.ts';
import { AIR_HEAT_CAPACITY_JKGK } from '../common/constants.ts';
import { thinned } from '../common/curve.ts';
import { SURFACE_RESISTANCE_M2KW } from './admittance.ts';
import { heatIndex } from './heat-index.ts';
import { humidityPct, vapourKgM3 } from './humidity.ts';
import type { RoomInput, RoomPoint } from './room-types.ts';
import { wallOf, wallRates, type Wall } from './wall-layers.ts';
import { windowFlow } from './window-flow.ts';

/** Density of room air, kg/m³, at about 25 °C. ASHRAE Handbook of Fundamentals, ch. 1. */
const AIR_KGM3 = 1.184;
const AIR_JM3K = AIR_KGM3 * AIR_HEAT_CAPACITY_JKGK;
/** Usual values where the household has told none; common practice, no published source. */
const USUAL = {
  windMS: 2,
  wallAdmittanceWM2K: 6,
  humidityPct: 50,
  leakPerH: 0.5,
  radiantShare: 0.4,
  afterS: 600,
} as const;
const STEP_S = 10;
const LONGEST_S = 24 * SECONDS_PER_HOUR;
/** The heat index is asked for no more than this, °C. */
const INDEX_TOP_C = 50;

type State = {
  readonly airC: number;
  /** From the skin inwards. */
  readonly wallC: readonly number[];
  readonly vapour: number;
};
type Corner = { readonly capture: number; readonly window: keyof Band };
type Room = Required<RoomInput> & { readonly wall: Wall };

function checked(of: RoomInput): Room {
  inRange('volumeM3', of.volumeM3, 3, 5000);
  inRange('wallAreaM2', of.wallAreaM2, 5, 5000);
  inRange('outdoorC', of.outdoorC, -40, 50);
  inRange('startC', of.startC, 0, 45);
  inRange('hood.flowM3S', of.hood.flowM3S, 0, 5);
  inRange('hood.capture', of.hood.capture.high, 0, 1);
  of.heat.forEach(({ fromS, toS, heatW }, i) => {
    inRange(`heat[${i}].toS`, toS, fromS, LONGEST_S);
    inRange(`heat[${i}].heatW`, heatW, 0, 100_000);
  });
  const lastS = Math.max(0, ...of.heat.map(({ toS }) => toS));
  const admittance = of.wallAdmittanceWM2K ?? USUAL.wallAdmittanceWM2K;
  const untilS = inRange('untilS', of.untilS ?? lastS + USUAL.afterS, STEP_S, LONGEST_S);
  return {
    ...of,
    windMS: inRange('windMS', of.windMS ?? USUAL.windMS, 0, 30),
    wallAdmittanceWM2K: admittance,
    outdoorHumidityPct: inRange(
      'outdoorHumidityPct',
      of.outdoorHumidityPct ?? USUAL.humidityPct,
      0,
      100,
    ),
    startHumidityPct: inRange('startHumidityPct', of.startHumidityPct ?? USUAL.humidityPct, 0, 100),
    leakPerH: inRange('leakPerH', of.leakPerH ?? USUAL.leakPerH, 0, 20),
    radiantShare: inRange('radiantShare', of.radiantShare ?? USUAL.radiantShare, 0, 1),
    untilS,
    wall: wallOf(admittance),
  };
}

/** Air from outside, m³/s: hood and cracks with the window, in quadrature as forced and natural flows add. */
function freshAirM3S(room: Room, airC: number, corner: keyof Band): number {
  const { window, hood } = room;
  const through =
    window.open && window.areaM2 > 0
      ? windowFlow({
          areaM2: window.areaM2,
          heightM: window.heightM,
          differenceK: Math.max(-60, Math.min(60, airC - room.outdoorC)),
          windMS: room.windMS,
          meanC: (airC + room.outdoorC) / 2,
        }).flowM3S[corner]
      : 0;
  const leak = (room.leakPerH * room.volumeM3) / SECONDS_PER_HOUR;
  return Math.hypot(hood.flowM3S, through + leak);
}

function slopes(room: Room, corner: Corner, timeS: number, at: State): State {
  const lit = room.heat.filter(({ fromS, toS }) => timeS >= fromS && timeS < toS);
  const heatW = lit.reduce((sum, piece) => sum + piece.heatW, 0);
  const steam = lit.reduce((sum, piece) => sum + (piece.moistureKgS ?? 0), 0);
  const fresh = freshAirM3S(room, at.airC, corner.window);
  const kept = 1 - corner.capture;
  const toWallW =
    (room.wallAreaM2 * (at.airC - (at.wallC[0] ?? at.airC))) / SURFACE_RESISTANCE_M2KW;
  const risingW = heatW * (1 - room.radiantShare) * kept;
  const outdoorVapour = vapourKgM3(room.outdoorC, room.outdoorHumidityPct);
  return {
    airC:
      (risingW - toWallW - AIR_JM3K * fresh * (at.airC - room.outdoorC)) /
      (AIR_JM3K * room.volumeM3),
    wallC: wallRates(room.wall, at.wallC, (toWallW + heatW * room.radiantShare) / room.wallAreaM2),
    vapour: (steam * kept + fresh * (outdoorVapour - at.vapour)) / room.volumeM3,
  };
}

function moved(from: State, by: State, seconds: number): State {
  return {
    airC: from.airC + by.airC * seconds,
    wallC: from.wallC.map((tempC, i) => tempC + (by.wallC[i] ?? 0) * seconds),
    vapour: Math.max(0, from.vapour + by.vapour * seconds),
  };
}

/** Inner steps are this share of the quickest time constant at most: the midpoint rule is stable up to 2. */
const STEP_SHARE = 0.25;

/** How many inner steps one drawn step takes: much air through little room, or much wall, is quick. */
function innerSteps(room: Room, airC: number, corner: keyof Band): number {
  const wallPerS = room.wallAreaM2 / (SURFACE_RESISTANCE_M2KW * AIR_JM3K * room.volumeM3);
  const ratePerS = freshAirM3S(room, airC, corner) / room.volumeM3 + wallPerS;
  return Math.max(1, Math.ceil((STEP_S * ratePerS) / STEP_SHARE));
}

/** Midpoint rule: second order, with as many inner steps as the room needs. */
function path(room: Room, corner: Corner): readonly RoomPoint[] {
  let at: State = {
    airC: room.startC,
    wallC: room.wall.capacities.map(() => room.startC),
    vapour: vapourKgM3(room.startC, room.startHumidityPct),
  };
  const points: RoomPoint[] = [];
  for (let timeS = 0; timeS <= room.untilS; timeS += STEP_S) {
    const humidity = humidityPct(at.airC, at.vapour);
    const index = heatIndex({ tempC: Math.min(at.airC, INDEX_TOP_C), humidityPct: humidity });
    points.push({ timeS, airC: at.airC, humidityPct: humidity, heatIndexC: index.heatIndexC });
    const steps = innerSteps(room, at.airC, corner.window);
    const stepS = STEP_S / steps;
    for (let inner = 0; inner < steps; inner += 1) {
      const nowS = timeS + inner * stepS;
      const half = moved(at, slopes(room, corner, nowS, at), stepS / 2);
      at = moved(at, slopes(room, corner, nowS + stepS / 2, half), stepS);
    }
  }
  return points;
}

function peak(points: readonly RoomPoint[], of: (point: RoomPoint) => number): number {
  return points.reduce((most, point) => Math.max(most, of(point)), Number.NEGATIVE_INFINITY);
}

/**
 * Air of a kitchen while burners and ovens heat it: temperature, humidity and
 * heat index over time, and the peaks. Two bodies: the air, and
 * the walls as thick layers. The band spans the hood's capture and the methods for the window. It
 * advises; it never says that the air is safe.
 * @throws OutOfRangeError
 * Source: energy and vapour balance; walls by CIBSE admittance; window by
 * Warren & Parkins, de Gids & Phaff, ASHRAE; capture by Singer et al.
 */
export function roomHeat(of: RoomInput): {
  readonly curve: readonly RoomPoint[];
  readonly peakC: Band;
  readonly peakHeatIndexC: Band;
} {
  const room = checked(of);
  const { capture } = room.hood;
  const cool = path(room, { capture: capture.high, window: 'high' });
  const usual = path(room, { capture: capture.typical, window: 'typical' });
  const hot = path(room, { capture: capture.low, window: 'low' });
  const peaks = (value: (point: RoomPoint) => number): Band => {
    const found = [cool, usual, hot].map((points) => peak(points, value));
    const typical = peak(usual, value);
    return band(Math.min(...found), typical, Math.max(...found));
  };
  return {
    curve: thinned(usual),
    peakC: peaks(({ airC }) => airC),
    peakHeatIndexC: peaks(({ heatIndexC }) => heatIndexC),
  };
}
