import { SECONDS_PER_HOUR, SECONDS_PER_MINUTE, inRange, type Band } from '../../units/index.ts';
import { circuitLoad } from '../electricity/circuit-load.ts';
import { emissionFactor } from '../tables/emissions.ts';
import { airCurve } from './air-curve.ts';
import { roomHeat } from './room-heat.ts';
import type { RoomInput } from './room-types.ts';
import { windowFlow } from './window-flow.ts';

/** From here the National Weather Service speaks of danger: 103 °F, in °C. */
const DANGER_INDEX_C = ((103 - 32) * 5) / 9;
/** Two hands, one pair of eyes: the usual number. Common practice, no published source. */
const USUAL_AT_ONCE = 2;
/** Inside less outside for which the window is reckoned in the air balance, K. */
const WARM_ROOM_K = 8;
const MG_NG = 1e-6;
const KG_MG = 1e-6;

export type BurnersInput = Omit<RoomInput, 'heat' | 'untilS'> & {
  /** Rated power of one burner; the largest of those to be lit. */
  readonly burnerW: number;
  readonly gas: boolean;
  readonly minutes: number;
  /** Burners there are. */
  readonly burners: number;
  /** Circuit that electric burners share. */
  readonly circuit?: { readonly supplyV: number; readonly ratingA: number };
  /** More than the usual two, if a household insists and everything allows. */
  readonly most?: number;
};

export type BurnersReason = 'burners' | 'usual' | 'heat' | 'air' | 'circuit';

export type BurnersRow = {
  readonly burners: number;
  readonly peakC: Band;
  readonly heatIndexC: Band;
  /** Mean of the worst hour; absent for electric burners. */
  readonly no2HourMgM3?: Band;
  readonly refusedBy?: 'heat' | 'air' | 'circuit';
};

function airChangesPerH(of: BurnersInput): number {
  const leak = of.leakPerH ?? 0.5;
  if (!of.window.open || of.window.areaM2 === 0) return leak;
  const flow = windowFlow({
    areaM2: of.window.areaM2,
    heightM: of.window.heightM,
    differenceK: WARM_ROOM_K,
    windMS: of.windMS ?? 2,
  }).flowM3S.typical;
  return leak + (flow * SECONDS_PER_HOUR) / of.volumeM3;
}

function rowOf(of: BurnersInput, burners: number): BurnersRow {
  const toS = of.minutes * SECONDS_PER_MINUTE;
  const watts = burners * of.burnerW;
  const moistureKgS = of.gas ? watts * emissionFactor('H2O').ngJ.typical * MG_NG * KG_MG : 0;
  const heat = roomHeat({ ...of, heat: [{ fromS: 0, toS, heatW: watts, moistureKgS }] });
  const no2 = of.gas
    ? airCurve({
        volumeM3: of.volumeM3,
        gas: [{ fromS: 0, toS, gasW: watts }],
        hood: of.hood,
        airChangesPerH: airChangesPerH(of),
        pollutant: 'NO2',
      }).limits.find(({ id }) => id === 'epa-no2-1h')
    : undefined;
  const overloaded =
    of.circuit !== undefined && !of.gas && !circuitLoad({ ...of.circuit, loadsW: [watts] }).allowed;
  const refusedBy = overloaded
    ? 'circuit'
    : heat.peakHeatIndexC.typical >= DANGER_INDEX_C
      ? 'heat'
      : no2?.exceeded
        ? 'air'
        : undefined;
  return {
    burners,
    peakC: heat.peakC,
    heatIndexC: heat.peakHeatIndexC,
    ...(no2 && { no2HourMgM3: no2.meanMgM3 }),
    ...(refusedBy && { refusedBy }),
  };
}

/**
 * How many burners to light at once: the usual two, or fewer where the heat of
 * the room, its air or the circuit says so. Never fewer than one: then
 * `withinLimits` is false and the caller says what to open or wait for.
 * @throws OutOfRangeError
 * Source: roomHeat with the National Weather Service's danger limit, airCurve
 * with the EPA one-hour NO2 value, circuitLoad; two at a time is common practice.
 */
export function burnersAtOnce(of: BurnersInput): {
  readonly atOnce: number;
  readonly limitedBy: BurnersReason;
  readonly withinLimits: boolean;
  readonly rows: readonly BurnersRow[];
} {
  const count = inRange('burners', of.burners, 1, 24);
  inRange('burnerW', of.burnerW, 100, 20_000);
  inRange('minutes', of.minutes, 1, 600);
  const most = Math.min(count, inRange('most', of.most ?? USUAL_AT_ONCE, 1, 24));
  const rows = Array.from({ length: count }, (_, i) => rowOf(of, i + 1));
  const refused = rows.find(({ refusedBy }) => refusedBy !== undefined);
  const allowed = (refused?.burners ?? count + 1) - 1;
  const atOnce = Math.max(1, Math.min(most, allowed));
  const limitedBy: BurnersReason =
    allowed < most && refused?.refusedBy ? refused.refusedBy : count <= most ? 'burners' : 'usual';
  return { atOnce, limitedBy, withinLimits: allowed >= 1, rows };
}
