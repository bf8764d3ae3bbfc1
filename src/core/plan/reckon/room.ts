import type { Kitchen } from '../../kitchen/index.ts';
import { burnersAtOnce, heatIndex, roomHeat } from '../../physics/index.ts';
import type { Band } from '../../quantity/index.ts';
import { ROOM_C } from './vessels.ts';

/** Two at a time, so that the kitchen does not overheat: common practice, no published source. */
const MOST_AT_ONCE = 2;
/** Warm evening outside, °C: a household does this at any season. Common practice, no published source. */
const OUTDOOR_C = 20;
const HUMIDITY_PCT = 50;
/** Heat index at which "extreme caution" begins (90 °F), °C: National Weather Service. */
const EXTREME_CAUTION_C = 32.2;
/** What the heat index is defined for, °C. */
const INDEX_FROM_C = 20;

export type RoomReckoned = {
  /** Burners that may be lit together. */
  readonly atOnce: number;
  readonly peakC: Band;
  readonly curve: readonly { readonly timeS: number; readonly airC: number }[];
  /** Hot enough for the caution about heat illness. */
  readonly hot: boolean;
};

function shapeOf(kitchen: Kitchen) {
  const { floorAreaM2, heightM, hood, window } = kitchen.room;
  const sideM = Math.sqrt(floorAreaM2);
  return {
    volumeM3: floorAreaM2 * heightM,
    wallAreaM2: 4 * sideM * heightM + 2 * floorAreaM2,
    hoodFlowM3S: hood.kind === 'vented' ? hood.flowLS / 1000 : 0,
    windowAreaM2: window.areaM2,
    windowHeightM: window.heightM,
    outdoorC: OUTDOOR_C,
    startC: ROOM_C,
  };
}

/** Air temperature with that many burners of that power lit for that long. */
export function reckonRoom(
  kitchen: Kitchen,
  burnerW: number,
  burners: number,
  minutes: number,
): Omit<RoomReckoned, 'atOnce'> {
  const { peakC, curve } = roomHeat({ ...shapeOf(kitchen), heatW: burnerW * burners, minutes });
  const index =
    peakC.typical < INDEX_FROM_C
      ? peakC.typical
      : heatIndex({ tempC: peakC.typical, humidityPct: HUMIDITY_PCT }).heatIndexC;
  return { peakC, curve, hot: index >= EXTREME_CAUTION_C };
}

/** How many burners may be lit together in this room, at most two. */
export function reckonBurnersAtOnce(
  kitchen: Kitchen,
  burnerW: number,
  minutes: number,
): RoomReckoned {
  const shape = shapeOf(kitchen);
  const atOnce = burnersAtOnce({ ...shape, heatW: 0, minutes, burnerW, most: MOST_AT_ONCE });
  return { atOnce, ...reckonRoom(kitchen, burnerW, atOnce, minutes) };
}
