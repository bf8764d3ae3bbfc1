import type { Kitchen } from '../../kitchen/index.ts';
import {
  burnersAtOnce,
  hoodCapture,
  roomHeat,
  type BurnersReason,
  type RoomPoint,
} from '../../physics/index.ts';
import { exactly, type Band } from '../../quantity/index.ts';

/** A warm evening outside and a room no cooler, °C: common practice, no published source. */
const OUTDOOR_C = 20;
/** Heat index at which "extreme caution" begins (90 °F), °C: National Weather Service. */
const EXTREME_CAUTION_C = 32.2;
const S_MIN = 60;
/** Largest burner the model answers for, W. */
const MOST_BURNER_W = 20_000;

/** Air of the room over the time that burners are lit. */
export type RoomReckoned = { readonly peakC: Band; readonly curve: readonly RoomPoint[] };

export type AtOnce = {
  /** Burners that may be lit together. */
  readonly atOnce: number;
  readonly limitedBy: BurnersReason;
  /** False when even one passes a limit of heat or air in the room as it is told. */
  readonly withinLimits: boolean;
  readonly peakC: Band;
  /** Hot enough for the caution about heat illness. */
  readonly hot: boolean;
};

function roomOf(kitchen: Kitchen) {
  const { floorAreaM2, heightM, hood, window } = kitchen.room;
  const sideM = Math.sqrt(floorAreaM2);
  const vented = hood.kind === 'vented';
  return {
    volumeM3: floorAreaM2 * heightM,
    wallAreaM2: 4 * sideM * heightM + 2 * floorAreaM2,
    hood: {
      capture: hoodCapture(hood.kind),
      flowM3S: vented ? hood.flowLS / 1000 : 0,
    },
    // The gate before the work asks for an open window.
    window: { areaM2: window.areaM2, heightM: window.heightM, open: window.areaM2 > 0 },
    outdoorC: OUTDOOR_C,
    startC: OUTDOOR_C,
  };
}

/** Air of the room while that many burners of that power are lit for that long. */
export function reckonRoom(
  kitchen: Kitchen,
  burnerW: number,
  burners: number,
  minutes: number,
): RoomReckoned {
  const { peakC, curve } = roomHeat({
    ...roomOf(kitchen),
    heat: [{ fromS: 0, toS: minutes * S_MIN, heatW: burnerW * burners }],
  });
  return { peakC, curve };
}

/** How many burners may be lit together in this room: two, or fewer. */
export function reckonBurnersAtOnce(
  kitchen: Kitchen,
  burner: { readonly ratedW: number; readonly gas: boolean; readonly count: number },
  minutes: number,
): AtOnce {
  const { atOnce, limitedBy, withinLimits, rows } = burnersAtOnce({
    ...roomOf(kitchen),
    burnerW: Math.min(burner.ratedW, MOST_BURNER_W),
    gas: burner.gas,
    minutes,
    burners: burner.count,
  });
  const row = rows[atOnce - 1];
  return {
    atOnce,
    limitedBy,
    withinLimits,
    peakC: row?.peakC ?? exactly(OUTDOOR_C),
    hot: (row?.heatIndexC.typical ?? OUTDOOR_C) >= EXTREME_CAUTION_C,
  };
}

/** A room in which nothing is lit. */
export const UNLIT: AtOnce = {
  atOnce: 1,
  limitedBy: 'burners',
  withinLimits: true,
  peakC: exactly(OUTDOOR_C),
  hot: false,
};
