import { inRange } from '../../units/index.ts';

/** W for each Btu/h: the International Table Btu is 1055.05585262 J. */
const W_BTUH = 1055.05585262 / 3600;

/**
 * Power of a gas burner from its plate in Btu/h, W.
 * @param btuH 400 to 200 000 Btu/h
 * @throws OutOfRangeError
 * Source: ISO 80000-5, International Table Btu.
 */
export function gasPowerW({ btuH }: { readonly btuH: number }): { readonly powerW: number } {
  return { powerW: inRange('btuH', btuH, 400, 200_000) * W_BTUH };
}
