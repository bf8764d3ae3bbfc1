import { inRange, type Band } from '../../quantity/index.ts';
import { material } from '../tables/materials.ts';

/**
 * Sudden difference of temperature at which a brittle body cracks, K: σ/(Eα)
 * for one way of restraint, times (1−ν) for two.
 * @param strengthMPa 1 to 2000
 * @param modulusGPa 1 to 1000
 * @param expansionPerK 1e-8 to 1e-4 1/K
 * @param poisson given: two-way restraint; 0 to 0.49
 * @throws OutOfRangeError
 * Source: Callister, Materials Science and Engineering, ch. 17.
 */
export function shockLimit(of: {
  readonly strengthMPa: number;
  readonly modulusGPa: number;
  readonly expansionPerK: number;
  readonly poisson?: number;
}): { readonly limitK: number } {
  const strengthPa = inRange('strengthMPa', of.strengthMPa, 1, 2000) * 1e6;
  const modulusPa = inRange('modulusGPa', of.modulusGPa, 1, 1000) * 1e9;
  const alpha = inRange('expansionPerK', of.expansionPerK, 1e-8, 1e-4);
  const poisson = inRange('poisson', of.poisson ?? 0, 0, 0.49);
  return { limitK: (strengthPa * (1 - poisson)) / (modulusPa * alpha) };
}

/** safe: below the low end; risky: within the band; cracks: above its typical value, or cold on hot within it. */
export type ShockVerdict = 'safe' | 'risky' | 'cracks';

/**
 * Whether water of one temperature on a surface of another may crack it.
 * Cold water on a hot surface is worse: it puts the surface in tension, hot
 * water on a cold one in compression, so cooling is judged on the low end.
 * @throws OutOfRangeError
 * Source: shared/materials.json, shockK; whole difference taken as the worst case.
 */
export function thermalShock(of: {
  readonly material: string;
  readonly surfaceC: number;
  readonly waterC: number;
}): { readonly differenceK: number; readonly limitK: Band | null; readonly verdict: ShockVerdict } {
  inRange('surfaceC', of.surfaceC, -30, 900);
  inRange('waterC', of.waterC, 0, 110);
  const { shockK } = material(of.material);
  const differenceK = Math.abs(of.waterC - of.surfaceC);
  if (shockK === null) return { differenceK, limitK: null, verdict: 'safe' };
  const cooling = of.waterC < of.surfaceC;
  const cracksAboveK = cooling ? shockK.typical : shockK.high;
  const safeToK = cooling ? shockK.low : shockK.typical;
  const verdict = differenceK > cracksAboveK ? 'cracks' : differenceK > safeToK ? 'risky' : 'safe';
  return { differenceK, limitK: shockK, verdict };
}
