import { inRange, type Band } from '../../units/index.ts';
import { effusivity, material } from '../tables/materials.ts';
import { water } from '../water/water.ts';
import { contactTemp } from './contact-temp.ts';

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

/** Heated: safe to the typical limit, cracks above the high one. Cooled: safe to the low, cracks above the typical. */
export type ShockVerdict = 'safe' | 'risky' | 'cracks';

/**
 * Whether water of one temperature on a surface of another may crack it. Hot
 * water on a cold surface puts it in compression and cannot move it further
 * than the contact temperature at once. Cold water on a hot surface puts it in
 * tension: the whole difference is taken, and the low end of the limit.
 * @throws OutOfRangeError
 * Source: shared/materials.json, shockK; contact temperature of two thick bodies.
 */
export function thermalShock(of: {
  readonly material: string;
  readonly surfaceC: number;
  readonly waterC: number;
}): { readonly differenceK: number; readonly limitK: Band | null; readonly verdict: ShockVerdict } {
  inRange('surfaceC', of.surfaceC, -30, 900);
  const cooling = of.waterC < of.surfaceC;
  const { densityKgM3, heatCapacityJKgK, conductivityWMK } = water({ tempC: of.waterC });
  const touchC = contactTemp({
    hotTempC: of.waterC,
    hotEffusivity: Math.sqrt(conductivityWMK * densityKgM3 * heatCapacityJKgK),
    bodyTempC: of.surfaceC,
    bodyEffusivity: effusivity(of.material),
  }).tempC;
  const differenceK = cooling ? of.surfaceC - of.waterC : touchC - of.surfaceC;
  const { shockK } = material(of.material);
  if (shockK === null) return { differenceK, limitK: null, verdict: 'safe' };
  const cracksAboveK = cooling ? shockK.typical : shockK.high;
  const safeToK = cooling ? shockK.low : shockK.typical;
  const verdict = differenceK > cracksAboveK ? 'cracks' : differenceK > safeToK ? 'risky' : 'safe';
  return { differenceK, limitK: shockK, verdict };
}
