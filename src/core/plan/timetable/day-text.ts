import { civilDate, dayNumber, wallTime, weekday } from '../../calendar/index.ts';

const WEEKDAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];
const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** "Sunday 29 March" on the wall of a zone. */
export function dayText(atWallMs: number, zone: string): string {
  const number = dayNumber(wallTime(atWallMs, zone));
  const { month, day } = civilDate(number);
  return `${WEEKDAYS[weekday(number)] ?? ''} ${day} ${MONTHS[month - 1] ?? ''}`;
}

/** "18:05" on the wall of a zone; seconds are left away. */
export function clockText(atWallMs: number, zone: string): string {
  const { hour, minute } = wallTime(atWallMs, zone);
  return `${String(hour).padStart(2, '0')}:${String(minute).padStart(2, '0')}`;
}

/** "Sunday 29 March 18:05". */
export function momentInZone(atWallMs: number, zone: string): string {
  return `${dayText(atWallMs, zone)} ${clockText(atWallMs, zone)}`;
}
