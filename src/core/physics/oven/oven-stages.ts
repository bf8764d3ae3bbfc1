import { addBands, band, exactly, inRange, OutOfRangeError, type Band } from '../../units/index.ts';
import { USUAL_ROOM_C } from '../common/constants.ts';
import { cleanCycle, HIGHEST_HEAT, type CycleRow } from '../tables/appliances.ts';

type CycleName = 'light' | 'normal' | 'heavy';

/** One of: a named cycle, its length from the manual (heating included), or the minutes of the hold alone. */
export type OvenInput = {
  readonly cycle?: CycleName;
  readonly cycleMin?: number;
  readonly holdMin?: number;
  readonly roomC?: number;
};

export type OvenStages = {
  readonly heatMin: Band;
  readonly holdMin: Band;
  /** Locked while it cools. */
  readonly coolMin: Band;
  readonly totalMin: Band;
};

/** Newton: minutes from `hotC` to `coolC` with time constant `tauMin`. */
function newtonMin(tauMin: number, hotC: number, coolC: number, roomC: number): number {
  return tauMin * Math.log((hotC - roomC) / (coolC - roomC));
}

/** A quick oven opens early, a slow one late; the cavity's own temperature is taken as typical. */
function lockedMin(row: CycleRow, roomC: number): Band {
  const hotC = row.cleanC.typical;
  return band(
    newtonMin(row.coolTauMin.low, hotC, row.unlockC.high, roomC),
    newtonMin(row.coolTauMin.typical, hotC, row.unlockC.typical, roomC),
    newtonMin(row.coolTauMin.high, hotC, row.unlockC.low, roomC),
  );
}

/**
 * Stages of a self-clean cycle, min. A cycle from the manual contains its
 * heating; an entered hold comes after it. The lock then stays until the oven
 * has cooled.
 * @param of.cycleMin 60 to 480 min
 * @param of.holdMin 10 to 480 min
 * @param of.roomC −10 to 50 °C
 * @throws OutOfRangeError
 * Source: owners' manuals of several makers (2, 3, 4 h; unlocked at 260 to
 * 315 °C, about an hour); Newton's law, since a shut oven is held by its
 * insulation and not by the air outside. Its time constant is a judgement that
 * has the manuals' hour within its band; heating-up time: common practice.
 */
export function ovenStages(of: OvenInput): OvenStages {
  const roomC = inRange('roomC', of.roomC ?? USUAL_ROOM_C, -10, 50);
  const row = cleanCycle(of.cycle ?? 'normal');
  const heatMin = row.heatMin;
  const coolMin = lockedMin(row, roomC);
  if (of.holdMin !== undefined) {
    const holdMin = exactly(inRange('holdMin', of.holdMin, 10, 480));
    return { heatMin, holdMin, coolMin, totalMin: addBands(addBands(heatMin, holdMin), coolMin) };
  }
  if (of.cycle === undefined && of.cycleMin === undefined) {
    throw new OutOfRangeError(
      'cycle',
      'not given',
      'light, normal, heavy, or holdMin',
      'Choose one.',
    );
  }
  const cycleMin = inRange('cycleMin', of.cycleMin ?? row.cycleMin, 60, 480);
  const rest = (heat: number) => Math.max(0, cycleMin - heat);
  return {
    heatMin,
    holdMin: band(rest(heatMin.high), rest(heatMin.typical), rest(heatMin.low)),
    coolMin,
    totalMin: addBands(exactly(cycleMin), coolMin),
  };
}

/**
 * Stages of an oven at its highest setting, min: heat up, hold, cool with the
 * door shut until it may be touched.
 * @param holdMin 10 to 480
 * @throws OutOfRangeError
 * Source: common practice, no published source; Newton's law.
 */
export function highestHeat(of: {
  readonly holdMin: number;
  readonly roomC?: number;
}): OvenStages & {
  readonly settingC: Band;
} {
  const roomC = inRange('roomC', of.roomC ?? USUAL_ROOM_C, -10, HIGHEST_HEAT.openC.low - 5);
  const holdMin = exactly(inRange('holdMin', of.holdMin, 10, 480));
  const { heatMin, coolTauMin, settingC, openC } = HIGHEST_HEAT;
  const coolMin = band(
    newtonMin(coolTauMin.low, settingC.low, openC.high, roomC),
    newtonMin(coolTauMin.typical, settingC.typical, openC.typical, roomC),
    newtonMin(coolTauMin.high, settingC.high, openC.low, roomC),
  );
  const totalMin = addBands(addBands(heatMin, holdMin), coolMin);
  return { heatMin, holdMin, coolMin, totalMin, settingC };
}

/**
 * Minutes until an oven that was switched off at `fromC` has cooled to `toC`,
 * door shut.
 * @param of.tauMin time constant; default: the band of self-clean ovens
 * @throws OutOfRangeError
 * Source: Newton's law; time constant common practice, no published source.
 */
export function ovenCooling(of: {
  readonly fromC: number;
  readonly toC: number;
  readonly roomC?: number;
  readonly tauMin?: number;
}): { readonly coolMin: Band } {
  const roomC = inRange('roomC', of.roomC ?? USUAL_ROOM_C, -10, 50);
  const toC = inRange('toC', of.toC, roomC + 1, 600);
  const fromC = inRange('fromC', of.fromC, toC, 600);
  const coolTauMin =
    of.tauMin === undefined
      ? cleanCycle('normal').coolTauMin
      : exactly(inRange('tauMin', of.tauMin, 5, 600));
  const minutes = (tau: number) => newtonMin(tau, fromC, toC, roomC);
  return {
    coolMin: band(minutes(coolTauMin.low), minutes(coolTauMin.typical), minutes(coolTauMin.high)),
  };
}
