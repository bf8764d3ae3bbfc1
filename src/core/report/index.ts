export { reportOf } from './build/report-of.ts';
export { STANDING_LINES } from './build/standing-lines.ts';
export { historyOf, placesInRuns, type PlaceInRun } from './history/index.ts';
export { calendarFile, calendarOf, restEvents, type CalendarEvent } from './ical/index.ts';
export { reportSections } from './lines/report-sections.ts';
export {
  answersOf,
  headOf,
  lacksOf,
  placesOf,
  reportText,
  rowsOf,
  utensilsOf,
  verdictOf,
  vesselsOf,
} from './summary/index.ts';
export type * from './model/report.ts';
export type * from './model/summary.ts';
