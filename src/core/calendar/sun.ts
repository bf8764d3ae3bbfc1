import { inRange, MS_PER_DAY } from '../units/index.ts';
import type { CivilDate } from './civil.ts';
import { lowAltitudeDeg, transitMs } from './sun-library.ts';
import { noonOf } from './zone.ts';

/** Where, in which zone. */
export type Spot = {
  /** North positive, −90 to 90. */
  readonly latDeg: number;
  /** East positive, −180 to 180. */
  readonly lonDeg: number;
  /** IANA time-zone name */
  readonly zone: string;
};

export type SunTimes = {
  /** ms since 1970-01-01 UTC; null: the sun does not rise on that day. */
  readonly sunriseAtMs: number | null;
  readonly sunsetAtMs: number | null;
  /** null: the night never gets that dark, or the sun never that high. */
  readonly nightfallAtMs: number | null;
  readonly solarNoonAtMs: number;
};

/**
 * Depression at which night has fallen, degrees: three small stars are seen (common practice;
 * 8.5° is the usual reckoning).
 */
export const NIGHTFALL_DEG = 8.5;
/** The upper limb at a sea horizon: 34′ of refraction and 16′ of half the sun's width. */
const HORIZON_DEG = -0.833;
/** Halvings of half a day until less than a millisecond is left. */
const HALVINGS = 27;

/** When the altitude passes `altitudeDeg` between two moments; null: it does not. */
function crossing(spot: Spot, altitudeDeg: number, fromMs: number, toMs: number): number | null {
  const above = (atMs: number): boolean =>
    lowAltitudeDeg(atMs, spot.latDeg, spot.lonDeg) > altitudeDeg;
  const atStart = above(fromMs);
  if (above(toMs) === atStart) return null;
  let low = fromMs;
  let high = toMs;
  for (let round = 0; round < HALVINGS; round++) {
    const middle = (low + high) / 2;
    if (above(middle) === atStart) low = middle;
    else high = middle;
  }
  return Math.round(high);
}

/** @throws OutOfRangeError naming latDeg, lonDeg or nightfallDeg */
export function checkSpot({ latDeg, lonDeg }: Spot, nightfallDeg: number): void {
  inRange('latDeg', latDeg, -90, 90);
  inRange('lonDeg', lonDeg, -180, 180);
  inRange('nightfallDeg', nightfallDeg, 1, 20);
}

/**
 * Sunrise, sunset and nightfall of a civil day: of the solar day whose noon is nearest to the
 * local noon, at a sea horizon, standard refraction. Positions by J. Meeus, Astronomical
 * Algorithms (1998), ch. 25, through the library; the moments are found by halving, which holds
 * also where the sun only grazes the angle.
 * @throws OutOfRangeError
 */
export function sunTimes(
  input: Spot & { readonly date: CivilDate; readonly nightfallDeg?: number },
): SunTimes {
  const { date, nightfallDeg = NIGHTFALL_DEG } = input;
  checkSpot(input, nightfallDeg);
  const noon = transitMs(noonOf(date, input.zone), input.latDeg, input.lonDeg);
  const evening = (deg: number) => crossing(input, deg, noon, noon + MS_PER_DAY / 2);
  return {
    sunriseAtMs: crossing(input, HORIZON_DEG, noon - MS_PER_DAY / 2, noon),
    sunsetAtMs: evening(HORIZON_DEG),
    nightfallAtMs: evening(-nightfallDeg),
    solarNoonAtMs: Math.round(noon),
  };
}
