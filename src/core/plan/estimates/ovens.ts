import type { Oven } from '../../kitchen/index.ts';
import {
  cleanCycle,
  highestHeat,
  ovenCooling,
  ovenStages,
  touchThreshold,
} from '../../physics/index.ts';
import { mapBand, SECONDS_PER_MINUTE, type Band } from '../../units/index.ts';

const toS = (min: number): number => min * SECONDS_PER_MINUTE;

/** An oven's heat in its stages, seconds. */
export type OvenEstimate = {
  readonly heatS: Band;
  /** Of the cycle, heating included; of the highest setting, after it. */
  readonly holdS: number;
  /** Until the lock opens, or until it may be touched. */
  readonly coolS: Band;
  readonly hotC: number;
  readonly openC: number;
};

/**
 * Share of the time that the elements are on, over a whole cycle. Common
 * practice, no published source.
 */
export const OVEN_DUTY_SHARE = 0.6;
/** Shortest and longest the model answers for, min. */
const CYCLE_RANGE_MIN = [60, 480] as const;
const HOLD_RANGE_MIN = [10, 480] as const;
/** A consumer may lean on it for so long, s: ASTM C1055. */
const TOUCH_S = 60;

function clamped(value: number, [least, most]: readonly [number, number]): number {
  return Math.min(Math.max(value, least), most);
}

/** The self-clean cycle: the manual's length, else the usual. `touchS`: from the open lock until it may be touched. */
export function estimateSelfClean(oven: Oven): OvenEstimate & { readonly touchS: number } {
  const usual = cleanCycle('normal');
  const told = oven.cycleMin ?? usual.cycleMin;
  const { heatMin, coolMin } = ovenStages({ cycleMin: clamped(told, CYCLE_RANGE_MIN) });
  const { touchC } = touchThreshold({ material: 'metal', contactS: TOUCH_S });
  const touch = ovenCooling({ fromC: usual.unlockC.high, toC: touchC });
  return {
    heatS: mapBand(heatMin, toS),
    holdS: toS(told),
    coolS: mapBand(coolMin, toS),
    hotC: usual.cleanC.typical,
    openC: usual.unlockC.typical,
    // A timer to "safe" takes the slow end.
    touchS: toS(touch.coolMin.high),
  };
}

/** The highest setting, held for so many minutes after its heat is reached. */
export function estimateHighHeat(holdMin: number): OvenEstimate {
  const { heatMin, coolMin, settingC } = highestHeat({ holdMin: clamped(holdMin, HOLD_RANGE_MIN) });
  const { touchC } = touchThreshold({ material: 'metal', contactS: TOUCH_S });
  return {
    heatS: mapBand(heatMin, toS),
    holdS: toS(holdMin),
    coolS: mapBand(coolMin, toS),
    hotC: settingC.typical,
    openC: touchC,
  };
}
