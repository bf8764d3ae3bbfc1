import { inRange } from '../quantity/index.ts';

/** ISO 2533 standard atmosphere, troposphere; geopotential from geometric height. */
const SEA_LEVEL_PA = 101_325;
const SEA_LEVEL_K = 288.15;
const LAPSE_K_M = 0.0065;
/** g0 / (R × lapse rate) with g0 = 9.80665 m/s², R = 287.05287 J/(kg K). */
const EXPONENT = 5.25588;
const EARTH_RADIUS_M = 6_356_766;

/** IAPWS R7-97(2012), region 4, Table 34. */
const N1 = 0.11670521452767e4;
const N2 = -0.72421316703206e6;
const N3 = -0.17073846940092e2;
const N4 = 0.1202082470247e5;
const N5 = -0.32325550322333e7;
const N6 = 0.1491510861353e2;
const N7 = -0.48232657361591e4;
const N8 = 0.40511340542057e6;
const N9 = -0.23855557567849;
const N10 = 0.65017534844798e3;

/**
 * Pressure of the standard atmosphere at a geometric altitude.
 * @param input.altitudeM −500 to 9000 m
 * @throws OutOfRangeError
 */
export function standardPressure({ altitudeM }: { readonly altitudeM: number }): {
  readonly pressurePa: number;
} {
  inRange('altitudeM', altitudeM, -500, 9000);
  const height = (EARTH_RADIUS_M * altitudeM) / (EARTH_RADIUS_M + altitudeM);
  return { pressurePa: SEA_LEVEL_PA * (1 - (LAPSE_K_M * height) / SEA_LEVEL_K) ** EXPONENT };
}

/**
 * Saturation pressure of water, IF97 Eq. 30.
 * @param input.tempC 0 to 370 °C
 * @throws OutOfRangeError
 */
export function saturationPressure({ tempC }: { readonly tempC: number }): {
  readonly pressurePa: number;
} {
  const kelvin = inRange('tempC', tempC, 0, 370) + 273.15;
  const theta = kelvin + N9 / (kelvin - N10);
  const a = theta ** 2 + N1 * theta + N2;
  const b = N3 * theta ** 2 + N4 * theta + N5;
  const c = N6 * theta ** 2 + N7 * theta + N8;
  return { pressurePa: 1e6 * ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) ** 4 };
}

/**
 * Boiling temperature at an altitude (standard day) or at a station pressure,
 * IF97 Eq. 31. A day of ±30 hPa moves it by about ±0.8 K.
 * @param input.altitudeM −500 to 9000 m, or
 * @param input.pressurePa 1000 to 200 000 Pa
 * @throws OutOfRangeError
 */
export function boilingTemp(
  input: { readonly altitudeM: number } | { readonly pressurePa: number },
): { readonly tempC: number } {
  const pressurePa = 'pressurePa' in input ? input.pressurePa : standardPressure(input).pressurePa;
  const beta = (inRange('pressurePa', pressurePa, 1000, 200_000) / 1e6) ** 0.25;
  const e = beta ** 2 + N3 * beta + N6;
  const f = N1 * beta ** 2 + N4 * beta + N7;
  const g = N2 * beta ** 2 + N5 * beta + N8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const kelvin = (N10 + d - Math.sqrt((N10 + d) ** 2 - 4 * (N9 + N10 * d))) / 2;
  return { tempC: kelvin - 273.15 };
}
