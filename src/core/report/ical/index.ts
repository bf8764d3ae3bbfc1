export { calendarOf, type CalendarEvent } from './calendar-of.ts';
