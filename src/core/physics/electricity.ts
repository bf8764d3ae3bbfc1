import { inRange } from '../quantity/index.ts';

/**
 * Sum of loads on one circuit against its rating. The 80 % rule for continuous
 * loads (3 h and more) does not bind kettles; a self-clean cycle it does.
 * @param input.loadsW each 0 to 30 000 W
 * @throws OutOfRangeError
 */
export function circuitLoad(input: {
  readonly supplyV: number;
  readonly ratingA: number;
  readonly loadsW: readonly number[];
}): { readonly loadA: number; readonly spareA: number; readonly allowed: boolean } {
  inRange('supplyV', input.supplyV, 50, 500);
  inRange('ratingA', input.ratingA, 1, 200);
  const totalW = input.loadsW.reduce((sum, w) => sum + inRange('loadsW', w, 0, 30_000), 0);
  const loadA = totalW / input.supplyV;
  return { loadA, spareA: input.ratingA - loadA, allowed: loadA <= input.ratingA };
}
