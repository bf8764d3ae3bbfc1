import { civilDate, dayNumber } from '../../calendar/index.ts';
import { windowTold, type Kitchen } from '../../kitchen/index.ts';
import {
  burnersAtOnce,
  hoodCapture,
  outdoorTemp,
  roomHeat,
  WITHOUT_PLACE_LAT_DEG,
  type BurnersReason,
  type RoomPoint,
} from '../../physics/index.ts';
import {
  exactly,
  LITRES_PER_M3,
  MS_PER_DAY,
  OutOfRangeError,
  SECONDS_PER_MINUTE,
  type Band,
} from '../../units/index.ts';
import type { BesideHeat } from './beside-heat.ts';
import { remembered } from './remembered.ts';

const reckonedAtOnce = remembered(burnersAtOnce);

/** A room is no cooler than this, °C: common practice, no published source. */
const LEAST_ROOM_C = 20;
/** Heat index at which "extreme caution" begins (90 °F), °C: National Weather Service. */
const EXTREME_CAUTION_C = 32.2;
/** Most burners the model answers for; far more than are ever lit together. */
const MOST_BURNERS = 24;
/** Longest the model answers for, min; a room has long settled by then. */
const MOST_MINUTES = 600;

/** Air of the room over the time that burners are lit. */
type RoomEstimate = { readonly peakC: Band; readonly curve: readonly RoomPoint[] };

export type AtOnce = {
  /** Burners that may be lit together. */
  readonly atOnce: number;
  readonly limitedBy: BurnersReason;
  /** False when even one passes a limit of heat or air in the room as it is told. */
  readonly withinLimits: boolean;
  /** Absent when the model refuses the room as it is told, or nothing is lit. */
  readonly peakC?: Band;
  /** Hot enough for the caution about heat illness. */
  readonly hot: boolean;
};

// What the models answer for. A larger window or a longer hood is estimated as the largest that they
// do, which is the careful side; a room that is too small or too large is refused.
const MOST_WINDOW_M2 = 20;
const WINDOW_M = [0.05, 5] as const;

function within(value: number, [least, most]: readonly [number, number]): number {
  return Math.min(Math.max(value, least), most);
}

/** First and last day of the year on which the eve of Passover falls: 26 March, 25 April. */
const PASSOVER_DAYS = { south: 85, north: 115 } as const;

/** Day of the year of a moment, 1 to 366; a zone moves it by one at most, and the season by nothing. */
function dayOfYear(wallMs: number): number {
  const date = civilDate(Math.floor(wallMs / MS_PER_DAY));
  return dayNumber(date) - dayNumber({ year: date.year, month: 1, day: 1 }) + 1;
}

/**
 * Air outside while the work is done, °C: as told, else as expected on an
 * afternoon at the kitchen's place and season.
 * @param startWallMs when the work begins; absent: at the warmest of the year, or of the season of Passover for a
 * kitchen that is prepared for it
 */
export function outdoorOf(kitchen: Kitchen, startWallMs?: number): Band {
  const { room, place, altitudeM, household } = kitchen;
  if (room.outdoorC !== undefined) return exactly(room.outdoorC);
  const latDeg = place?.latDeg ?? WITHOUT_PLACE_LAT_DEG;
  const passoverDay = PASSOVER_DAYS[latDeg < 0 ? 'south' : 'north'];
  const day = startWallMs === undefined ? undefined : dayOfYear(startWallMs);
  const season = day ?? (household.purpose === 'passover' ? passoverDay : undefined);
  return outdoorTemp({
    latDeg,
    altitudeM,
    ...(place && season !== undefined && { dayOfYear: season }),
  }).afternoonC;
}

/** A kitchen as the models of its air take it. */
export function roomOf(kitchen: Kitchen, startWallMs?: number) {
  const { floorAreaM2, heightM, hood, window } = kitchen.room;
  const sideM = Math.sqrt(floorAreaM2);
  const outdoorC = outdoorOf(kitchen, startWallMs);
  return {
    volumeM3: floorAreaM2 * heightM,
    wallAreaM2: 4 * sideM * heightM + 2 * floorAreaM2,
    altitudeM: kitchen.altitudeM,
    hood: {
      capture: hoodCapture(hood.kind, hood.flowLS),
      flowM3S: hood.kind === 'vented' ? hood.flowLS / LITRES_PER_M3 : 0,
    },
    window: {
      areaM2: Math.min(window?.areaM2 ?? 0, MOST_WINDOW_M2),
      heightM: within(window?.heightM ?? 0, WINDOW_M),
      // The gate before the work asks for a window that is told to be open.
      open: windowTold(kitchen),
    },
    outdoorC,
    startC: Math.max(LEAST_ROOM_C, outdoorC.typical),
  };
}

/** Air of the room while that many burners of that power are lit for that long. */
export function estimateRoom(
  kitchen: Kitchen,
  burnerW: number,
  burners: number,
  minutes: number,
): RoomEstimate {
  const { peakC, curve } = roomHeat({
    ...roomOf(kitchen),
    heat: [{ fromS: 0, toS: minutes * SECONDS_PER_MINUTE, heatW: burnerW * burners }],
  });
  return { peakC, curve };
}

/** What burnersAtOnce says of this room; none where the model refuses it. */
function asked(kitchen: Kitchen, lit: LitBurner, beside: BesideHeat, startWallMs?: number) {
  try {
    return reckonedAtOnce({
      ...roomOf(kitchen, startWallMs),
      burnerW: Math.max(...lit.allW),
      gas: lit.gas,
      minutes: Math.min(lit.minutes, MOST_MINUTES),
      burners: Math.min(lit.allW.length, MOST_BURNERS),
      allW: lit.allW,
      besides: beside.pieces,
      litAtS: beside.litAtS,
    });
  } catch (refusal) {
    if (refusal instanceof OutOfRangeError) return undefined;
    throw refusal;
  }
}

/** What is to be lit, W each, and how long each. */
export type LitBurner = {
  readonly allW: readonly number[];
  readonly gas: boolean;
  readonly minutes: number;
};

/** How many burners may be lit together in this room: two, or fewer; one where that cannot be estimated. */
export function estimateBurnersAtOnce(
  kitchen: Kitchen,
  lit: LitBurner,
  beside: BesideHeat,
  startWallMs?: number,
): AtOnce {
  const found = asked(kitchen, lit, beside, startWallMs);
  const row = found?.rows[found.atOnce - 1];
  if (!found || !row) return { atOnce: 1, limitedBy: 'heat', withinLimits: false, hot: true };
  const { atOnce, limitedBy, withinLimits } = found;
  const hot = row.heatIndexC.typical >= EXTREME_CAUTION_C;
  return { atOnce, limitedBy, withinLimits, peakC: row.peakC, hot };
}

/** A room in which nothing is lit. */
export const UNLIT: AtOnce = { atOnce: 1, limitedBy: 'burners', withinLimits: true, hot: false };
