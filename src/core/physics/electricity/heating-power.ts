import { inRange } from '../../units/index.ts';

/**
 * Power of a heating element on another voltage than its plate's, W: a
 * resistance, so with the square.
 * @throws OutOfRangeError
 * Source: Ohm's law.
 */
export function heatingPowerW(of: {
  readonly ratedW: number;
  readonly ratedV: number;
  readonly supplyV: number;
}): { readonly powerW: number } {
  inRange('ratedW', of.ratedW, 1, 40_000);
  inRange('ratedV', of.ratedV, 90, 440);
  inRange('supplyV', of.supplyV, 90, 440);
  return { powerW: of.ratedW * (of.supplyV / of.ratedV) ** 2 };
}
