import { ovenStages } from '../../physics/index.ts';
import type { Oven } from '../../kitchen/index.ts';
import { band, mapBand, type Band } from '../../quantity/index.ts';
import { HIGHEST, NORMAL_CYCLE, NORMAL_CYCLE_MIN, touchC } from './tables.ts';
import { ROOM_C } from './vessels.ts';

const S_MIN = 60;
const toS = (min: number): number => min * S_MIN;

/** An oven's heat in its stages, seconds. */
export type OvenReckoned = {
  readonly heatS: Band;
  readonly holdS: number;
  /** Until the lock opens, or until it may be touched. */
  readonly coolS: Band;
  readonly hotC: number;
  readonly openC: number;
  /** Share of the rated power it draws on average over heat and hold. */
  readonly dutyShare: number;
};

/**
 * Share of the time that the elements are on, over a whole cycle. Common
 * practice, no published source.
 */
const DUTY_SHARE = 0.6;
/** Shortest and longest cycle the model answers for, min. */
const CYCLE_RANGE_MIN = [60, 480] as const;

/** The self-clean cycle: the manual's length, else the usual. `heatS` is part of the cycle. */
export function reckonSelfClean(oven: Oven): OvenReckoned & { readonly touchS: number } {
  const told = oven.cycleMin ?? NORMAL_CYCLE_MIN;
  const cycleMin = Math.min(Math.max(told, CYCLE_RANGE_MIN[0]), CYCLE_RANGE_MIN[1]);
  const { heatMin, coolMin } = ovenStages({ cycleMin, roomC: ROOM_C });
  const { coolTauMin, cleanC, unlockC } = NORMAL_CYCLE;
  // From the unlocking heat on, by Newton's law with the slow end of the oven's time constant.
  const touchMin =
    coolTauMin.high * Math.log((unlockC.typical - ROOM_C) / (touchC('metal') - ROOM_C));
  return {
    heatS: mapBand(heatMin, toS),
    holdS: toS(told),
    coolS: mapBand(coolMin, toS),
    hotC: cleanC.typical,
    openC: unlockC.typical,
    dutyShare: DUTY_SHARE,
    touchS: toS(touchMin),
  };
}

/** The highest setting, held for the custom's minutes after the heat is reached. */
export function reckonHighHeat(holdMin: number): OvenReckoned {
  const { heatMin, coolTauMin, settingC } = HIGHEST;
  const cool = (tauMin: number, hotC: number): number =>
    tauMin * Math.log((hotC - ROOM_C) / (touchC('metal') - ROOM_C));
  return {
    heatS: mapBand(heatMin, toS),
    holdS: toS(holdMin),
    coolS: mapBand(
      band(
        cool(coolTauMin.low, settingC.low),
        cool(coolTauMin.typical, settingC.typical),
        cool(coolTauMin.high, settingC.high),
      ),
      toS,
    ),
    hotC: settingC.typical,
    openC: touchC('metal'),
    dutyShare: DUTY_SHARE,
  };
}
