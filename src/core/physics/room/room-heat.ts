import { SECONDS_PER_HOUR, asBand, band, inRange, type Band } from '../../units/index.ts';
import { AIR_HEAT_CAPACITY_JKGK } from '../common/constants.ts';
import { thinned } from '../common/curve.ts';
import { standardPressure } from '../water/standard-pressure.ts';
import { LEAK_PERH, MOST_CHANGES_PERH, USUAL_WIND_MS } from './air-changes.ts';
import { heatIndex } from './heat-index.ts';
import { humidityPct, vapourKgM3 } from './humidity.ts';
import type { RoomInput, RoomPoint } from './room-types.ts';
import { wallOf, wallRates, type Wall } from './wall-layers.ts';
import { windowFlow } from './window-flow.ts';

/** Smallest and largest room the balance answers for, m³: a cupboard is no room, and a hall beyond it is not mixed. */
export const ROOM_M3 = [3, 10_000] as const;
const SEA_LEVEL_PA = 101_325;
/** Density of room air at sea level, kg/m³, at about 25 °C. ASHRAE Handbook of Fundamentals, ch. 1. */
const AIR_KGM3 = 1.184;
/**
 * From the air to the walls, W/(m² K), by convection alone: what shines on the
 * walls comes to them as the radiant share, and the walls shine on each other,
 * not on the air. Typical: CIBSE Guide A, ch. 5. Low and high: natural
 * convection by Walton 1983 (TARP) over walls, ceiling and floor of an ordinary
 * kitchen for air 4 and 30 K warmer than they are.
 */
const WALL_FILM_WM2K: Band = band(2, 3, 4);
/** Usual values where the household has told none; common practice, no published source. */
const USUAL = {
  wallAdmittanceWM2K: 6,
  humidityPct: 50,
  radiantShare: 0.4,
  afterS: 600,
} as const;
/** Shortest and longest step that is drawn, s, and about how many there are. */
const STEP_S = 10;
const LONGEST_STEP_S = 60;
const STEPS = 600;
const LONGEST_S = 24 * SECONDS_PER_HOUR;
/** The heat index is asked for no more than this, °C. */
const INDEX_TOP_C = 50;

type State = {
  readonly airC: number;
  /** From the skin inwards. */
  readonly wallC: readonly number[];
  readonly vapour: number;
};
/** One run through the room: how good the hood, the window, the walls and the cracks are, and how warm it is outside. */
type Corner = {
  readonly capture: number;
  readonly window: keyof Band;
  readonly filmWM2K: number;
  readonly leakPerH: number;
  readonly outdoorC: number;
  readonly outdoorVapour: number;
};
type Room = Required<Omit<RoomInput, 'outdoorC' | 'leakPerH'>> & {
  readonly outdoorC: Band;
  readonly leakPerH: Band;
  readonly wall: Wall;
  /** Heat a cubic metre of the air holds, J/(m³ K). */
  readonly airJM3K: number;
};

function checked(of: RoomInput): Room {
  inRange('volumeM3', of.volumeM3, ...ROOM_M3);
  inRange('wallAreaM2', of.wallAreaM2, 5, 5000);
  const outdoorC = asBand(of.outdoorC);
  const leakPerH = asBand(of.leakPerH ?? LEAK_PERH);
  for (const corner of ['low', 'typical', 'high'] as const) {
    inRange('outdoorC', outdoorC[corner], -50, 60);
    inRange('leakPerH', leakPerH[corner], 0, 20);
  }
  inRange('startC', of.startC, 0, 55);
  inRange('hood.flowM3S', of.hood.flowM3S, 0, 5);
  inRange('hood.capture', of.hood.capture.high, 0, 1);
  of.heat.forEach(({ fromS, toS, heatW }, i) => {
    inRange(`heat[${i}].toS`, toS, fromS, LONGEST_S);
    inRange(`heat[${i}].heatW`, heatW, 0, 500_000);
  });
  const lastS = Math.max(0, ...of.heat.map(({ toS }) => toS));
  const admittance = of.wallAdmittanceWM2K ?? USUAL.wallAdmittanceWM2K;
  const untilS = inRange('untilS', of.untilS ?? lastS + USUAL.afterS, STEP_S, LONGEST_S);
  const altitudeM = of.altitudeM ?? 0;
  const thinness = standardPressure({ altitudeM }).pressurePa / SEA_LEVEL_PA;
  return {
    ...of,
    altitudeM,
    outdoorC,
    windMS: inRange('windMS', of.windMS ?? USUAL_WIND_MS, 0, 30),
    wallAdmittanceWM2K: admittance,
    outdoorHumidityPct: inRange(
      'outdoorHumidityPct',
      of.outdoorHumidityPct ?? USUAL.humidityPct,
      0,
      100,
    ),
    startHumidityPct: inRange('startHumidityPct', of.startHumidityPct ?? USUAL.humidityPct, 0, 100),
    leakPerH,
    radiantShare: inRange('radiantShare', of.radiantShare ?? USUAL.radiantShare, 0, 1),
    untilS,
    wall: wallOf(admittance),
    airJM3K: AIR_KGM3 * thinness * AIR_HEAT_CAPACITY_JKGK,
  };
}

