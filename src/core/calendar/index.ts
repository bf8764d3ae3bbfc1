export {
  civilDate,
  dateText,
  dayNumber,
  parseDate,
  weekday,
  YEARS,
  type CivilDate,
} from './civil.ts';
export { nextHebrew } from './hebrew.ts';
export { leavenHours } from './leaven-hours.ts';
export { isPassover } from './passover.ts';
export { LIGHTING_MIN, restDays, restDayIds, type Land, type RestSpan } from './rest-days.ts';
export { parseMoment } from './start-time.ts';
export { NIGHTFALL_DEG, sunTimes, type Spot } from './sun.ts';
export { momentOf, noonOf, wallTime } from './zone.ts';
