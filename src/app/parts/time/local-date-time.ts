import { parseMoment, wallTime } from '../../../core/calendar/index.ts';

/** What the picker of date and time shows: the wall clock of a zone, "2027-03-01T21:40". */
export function localDateTime(atMs: number, zone: string): string {
  const { year, month, day, hour, minute } = wallTime(atMs, zone);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${year}-${two(month)}-${two(day)}T${two(hour)}:${two(minute)}`;
}

/** The moment that a picker of date and time means, ms; undefined: half a date. */
export function momentIn(text: string, zone: string): number | undefined {
  try {
    return parseMoment('at', text, zone);
  } catch {
    // The control itself shows what is missing.
    return undefined;
  }
}