/** Air from outside, m³/s: hood and cracks with the window, in quadrature as forced and natural flows add. */
function freshAirM3S(room: Room, airC: number, corner: Corner): number {
  const { window, hood } = room;
  const through =
    window.open && window.areaM2 > 0
      ? windowFlow({
          areaM2: window.areaM2,
          heightM: window.heightM,
          differenceK: Math.max(-60, Math.min(60, airC - corner.outdoorC)),
          windMS: room.windMS,
          meanC: (airC + corner.outdoorC) / 2,
        }).flowM3S[corner.window]
      : 0;
  const leak = (corner.leakPerH * room.volumeM3) / SECONDS_PER_HOUR;
  const most = (MOST_CHANGES_PERH * room.volumeM3) / SECONDS_PER_HOUR;
  return Math.min(most, Math.hypot(hood.flowM3S, through + leak));
}

function slopes(room: Room, corner: Corner, timeS: number, at: State): State {
  let heatW = 0;
  let steam = 0;
  // A plain loop: this is asked tens of thousands of times a plan.
  for (const piece of room.heat)
    if (timeS >= piece.fromS && timeS < piece.toS) {
      heatW += piece.heatW;
      steam += piece.moistureKgS ?? 0;
    }
  const fresh = freshAirM3S(room, at.airC, corner);
  const kept = 1 - corner.capture;
  const toWallW = room.wallAreaM2 * corner.filmWM2K * (at.airC - (at.wallC[0] ?? at.airC));
  const risingW = heatW * (1 - room.radiantShare) * kept;
  return {
    airC:
      (risingW - toWallW - room.airJM3K * fresh * (at.airC - corner.outdoorC)) /
      (room.airJM3K * room.volumeM3),
    wallC: wallRates(room.wall, at.wallC, (toWallW + heatW * room.radiantShare) / room.wallAreaM2),
    vapour: (steam * kept + fresh * (corner.outdoorVapour - at.vapour)) / room.volumeM3,
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
/** The skin of the wall follows slowly: a coarser share does. */
const SKIN_SHARE = 0.8;

/** How many inner steps one drawn step takes: much air through little room, or much wall, is quick. */
function innerSteps(room: Room, airC: number, corner: Corner, stepS: number): number {
  const wallPerS = (room.wallAreaM2 * corner.filmWM2K) / (room.airJM3K * room.volumeM3);
  const ratePerS = freshAirM3S(room, airC, corner) / room.volumeM3 + wallPerS;
  const { conductances, capacities } = room.wall;
  const skinPerS = (corner.filmWM2K + (conductances[0] ?? 0)) / (capacities[0] ?? 1);
  return Math.max(
    1,
    Math.ceil((stepS * ratePerS) / STEP_SHARE),
    Math.ceil((stepS * skinPerS) / SKIN_SHARE),
  );
}

/** Midpoint rule: second order, with as many inner steps as the room needs. */
function path(room: Room, corner: Corner): readonly RoomPoint[] {
  let at: State = {
    airC: room.startC,
    wallC: room.wall.capacities.map(() => room.startC),
    vapour: vapourKgM3(room.startC, room.startHumidityPct),
  };
  const points: RoomPoint[] = [];
  const drawnS = Math.ceil(room.untilS / STEPS / STEP_S) * STEP_S;
  const everyS = Math.min(LONGEST_STEP_S, Math.max(STEP_S, drawnS));
  for (let timeS = 0; timeS <= room.untilS; timeS += everyS) {
    const humidity = humidityPct(at.airC, at.vapour);
    // Above its top the index stays that of the top with the same damp: it never falls as it gets hotter.
    const indexC = Math.min(at.airC, INDEX_TOP_C);
    const index = heatIndex({ tempC: indexC, humidityPct: humidityPct(indexC, at.vapour) });
    points.push({ timeS, airC: at.airC, humidityPct: humidity, heatIndexC: index.heatIndexC });
    const steps = innerSteps(room, at.airC, corner, everyS);
    const stepS = everyS / steps;
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

function cornerOf(room: Room, which: keyof Band): Corner {
  // The cool end is the good hood, the open window and the walls that take up most.
  const good = which === 'low' ? 'high' : which === 'high' ? 'low' : 'typical';
  return {
    capture: room.hood.capture[good],
    window: good,
    filmWM2K: WALL_FILM_WM2K[good],
    leakPerH: room.leakPerH[good],
    outdoorC: room.outdoorC[which],
    outdoorVapour: vapourKgM3(room.outdoorC[which], room.outdoorHumidityPct),
  };
}

/**
 * Air of a kitchen while burners and ovens heat it: temperature, humidity and
 * heat index over time, and the peaks. Two bodies: the air, and the walls as
 * thick layers. The band spans the hood's capture, the methods for the window,
 * convection at the walls, cracks, and the air outside. It advises; it never
 * says that the air is safe.
 * @throws OutOfRangeError
 * Source: energy and vapour balance; walls by CIBSE admittance, convection
 * alone between air and walls; window by Warren & Parkins, de Gids & Phaff,
 * ASHRAE; capture by Singer et al.
 */
export function roomHeat(of: RoomInput): {
  readonly curve: readonly RoomPoint[];
  /** The same at the hot end of the band. */
  readonly hotCurve: readonly RoomPoint[];
  readonly peakC: Band;
  readonly peakHeatIndexC: Band;
} {
  const room = checked(of);
  const cool = path(room, cornerOf(room, 'low'));
  const usual = path(room, cornerOf(room, 'typical'));
  const hot = path(room, cornerOf(room, 'high'));
  const peaks = (value: (point: RoomPoint) => number): Band => {
    const found = [cool, usual, hot].map((points) => peak(points, value));
    const typical = peak(usual, value);
    return band(Math.min(...found), typical, Math.max(...found));
  };
  return {
    curve: thinned(usual),
    hotCurve: thinned(hot),
    peakC: peaks(({ airC }) => airC),
    peakHeatIndexC: peaks(({ heatIndexC }) => heatIndexC),
  };
}
