export { calendarFile } from './calendar-file.ts';
export { calendarOf, type CalendarEvent } from './calendar-of.ts';
export { projectedTimes, type TimeRange } from './projection.ts';
export { restEvents } from './rest-events.ts';
