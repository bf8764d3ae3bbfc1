import { MM_PER_M, inRange } from '../../units/index.ts';
import { material } from '../tables/materials.ts';
import { water } from '../water/water.ts';

export type Sheet = {
  readonly sheetMm: number;
  readonly waterDepthMm: number;
  readonly waterC: number;
  readonly sheetC: number;
  /** Default: stainless steel. */
  readonly material?: string;
};

/**
 * Temperature at which a thin sheet and the hot water standing on it meet, °C,
 * with nothing lost below or above.
 * @param sheetMm 0.1 to 20 mm
 * @param waterDepthMm 0.05 to 100 mm
 * @throws OutOfRangeError
 * Source: energy balance; water at its own temperature by IAPWS SR6-08(2011).
 */
export function sheetEquilibrium(of: Sheet): { readonly tempC: number } {
  const sheetM = inRange('sheetMm', of.sheetMm, 0.1, 20) / MM_PER_M;
  const depthM = inRange('waterDepthMm', of.waterDepthMm, 0.05, 100) / MM_PER_M;
  inRange('sheetC', of.sheetC, -20, 300);
  const { densityKgM3, heatCapacityJKgK } = water({ tempC: of.waterC });
  const sheet = material(of.material ?? 'stainless-steel');
  const waterJM2K = depthM * densityKgM3 * heatCapacityJKgK;
  const sheetJM2K = sheetM * sheet.densityKgM3 * sheet.heatCapacityJKgK;
  return {
    tempC: (waterJM2K * of.waterC + sheetJM2K * of.sheetC) / (waterJM2K + sheetJM2K),
  };
}

/**
 * How many puddles, each left to meet the sheet and wiped away by the next,
 * bring the sheet to `reachC`.
 * @param reachC below the temperature of the water
 * @throws OutOfRangeError
 */
export function puddlesToReach(of: Sheet & { readonly reachC: number }): {
  readonly puddles: number;
  readonly tempC: number;
} {
  inRange('reachC', of.reachC, of.sheetC, of.waterC - 0.5);
  let tempC = of.sheetC;
  let puddles = 0;
  while (tempC < of.reachC) {
    tempC = sheetEquilibrium({ ...of, sheetC: tempC }).tempC;
    puddles += 1;
  }
  return { puddles, tempC };
}
