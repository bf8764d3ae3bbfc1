import { MM_PER_M, inRange } from '../../units/index.ts';
import { GRAVITY_MS2 } from '../common/constants.ts';
import { water } from '../water/water.ts';

const RAD_DEG = Math.PI / 180;

/** Coefficients of the force criterion: 15^(3/5)/3 = 1.6925 and 15^(1/5) = 1.7188. */
const RATE = 15 ** (3 / 5) / 3;
const THICKNESS = 15 ** (1 / 5);

/**
 * Least flow for each metre of width that keeps an upright wall wet, kg/(m s),
 * and the thickness of that film, mm.
 * @param contactDeg 1 to 180°: advancing for a dry wall, receding for a wet one
 * @throws OutOfRangeError
 * Source: Hartley & Murgatroyd, Int. J. Heat Mass Transfer 7 (1964), force criterion.
 */
export function wettingRate(of: { readonly tempC: number; readonly contactDeg: number }): {
  readonly rateKgMS: number;
  readonly thicknessMm: number;
} {
  inRange('contactDeg', of.contactDeg, 1, 180);
  const { surfaceTensionNM, densityKgM3, viscosityPaS } = water({ tempC: of.tempC });
  const pull = surfaceTensionNM * (1 - Math.cos(of.contactDeg * RAD_DEG));
  const rate = RATE * ((viscosityPaS * densityKgM3) / GRAVITY_MS2) ** (1 / 5) * pull ** (3 / 5);
  const thicknessM =
    THICKNESS *
    (pull / densityKgM3) ** (1 / 5) *
    (viscosityPaS / (densityKgM3 * GRAVITY_MS2)) ** (2 / 5);
  return { rateKgMS: rate, thicknessMm: thicknessM * MM_PER_M };
}

/**
 * Thickness of a laminar falling film, mm: (3µΓ/(ρ²g))^(1/3).
 * @param rateKgMS flow for each metre of width, kg/(m s)
 * @throws OutOfRangeError
 * Source: Nusselt (1916), laminar film; good to a Reynolds number of about 1600.
 */
export function fallingFilm(of: { readonly tempC: number; readonly rateKgMS: number }): {
  readonly thicknessMm: number;
  readonly reynolds: number;
} {
  inRange('rateKgMS', of.rateKgMS, 1e-4, 5);
  const { densityKgM3, viscosityPaS } = water({ tempC: of.tempC });
  const thicknessM =
    ((3 * viscosityPaS * of.rateKgMS) / (densityKgM3 ** 2 * GRAVITY_MS2)) ** (1 / 3);
  return { thicknessMm: thicknessM * MM_PER_M, reynolds: (4 * of.rateKgMS) / viscosityPaS };
}
