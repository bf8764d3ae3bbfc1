import type { Kitchen } from '../../kitchen/index.ts';
import {
  burnersAtOnce,
  hoodCapture,
  roomHeat,
  type BurnersReason,
  type RoomPoint,
} from '../../physics/index.ts';
import {
  LITRES_PER_M3,
  OutOfRangeError,
  SECONDS_PER_MINUTE,
  type Band,
} from '../../units/index.ts';

/** A warm evening outside and a room no cooler, °C: common practice, no published source. */
const OUTDOOR_C = 20;
/** Heat index at which "extreme caution" begins (90 °F), °C: National Weather Service. */
const EXTREME_CAUTION_C = 32.2;
/** Longest the model answers for, min; a room has long settled by then. */
const MOST_MINUTES = 600;
/** Largest burner the model answers for, W. */
const MOST_BURNER_W = 20_000;

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

// What the models answer for; a kitchen beyond it is estimated as the nearest that they do.
const VOLUME_M3 = [3, 5000] as const;
const WALLS_M2 = [5, 5000] as const;
const MOST_WINDOW_M2 = 20;
const WINDOW_M = [0.05, 5] as const;

function within(value: number, [least, most]: readonly [number, number]): number {
  return Math.min(Math.max(value, least), most);
}

export function roomOf(kitchen: Kitchen) {
  const { floorAreaM2, heightM, hood, window } = kitchen.room;
  const sideM = Math.sqrt(floorAreaM2);
  // The gate before the work asks for an open window.
  const open = window.areaM2 > 0 && window.heightM > 0;
  return {
    volumeM3: within(floorAreaM2 * heightM, VOLUME_M3),
    wallAreaM2: within(4 * sideM * heightM + 2 * floorAreaM2, WALLS_M2),
    hood: {
      capture: hoodCapture(hood.kind),
      flowM3S: hood.kind === 'vented' ? hood.flowLS / LITRES_PER_M3 : 0,
    },
    window: {
      areaM2: Math.min(window.areaM2, MOST_WINDOW_M2),
      heightM: within(window.heightM, WINDOW_M),
      open,
    },
    outdoorC: OUTDOOR_C,
    startC: OUTDOOR_C,
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
function asked(kitchen: Kitchen, burner: LitBurner, minutes: number) {
  try {
    return burnersAtOnce({
      ...roomOf(kitchen),
      burnerW: Math.min(burner.ratedW, MOST_BURNER_W),
      gas: burner.gas,
      minutes: Math.min(minutes, MOST_MINUTES),
      burners: burner.count,
    });
  } catch (refusal) {
    if (refusal instanceof OutOfRangeError) return undefined;
    throw refusal;
  }
}

/** The strongest burner of those that are lit, and how many there are. */
export type LitBurner = {
  readonly ratedW: number;
  readonly gas: boolean;
  readonly count: number;
};

/** How many burners may be lit together in this room: two, or fewer; one where that cannot be estimated. */
export function estimateBurnersAtOnce(
  kitchen: Kitchen,
  burner: LitBurner,
  minutes: number,
): AtOnce {
  const found = asked(kitchen, burner, minutes);
  const row = found?.rows[found.atOnce - 1];
  if (!found || !row) return { atOnce: 1, limitedBy: 'heat', withinLimits: false, hot: true };
  const { atOnce, limitedBy, withinLimits } = found;
  const hot = row.heatIndexC.typical >= EXTREME_CAUTION_C;
  return { atOnce, limitedBy, withinLimits, peakC: row.peakC, hot };
}

/** A room in which nothing is lit. */
export const UNLIT: AtOnce = { atOnce: 1, limitedBy: 'burners', withinLimits: true, hot: false };
