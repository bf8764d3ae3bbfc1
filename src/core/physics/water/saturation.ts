import { inRange } from '../../units/index.ts';
import { ZERO_C_K } from '../common/constants.ts';

/** IAPWS R7-97(2012), table 34: n1 … n10. */
const N = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5,
  -0.32325550322333e7, 0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6,
  -0.23855557567849, 0.65017534844798e3,
] as const;
const [N1, N2, N3, N4, N5, N6, N7, N8, N9, N10] = N;
const PA_MPA = 1e6;

/** Range of region 4: triple point to critical point. */
const LOWEST_C = 0;
const HIGHEST_C = 373.946;
const LOWEST_PA = 611.213;
const HIGHEST_PA = 22.064e6;

/**
 * Pressure at which water boils at this temperature, Pa.
 * @param tempC 0 to 373.946 °C
 * @throws OutOfRangeError
 * Source: IAPWS-IF97, R7-97(2012), eq. 30.
 */
export function saturationPressure({ tempC }: { readonly tempC: number }): {
  readonly pressurePa: number;
} {
  const kelvin = inRange('tempC', tempC, LOWEST_C, HIGHEST_C) + ZERO_C_K;
  const theta = kelvin + N9 / (kelvin - N10);
  const a = theta ** 2 + N1 * theta + N2;
  const b = N3 * theta ** 2 + N4 * theta + N5;
  const c = N6 * theta ** 2 + N7 * theta + N8;
  return { pressurePa: ((2 * c) / (-b + Math.sqrt(b ** 2 - 4 * a * c))) ** 4 * PA_MPA };
}

/**
 * Temperature at which water boils under this pressure, °C.
 * @param pressurePa 611.213 to 22 064 000 Pa
 * @throws OutOfRangeError
 * Source: IAPWS-IF97, R7-97(2012), eq. 31.
 */
export function saturationTemp({ pressurePa }: { readonly pressurePa: number }): {
  readonly tempC: number;
} {
  const beta = (inRange('pressurePa', pressurePa, LOWEST_PA, HIGHEST_PA) / PA_MPA) ** 0.25;
  const e = beta ** 2 + N3 * beta + N6;
  const f = N1 * beta ** 2 + N4 * beta + N7;
  const g = N2 * beta ** 2 + N5 * beta + N8;
  const d = (2 * g) / (-f - Math.sqrt(f ** 2 - 4 * e * g));
  const kelvin = (N10 + d - Math.sqrt((N10 + d) ** 2 - 4 * (N9 + N10 * d))) / 2;
  return { tempC: kelvin - ZERO_C_K };
}
