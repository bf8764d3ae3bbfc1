import type { Kitchen } from '../../kitchen/index.ts';
import { burnersAtOnce, hoodCapture, roomHeat } from '../../physics/index.ts';
import type { Band } from '../../quantity/index.ts';
import { isGas } from './tables.ts';
import { ROOM_C } from './vessels.ts';

/** Two at a time, so that the kitchen does not overheat: common practice, no published source. */
const MOST_AT_ONCE = 2;
/** Warm evening outside, °C: a household does this at any season. Common practice, no published source. */
const OUTDOOR_C = 20;
/** Heat index at which "extreme caution" begins (90 °F), °C: National Weather Service. */
const EXTREME_CAUTION_C = 32.2;
const LITRES_M3 = 1000;
const S_MIN = 60;

export type RoomReckoned = {
  /** Burners that may be lit together. */
  readonly atOnce: number;
  readonly peakC: Band;
  readonly curve: readonly { readonly timeS: number; readonly airC: number }[];
  /** Hot enough for the caution about heat illness. */
  readonly hot: boolean;
};

/** The room with its hood on and its window open, as the steps ask before a burner is lit. */
function shapeOf(kitchen: Kitchen) {
  const { floorAreaM2, heightM, hood, window } = kitchen.room;
  const sideM = Math.sqrt(floorAreaM2);
  return {
    volumeM3: floorAreaM2 * heightM,
    wallAreaM2: 4 * sideM * heightM + 2 * floorAreaM2,
    hood: {
      capture: hoodCapture(hood.flowLS > 0 ? hood.kind : 'none'),
      flowM3S: hood.kind === 'vented' ? hood.flowLS / LITRES_M3 : 0,
    },
    window: { areaM2: window.areaM2, heightM: window.heightM, open: window.areaM2 > 0 },
    outdoorC: OUTDOOR_C,
    startC: ROOM_C,
  };
}

function cooksWithGas(kitchen: Kitchen): boolean {
  return kitchen.fixtures.some(
    (one) => one.kind === 'cooktop' && one.burners.some(({ type }) => isGas(type)),
  );
}

/** Air temperature with that many burners of that power lit for that long. */
export function reckonRoom(
  kitchen: Kitchen,
  burnerW: number,
  burners: number,
  minutes: number,
): Omit<RoomReckoned, 'atOnce'> {
  const heat = [{ fromS: 0, toS: minutes * S_MIN, heatW: burnerW * burners }];
  const { peakC, peakHeatIndexC, curve } = roomHeat({ ...shapeOf(kitchen), heat });
  return { peakC, curve, hot: peakHeatIndexC.typical >= EXTREME_CAUTION_C };
}

/** How many burners may be lit together in this room: heat and, with gas, its air; at most two. */
export function reckonBurnersAtOnce(
  kitchen: Kitchen,
  burnerW: number,
  minutes: number,
): RoomReckoned {
  const { atOnce } = burnersAtOnce({
    ...shapeOf(kitchen),
    burnerW,
    minutes,
    gas: cooksWithGas(kitchen),
    burners: MOST_AT_ONCE,
  });
  return { atOnce, ...reckonRoom(kitchen, burnerW, atOnce, minutes) };
}
