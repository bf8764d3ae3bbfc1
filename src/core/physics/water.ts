import { inRange } from '../quantity/index.ts';

/**
 * Properties of liquid water at 0.1 MPa.
 *
 * Density, heat capacity, viscosity, conductivity: IAPWS SR6-08(2011), closed
 * forms for 253.15 to 383.15 K. Surface tension: IAPWS R1-76(2014).
 */
export type Water = {
  readonly densityKgM3: number;
  readonly heatCapacityJKgK: number;
  readonly viscosityPaS: number;
  readonly conductivityWMK: number;
  readonly surfaceTensionNM: number;
};

/** kJ/(kg K), SR6-08. */
const GAS_CONSTANT = 0.46151805;
const REFERENCE_K = 10;
const PRESSURE_MPA = 0.1;
/** c3 of SR6-08. */
const C3 = -8.983025854;
/** Rows of SR6-08, Table 1: exponents n and coefficients a. */
const A: readonly (readonly [n: number, a: number])[] = [
  [4, -1.661470539e5],
  [5, 2.70878164e6],
  [7, -1.557191544e8],
];
const A_VOLUME: readonly (readonly [n: number, a: number])[] = [
  [4, 6.74458446e3],
  [5, -2.22521604e5],
  [7, 1.00231247e8],
  [8, -1.63552118e9],
  [9, 8.32299658e9],
];
const A5 = 1.93763157e-2;
/** Exponents m and coefficients b. */
const B: readonly (readonly [m: number, b: number])[] = [
  [2, -8.237426256e-1],
  [3, 1.908956353],
  [4, -2.017597384],
  [5, 8.546361348e-1],
];
const B_VOLUME: readonly (readonly [m: number, b: number])[] = [
  [1, 5.78545292e-3],
  [2, -1.53195665e-2],
  [3, 3.11337859e-2],
  [4, -4.23546241e-2],
  [5, 3.38713507e-2],
  [6, -1.19946761e-2],
];
const CRITICAL_K = 647.096;

function sum(rows: readonly (readonly [number, number])[], base: number): number {
  return rows.reduce((total, [power, factor]) => total + factor * base ** power, 0);
}

function curvature(rows: readonly (readonly [number, number])[], base: number): number {
  return rows.reduce((total, [p, factor]) => total + p * (p + 1) * factor * base ** (p + 2), 0);
}

/**
 * @param input.tempC −13 to 110 °C (supercooled water is in the release, ice is not)
 * @throws OutOfRangeError
 */
export function water({ tempC }: { readonly tempC: number }): Water {
  const kelvin = inRange('tempC', tempC, -13.15, 110) + 273.15;
  const alpha = REFERENCE_K / (593 - kelvin);
  const beta = REFERENCE_K / (kelvin - 232);
  const tau = kelvin / REFERENCE_K;
  const volume = A5 + sum(A_VOLUME, alpha) + sum(B_VOLUME, beta);
  const heat = C3 + tau * (curvature(A, alpha) + curvature(B, beta));
  const t = kelvin / 300;
  const below = 1 - kelvin / CRITICAL_K;
  return {
    densityKgM3: (1000 * PRESSURE_MPA) / (GAS_CONSTANT * REFERENCE_K * volume),
    heatCapacityJKgK: -1000 * GAS_CONSTANT * heat,
    viscosityPaS:
      (280.68 * t ** -1.9 + 511.45 * t ** -7.7 + 61.131 * t ** -19.6 + 0.45903 * t ** -40) * 1e-6,
    conductivityWMK:
      1.663 * t ** -1.15 - 1.7781 * t ** -3.4 + 1.1567 * t ** -6 - 0.432115 * t ** -7.6,
    surfaceTensionNM: 0.2358 * below ** 1.256 * (1 - 0.625 * below),
  };
}
