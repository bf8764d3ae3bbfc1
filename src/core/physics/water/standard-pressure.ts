import { inRange } from '../../units/index.ts';
import { AIR_GAS_JKGK, GRAVITY_MS2 } from '../common/constants.ts';

/** ISO 2533 sea-level pressure (Pa), temperature (K) and gradient (K/m) of the troposphere. */
const SEA_PA = 101_325;
const SEA_K = 288.15;
const GRADIENT_KM = 0.0065;
const EXPONENT = GRAVITY_MS2 / (AIR_GAS_JKGK * GRADIENT_KM);

/** Lowest and highest altitude of the formula used here, m. */
const LOWEST_ALTITUDE_M = -500;
const HIGHEST_ALTITUDE_M = 11_000;

/**
 * Pressure of the standard atmosphere, Pa. Weather moves it by about ±3 kPa.
 * @param altitudeM geopotential height, −500 to 11 000 m (a map height differs
 * from it by less than 0.1 % below 5 km)
 * @throws OutOfRangeError
 * Source: ISO 2533:1975, troposphere.
 */
export function standardPressure({ altitudeM }: { readonly altitudeM: number }): {
  readonly pressurePa: number;
} {
  inRange('altitudeM', altitudeM, LOWEST_ALTITUDE_M, HIGHEST_ALTITUDE_M);
  return { pressurePa: SEA_PA * (1 - (GRADIENT_KM * altitudeM) / SEA_K) ** EXPONENT };
}
