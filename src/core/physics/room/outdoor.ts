import table from '../../../../shared/air/climate.json';
import { band, inRange, type Band } from '../../units/index.ts';

const DAYS_PER_YEAR = 365.25;
const { fit } = table;
/** Where the place is not told, degrees: careful, with the height of summer. */
export const WITHOUT_PLACE_LAT_DEG = table.withoutPlace.withoutPlaceLatDeg;

/** Deviation of the season, −1 to 1 times what the latitude allows, K. */
function swingK(latDeg: number, dayOfYear: number | undefined): number {
  const north = latDeg >= 0;
  const most =
    (north ? fit.northSeasonK : fit.southSeasonK) * Math.abs(Math.sin((latDeg * Math.PI) / 180));
  if (dayOfYear === undefined) return most;
  const from = dayOfYear - (north ? fit.northWarmestDay : fit.southWarmestDay);
  return most * Math.cos((2 * Math.PI * from) / DAYS_PER_YEAR);
}

/**
 * Air outside on a usual afternoon of that day, °C, and the mean of that day.
 * Nine towns in ten lie within the band, months of winter inland excepted.
 * @param latDeg −90 to 90
 * @param altitudeM −500 to 5000
 * @param dayOfYear 1 to 366; absent: the warmest of the year
 * @throws OutOfRangeError
 * Source: least squares over the monthly highs and lows of 87 towns, see shared/air/climate.json.
 */
export function outdoorTemp(of: {
  readonly latDeg: number;
  readonly altitudeM: number;
  readonly dayOfYear?: number;
}): { readonly afternoonC: Band; readonly meanC: number } {
  const latDeg = inRange('latDeg', of.latDeg, -90, 90);
  const altitudeKm = inRange('altitudeM', of.altitudeM, -500, 5000) / 1000;
  if (of.dayOfYear !== undefined) inRange('dayOfYear', of.dayOfYear, 1, 366);
  const meanC =
    fit.atEquatorC -
    fit.polewardK * Math.sin((latDeg * Math.PI) / 180) ** 2 -
    fit.thinAirKPerKm * altitudeKm +
    swingK(latDeg, of.dayOfYear);
  const typical = meanC + fit.aboveMeanK + fit.aboveMeanKPerKm * altitudeKm;
  return { meanC, afternoonC: band(typical - fit.spreadK, typical, typical + fit.spreadK) };
}
