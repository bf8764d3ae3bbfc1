/* oxlint-disable no-restricted-globals -- the sun library takes and gives Date objects; here they
   are made from a number and turned back into one, and no clock is read. */
import { getPosition, getTimes } from 'suncalc';

/**
 * What the library adds to a true altitude below the horizon, degrees: the refraction of
 * J. Meeus, Astronomical Algorithms (1998), formula 16.4, at the horizon. Taken off again, so that
 * an angle below the horizon is the geometric one, as custom counts it.
 */
const HORIZON_REFRACTION_DEG = ((0.0002967 / Math.tan(0.00312536 / 0.08901179)) * 180) / Math.PI;

/** When the sun stands highest, nearest to a moment; ms since 1970-01-01 UTC. */
export function transitMs(nearMs: number, latDeg: number, lonDeg: number): number {
  return getTimes(new Date(nearMs), latDeg, lonDeg).solarNoon.getTime();
}

/** Geometric altitude of the sun's centre, degrees; right at and below the horizon only. */
export function lowAltitudeDeg(atMs: number, latDeg: number, lonDeg: number): number {
  return getPosition(new Date(atMs), latDeg, lonDeg).altitude - HORIZON_REFRACTION_DEG;
}
