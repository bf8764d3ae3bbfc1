export { reportOf } from './build/report-of.ts';
export { STANDING_LINES } from './build/standing-lines.ts';
export { calendarFile, calendarOf, restEvents, type CalendarEvent } from './ical/index.ts';
export { reportSections } from './lines/report-sections.ts';
export { reportText } from './lines/report-text.ts';
export type * from './model/report.ts';
