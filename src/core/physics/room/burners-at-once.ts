import { SECONDS_PER_MINUTE, inRange, type Band } from '../../units/index.ts';
import { circuitLoad } from '../electricity/circuit-load.ts';
import { emissionFactor, type Pollutant } from '../tables/emissions.ts';
import { airChanges } from './air-changes.ts';
import { airCurve, type LimitCheck } from './air-curve.ts';
import { roomHeat } from './room-heat.ts';
import type { HeatPiece, RoomInput } from './room-types.ts';

/** From here the National Weather Service speaks of danger: 103 °F, in °C. */
const DANGER_INDEX_C = ((103 - 32) * 5) / 9;
/** Two hands, one pair of eyes: the usual number. Common practice, no published source. */
const USUAL_AT_ONCE = 2;
/** A room has long settled by then, min. */
const MOST_MINUTES = 600;
const MG_NG = 1e-6;
const KG_MG = 1e-6;
/** Gases of a flame that set a limit to how many are lit. */
const LIMITING: readonly Exclude<Pollutant, 'H2O'>[] = ['NO2', 'CO'];

export type BurnersInput = Omit<RoomInput, 'heat' | 'untilS'> & {
  /** Rated power of one burner; the largest of those to be lit. */
  readonly burnerW: number;
  readonly gas: boolean;
  /** How long one burner is lit. */
  readonly minutes: number;
  /** Burners that are asked about together. */
  readonly burners: number;
  /** Every burner to be lit, W, batch after batch without a pause; default: one batch of the asked. */
  readonly allW?: readonly number[];
  /** What else heats the room meanwhile or before, from the start of the curve. */
  readonly besides?: readonly HeatPiece[];
  /** When the burners are lit, s after that start; default 0. */
  readonly litAtS?: number;
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
  /** NO2 and CO beside their limits; none for electric burners. */
  readonly air: readonly LimitCheck[];
  readonly refusedBy?: 'heat' | 'air' | 'circuit';
};

/** So many burners lit together between two moments. */
export type Batch = { readonly fromS: number; readonly toS: number; readonly watts: number };

/**
 * Burners lit so many at a time, without a pause, until each has had its turn;
 * the strongest last, when the room is warmest: the careful order.
 * @param minutes how long each is lit; the last ten hours are kept, a room has long settled by then
 */
export function batchesOf(
  allW: readonly number[],
  atOnce: number,
  minutes: number,
): readonly Batch[] {
  const strongestFirst = allW.toSorted((a, b) => b - a);
  const lengthS = minutes * SECONDS_PER_MINUTE;
  const most = Math.max(1, Math.floor(MOST_MINUTES / minutes));
  const count = Math.min(most, Math.ceil(strongestFirst.length / atOnce));
  return Array.from({ length: count }, (_, i) => {
    const from = (count - 1 - i) * atOnce;
    const watts = strongestFirst.slice(from, from + atOnce).reduce((sum, w) => sum + w, 0);
    return { fromS: i * lengthS, toS: (i + 1) * lengthS, watts };
  });
}

function airOf(of: BurnersInput, batches: readonly Batch[]): readonly LimitCheck[] {
  if (!of.gas) return [];
  const airChangesPerH = airChanges(of);
  return LIMITING.flatMap(
    (pollutant) =>
      airCurve({
        volumeM3: of.volumeM3,
        gas: batches.map(({ fromS, toS, watts }) => ({ fromS, toS, gasW: watts })),
        hood: of.hood,
        airChangesPerH,
        pollutant,
      }).limits,
  );
}

/** Heat and steam of batches that begin at a moment. */
export function heatOf(
  batches: readonly Batch[],
  gas: boolean,
  litAtS: number,
): readonly HeatPiece[] {
  const steam = gas ? emissionFactor('H2O').ngJ.typical * MG_NG * KG_MG : 0;
  return batches.map(({ fromS, toS, watts }) => ({
    fromS: litAtS + fromS,
    toS: litAtS + toS,
    heatW: watts,
    moistureKgS: watts * steam,
  }));
}

function rowOf(of: BurnersInput, burners: number): BurnersRow {
  const allW = of.allW ?? Array.from({ length: burners }, () => of.burnerW);
  const batches = batchesOf(allW, burners, of.minutes);
  const watts = burners * of.burnerW;
  const heat = roomHeat({
    ...of,
    heat: [...(of.besides ?? []), ...heatOf(batches, of.gas, of.litAtS ?? 0)],
  });
  const air = airOf(of, batches);
  const overloaded =
    of.circuit !== undefined && !of.gas && !circuitLoad({ ...of.circuit, loadsW: [watts] }).allowed;
  // Air first: it is the graver of the two.
  const refusedBy = overloaded
    ? 'circuit'
    : air.some(({ exceeded }) => exceeded)
      ? 'air'
      : heat.peakHeatIndexC.typical >= DANGER_INDEX_C
        ? 'heat'
        : undefined;
  return {
    burners,
    peakC: heat.peakC,
    heatIndexC: heat.peakHeatIndexC,
    air,
    ...(refusedBy && { refusedBy }),
  };
}

/**
 * How many burners to light at once: the usual two, or fewer where the heat of
 * the room, its air or the circuit says so. Never fewer than one: then
 * `withinLimits` is false and the caller says what to open or wait for. Air is
 * judged at the bad corner of its band, heat at what is expected.
 * @throws OutOfRangeError
 * Source: roomHeat with the National Weather Service's danger limit, airCurve
 * with the limits of EPA and WHO for NO2 and CO, circuitLoad; two at a time is
 * common practice.
 */
export function burnersAtOnce(of: BurnersInput): {
  readonly atOnce: number;
  readonly limitedBy: BurnersReason;
  readonly withinLimits: boolean;
  /** From one burner to as many as are lit, or to the first number that is refused. */
  readonly rows: readonly BurnersRow[];
} {
  const count = inRange('burners', of.burners, 1, 24);
  inRange('burnerW', of.burnerW, 100, 60_000);
  inRange('minutes', of.minutes, 1, MOST_MINUTES);
  const most = Math.min(count, inRange('most', of.most ?? USUAL_AT_ONCE, 1, 24));
  const rows: BurnersRow[] = [];
  // What more burners would do decides nothing once some are refused.
  while (rows.length < most && rows.at(-1)?.refusedBy === undefined)
    rows.push(rowOf(of, rows.length + 1));
  const refused = rows.find(({ refusedBy }) => refusedBy !== undefined);
  const allowed = refused ? refused.burners - 1 : most;
  const atOnce = Math.max(1, allowed);
  const limitedBy: BurnersReason =
    allowed < most && refused?.refusedBy ? refused.refusedBy : count <= most ? 'burners' : 'usual';
  return { atOnce, limitedBy, withinLimits: allowed >= 1, rows };
}
