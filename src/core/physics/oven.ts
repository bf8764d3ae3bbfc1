import { band, inRange, type Band } from '../quantity/index.ts';

/** Length of heat and hold together, min: owners' manuals give 2 h light, 3 h normal, 4 h heavy. */
const CYCLE_MIN = { light: 120, normal: 180, heavy: 240 } as const;
export type CleanCycle = keyof typeof CYCLE_MIN;

/** Cavity during the cycle, °C: 427 to 538 in manuals of several makers, near 471. */
export const CLEAN_C: Band = { low: 427, typical: 471, high: 538 };
/** The lock opens between 260 and 315 °C (repair guides). */
export const UNLOCK_C: Band = { low: 260, typical: 290, high: 315 };
/** Newton time constant of an insulated oven with its door shut, min. Common practice, no published source. */
const COOLING_TAU_MIN: Band = { low: 45, typical: 60, high: 90 };
/** Heating from cold to cleaning temperature, min (manuals: 30 to 60). From memory. */
const HEAT_UP_MIN: Band = { low: 30, typical: 45, high: 60 };

export type OvenStages = {
  readonly heatMin: Band;
  readonly holdMin: Band;
  readonly coolMin: Band;
  readonly totalMin: Band;
};

/**
 * Stages of a self-clean cycle. The length in the manual is heat and hold
 * together; then it cools, locked, by Newton's law until the lock opens.
 * @throws OutOfRangeError
 */
export function ovenStages(input: {
  readonly cycleMin: number;
  readonly roomC: number;
}): OvenStages {
  const cycleMin = inRange('cycleMin', input.cycleMin, 60, 480);
  const roomC = inRange('roomC', input.roomC, 0, 45);
  const cool = (hotC: number, openC: number, tauMin: number): number =>
    tauMin * Math.log((hotC - roomC) / (openC - roomC));
  const coolMin = band(
    cool(CLEAN_C.low, UNLOCK_C.high, COOLING_TAU_MIN.low),
    cool(CLEAN_C.typical, UNLOCK_C.typical, COOLING_TAU_MIN.typical),
    cool(CLEAN_C.high, UNLOCK_C.low, COOLING_TAU_MIN.high),
  );
  return {
    heatMin: HEAT_UP_MIN,
    holdMin: band(
      cycleMin - HEAT_UP_MIN.high,
      cycleMin - HEAT_UP_MIN.typical,
      cycleMin - HEAT_UP_MIN.low,
    ),
    coolMin,
    totalMin: band(cycleMin + coolMin.low, cycleMin + coolMin.typical, cycleMin + coolMin.high),
  };
}

/** Minutes of a named cycle when the manual gives none. */
export function cycleMinutes(cycle: CleanCycle): number {
  return CYCLE_MIN[cycle];
}

/**
 * Minutes until an oven switched off at `hotC`, door shut, may be touched inside.
 * @throws OutOfRangeError
 */
export function ovenCooling(input: {
  readonly hotC: number;
  readonly touchC: number;
  readonly roomC: number;
}): { readonly coolMin: Band } {
  inRange('hotC', input.hotC, 60, 600);
  inRange('touchC', input.touchC, input.roomC + 5, input.hotC);
  const ratio = Math.log((input.hotC - input.roomC) / (input.touchC - input.roomC));
  return {
    coolMin: band(
      COOLING_TAU_MIN.low * ratio,
      COOLING_TAU_MIN.typical * ratio,
      COOLING_TAU_MIN.high * ratio,
    ),
  };
}
