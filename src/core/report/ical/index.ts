export { calendarFile } from './calendar-file.ts';
export { calendarOf, type CalendarEvent } from './calendar-of.ts';
export { restEvents } from './rest-events.ts';
