import { MS_PER_MINUTE } from '../units/index.ts';
import { civilDate, dayNumber } from './civil.ts';
import { hebrewDate, isMonth } from './hebrew.ts';
import { LIGHTING_MIN, type Land } from './rest-days.ts';
import { sunTimes, type Spot } from './sun.ts';
import { wallTime } from './zone.ts';

// not shown: a month's key in the calendar.
const MONTH = 'Nisan';
const EVE = 14;
/** By day the festival lasts to the 21st of Nisan, outside the land to the 22nd (Orach Chaim 496). */
const LAST = { israel: 21, diaspora: 22 } as const;

/**
 * Is it Passover at a moment: from candle lighting on its eve to nightfall on its last day? Where
 * the sun does not tell, the whole of such a day counts.
 * @param place `lightingMin` minutes from lighting to sunset
 * @param atMs ms since 1970-01-01 UTC, in the years 1950 to 2100
 * @throws OutOfRangeError
 */
export function isPassover(
  place: Spot & { readonly land: Land; readonly lightingMin?: number | undefined },
  atMs: number,
): boolean {
  const date = wallTime(atMs, place.zone);
  const hebrew = hebrewDate(dayNumber(date));
  const { lightingMin = LIGHTING_MIN } = place;
  const last = LAST[place.land];
  const { day } = hebrew;
  if (!isMonth(hebrew, MONTH) || day < EVE || day > last) return false;
  const { sunsetAtMs, nightfallAtMs } = sunTimes({ ...place, date: civilDate(dayNumber(date)) });
  if (day === EVE) return sunsetAtMs === null || atMs >= sunsetAtMs - lightingMin * MS_PER_MINUTE;
  return day < last || nightfallAtMs === null || atMs < nightfallAtMs;
}
