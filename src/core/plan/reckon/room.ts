import type { Kitchen } from '../../kitchen/index.ts';
import {
  burnersAtOnce,
  hoodCapture,
  roomHeat,
  type BurnersReason,
  type RoomPoint,
} from '../../physics/index.ts';
import type { Band } from '../../quantity/index.ts';

/** A warm evening outside and a room no cooler, °C: common practice, no published source. */
const OUTDOOR_C = 20;
/** Heat index at which "extreme caution" begins (90 °F), °C: National Weather Service. */
const EXTREME_CAUTION_C = 32.2;
const S_MIN = 60;
/** Largest burner the model answers for, W. */
const MOST_BURNER_W = 20_000;

export type RoomReckoned = {
  readonly peakC: Band;
  readonly curve: readonly RoomPoint[];
  /** Hot enough for the caution about heat illness. */
  readonly hot: boolean;
};

export type AtOnce = RoomReckoned & {
  /** Burners that may be lit together. */
  readonly atOnce: number;
  readonly limitedBy: BurnersReason;
  /** Even one passes a limit of heat or air as the room is told. */
  readonly withinLimits: boolean;
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
  const { peakC, curve, peakHeatIndexC } = roomHeat({
    ...roomOf(kitchen),
    heat: [{ fromS: 0, toS: minutes * S_MIN, heatW: burnerW * burners }],
  });
  return { peakC, curve, hot: peakHeatIndexC.typical >= EXTREME_CAUTION_C };
}

/** How many burners may be lit together in this room: two, or fewer. */
export function reckonBurnersAtOnce(
  kitchen: Kitchen,
  burner: { readonly ratedW: number; readonly gas: boolean; readonly count: number },
  minutes: number,
): AtOnce {
  const { atOnce, limitedBy, withinLimits } = burnersAtOnce({
    ...roomOf(kitchen),
    burnerW: Math.min(burner.ratedW, MOST_BURNER_W),
    gas: burner.gas,
    minutes,
    burners: burner.count,
  });
  const room = reckonRoom(kitchen, burner.ratedW, atOnce, minutes);
  return { ...room, atOnce, limitedBy, withinLimits };
}
