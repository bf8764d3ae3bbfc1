import { inRange } from '../../units/index.ts';
import { ZERO_C_K } from '../common/constants.ts';

/**
 * IAPWS SR6-08(2011), liquid water at 0.1 MPa. R in kJ/(kg K), p0 in MPa, Tr in K,
 * and the poles of the two series in K.
 */
const R = 0.46151805;
const P0_MPA = 0.1;
const TR_K = 10;
const HOT_POLE_K = 593;
const COLD_POLE_K = 232;
const C3 = -8.983025854;

/** Terms of the heat capacity: [n, a] of the hot series, [m, b] of the cold one. */
const CP_HOT = [
  [4, -1.661470539e5],
  [5, 2.70878164e6],
  [7, -1.557191544e8],
] as const;
const CP_COLD = [
  [2, -8.237426256e-1],
  [3, 1.908956353],
  [4, -2.017597384],
  [5, 8.546361348e-1],
] as const;

/** Terms of the specific volume. */
const V_CONSTANT = 1.93763157e-2;
const V_HOT = [
  [4, 6.74458446e3],
  [5, -2.22521604e5],
  [7, 1.00231247e8],
  [8, -1.63552118e9],
  [9, 8.32299658e9],
] as const;
const V_COLD = [
  [1, 5.78545292e-3],
  [2, -1.53195665e-2],
  [3, 3.11337859e-2],
  [4, -4.23546241e-2],
  [5, 3.38713507e-2],
  [6, -1.19946761e-2],
] as const;

/** Viscosity (µPa s) and conductivity (W/(m K)) as sums of c·(T/300 K)^e. */
const POWER_K = 300;
const VISCOSITY = [
  [280.68, -1.9],
  [511.45, -7.7],
  [61.131, -19.6],
  [0.45903, -40],
] as const;
const CONDUCTIVITY = [
  [1.663, -1.15],
  [-1.7781, -3.4],
  [1.1567, -6],
  [-0.432115, -7.6],
] as const;

/** IAPWS R1-76(2014): critical temperature (K) and coefficients (N/m, –, –). */
const CRITICAL_K = 647.096;
const TENSION_B_NM = 0.2358;
const TENSION_MU = 1.256;
const TENSION_b = -0.625;

type Terms = readonly (readonly [number, number])[];

function series(terms: Terms, x: number, weight: (n: number) => number, shift: number): number {
  return terms.reduce((sum, [n, c]) => sum + weight(n) * c * x ** (n + shift), 0);
}

function densityOf(kelvin: number): number {
  const hot = series(V_HOT, TR_K / (HOT_POLE_K - kelvin), () => 1, 0);
  const cold = series(V_COLD, TR_K / (kelvin - COLD_POLE_K), () => 1, 0);
  return 1 / (((R * TR_K) / (1000 * P0_MPA)) * (V_CONSTANT + hot + cold));
}

function heatCapacityOf(kelvin: number): number {
  const tau = kelvin / TR_K;
  const curvature = (n: number) => n * (n + 1);
  const hot = series(CP_HOT, TR_K / (HOT_POLE_K - kelvin), curvature, 2);
  const cold = series(CP_COLD, TR_K / (kelvin - COLD_POLE_K), curvature, 2);
  return -R * 1000 * (C3 + tau * (hot + cold));
}

function powers(terms: Terms, kelvin: number): number {
  return terms.reduce((sum, [c, e]) => sum + c * (kelvin / POWER_K) ** e, 0);
}

const LEAST_C = -20;
const MOST_C = 110;

/**
 * Heat capacity of liquid water alone, J/(kg K), as in `water`: what is
 * integrated over temperature asks for nothing else.
 * @throws OutOfRangeError
 */
export function waterHeatCapacity(tempC: number): number {
  return heatCapacityOf(inRange('tempC', tempC, LEAST_C, MOST_C) + ZERO_C_K);
}

export type Water = {
  readonly densityKgM3: number;
  readonly heatCapacityJKgK: number;
  readonly viscosityPaS: number;
  readonly conductivityWMK: number;
  readonly surfaceTensionNM: number;
};

/**
 * Properties of liquid water at 0.1 MPa.
 * @param tempC −20 to 110 °C (below 0 and above 99.6 °C for a liquid that
 * has not yet frozen or boiled)
 * @throws OutOfRangeError
 * Source: IAPWS SR6-08(2011); surface tension IAPWS R1-76(2014).
 */
export function water({ tempC }: { readonly tempC: number }): Water {
  const kelvin = inRange('tempC', tempC, LEAST_C, MOST_C) + ZERO_C_K;
  const tau = 1 - kelvin / CRITICAL_K;
  return {
    densityKgM3: densityOf(kelvin),
    heatCapacityJKgK: heatCapacityOf(kelvin),
    viscosityPaS: powers(VISCOSITY, kelvin) * 1e-6,
    conductivityWMK: powers(CONDUCTIVITY, kelvin),
    surfaceTensionNM: TENSION_B_NM * tau ** TENSION_MU * (1 + TENSION_b * tau),
  };
}
