import { band, inRange, type Band } from '../../units/index.ts';
import { GRAVITY_MS2, ZERO_C_K } from '../common/constants.ts';

/** Discharge over three of a single opening, and the wind share. Warren & Parkins 1984. */
const STACK = 0.61 / 3;
const WIND = 0.025;
/** de Gids & Phaff 1982: wind, stack and turbulence terms. */
const PHAFF_WIND = 0.001;
const PHAFF_STACK = 0.0035;
const PHAFF_TURBULENCE = 0.01;
/** Discharge coefficient at no difference, and its rise with each kelvin. ASHRAE, one-sided opening. */
const ASHRAE_DISCHARGE = 0.4;
const ASHRAE_DISCHARGE_PERK = 0.0045;

export type WindowInput = {
  readonly areaM2: number;
  readonly heightM: number;
  /** Inside less outside. */
  readonly differenceK: number;
  readonly windMS: number;
  /** Mean of inside and outside, °C. */
  readonly meanC?: number;
};

export type WindowFlows = {
  readonly stackM3S: number;
  readonly windM3S: number;
  readonly phaffM3S: number;
  readonly ashraeM3S: number;
  /** Methods differ by two to one: their span. */
  readonly flowM3S: Band;
};

/**
 * Air that one open window exchanges, m³/s.
 * @param areaM2 openable area, 0 to 20 m²
 * @param heightM 0.05 to 5 m
 * @param differenceK −60 to 60 K
 * @param windMS wind at 10 m, 0 to 30 m/s
 * @throws OutOfRangeError
 * Source: Warren & Parkins 1984 (stack and wind, the larger counts); de Gids &
 * Phaff 1982; ASHRAE one-sided opening.
 */
export function windowFlow(of: WindowInput): WindowFlows {
  const area = inRange('areaM2', of.areaM2, 0, 20);
  const height = inRange('heightM', of.heightM, 0.05, 5);
  const dT = Math.abs(inRange('differenceK', of.differenceK, -60, 60));
  const wind = inRange('windMS', of.windMS, 0, 30);
  const meanK = (of.meanC ?? 24.85) + ZERO_C_K;
  const stackM3S = STACK * area * Math.sqrt((GRAVITY_MS2 * height * dT) / meanK);
  const windM3S = WIND * area * wind;
  const phaffM3S =
    (area / 2) * Math.sqrt(PHAFF_WIND * wind ** 2 + PHAFF_STACK * height * dT + PHAFF_TURBULENCE);
  const discharge = ASHRAE_DISCHARGE + ASHRAE_DISCHARGE_PERK * dT;
  // Neutral level halfway up; air enters through one half of the opening and leaves through the other.
  const ashraeM3S = discharge * area * Math.sqrt((GRAVITY_MS2 * height * dT) / (meanK + dT / 2));
  const warren = Math.max(stackM3S, windM3S);
  const all = [warren, phaffM3S, ashraeM3S];
  const low = Math.min(...all);
  const high = Math.max(...all);
  const typical = (warren + phaffM3S) / 2;
  return { stackM3S, windM3S, phaffM3S, ashraeM3S, flowM3S: band(low, typical, high) };
}
