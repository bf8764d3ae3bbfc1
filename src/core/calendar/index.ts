export {
  civilDate,
  dateText,
  dayNumber,
  parseDate,
  weekday,
  YEARS,
  type CivilDate,
  type DayNumber,
} from './civil.ts';
export { hebrewDate, isMonth, nextHebrew, type HebrewDate } from './hebrew.ts';
export { leavenHours, type LeavenHours, type Reckoning } from './leaven-hours.ts';
export { LIGHTING_MIN, restDays, restDayIds, type Land, type RestSpan } from './rest-days.ts';
export { parseMoment } from './start-time.ts';
export { NIGHTFALL_DEG, sunTimes, type Spot, type SunTimes } from './sun.ts';
export { checkZone, momentOf, noonOf, wallTime, type WallTime } from './zone.ts';
