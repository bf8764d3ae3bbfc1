import { OutOfRangeError } from '../units/index.ts';

/** A day of the civil (Gregorian) calendar. */
export type CivilDate = { readonly year: number; readonly month: number; readonly day: number };

/** Days since 1970-01-01, which is 0. The plainest name of a civil day. */
export type DayNumber = number;

/** Days of the 400-year cycle of leap years. */
const CYCLE_DAYS = 146_097;
/** Days from 1 March of year 0 to 1970-01-01. */
const EPOCH_DAYS = 719_468;

/**
 * Number of a civil day. Counted in years that begin on 1 March, so that the leap day comes last
 * (E. G. Richards, Mapping Time, 1998).
 */
export function dayNumber({ year, month, day }: CivilDate): DayNumber {
  const y = month <= 2 ? year - 1 : year;
  const cycle = Math.floor(y / 400);
  const ofCycle = y - cycle * 400;
  const ofYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const days = ofCycle * 365 + Math.floor(ofCycle / 4) - Math.floor(ofCycle / 100) + ofYear;
  return cycle * CYCLE_DAYS + days - EPOCH_DAYS;
}

/** The civil day of a number; the other way of `dayNumber`. */
export function civilDate(number: DayNumber): CivilDate {
  const z = number + EPOCH_DAYS;
  const cycle = Math.floor(z / CYCLE_DAYS);
  const d = z - cycle * CYCLE_DAYS;
  const y = Math.floor(
    (d - Math.floor(d / 1460) + Math.floor(d / 36_524) - Math.floor(d / 146_096)) / 365,
  );
  const ofYear = d - (365 * y + Math.floor(y / 4) - Math.floor(y / 100));
  const m = Math.floor((5 * ofYear + 2) / 153);
  const day = ofYear - Math.floor((153 * m + 2) / 5) + 1;
  const month = m < 10 ? m + 3 : m - 9;
  return { year: y + cycle * 400 + (month <= 2 ? 1 : 0), month, day };
}

/** Day of the week: 0 Sunday to 6 Saturday. 1970-01-01 was a Thursday. */
export function weekday(number: DayNumber): number {
  return (((number + 4) % 7) + 7) % 7;
}

/** "2026-03-29". */
export function dateText({ year, month, day }: CivilDate): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${String(year).padStart(4, '0')}-${two(month)}-${two(day)}`;
}

/** Years for which sun and calendar are answered: the sun's series and zone rules hold in them. */
export const YEARS: readonly [min: number, max: number] = [1950, 2100];

/**
 * The day of "2026-03-29".
 * @param input name of the field, for the refusal
 * @throws OutOfRangeError when it is no such day, or its year is outside 1950 to 2100
 */
export function parseDate(input: string, text: string): CivilDate {
  const allowed = `a date yyyy-mm-dd that exists, ${YEARS[0]} to ${YEARS[1]}`;
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  const date = { year: Number(parts?.[1]), month: Number(parts?.[2]), day: Number(parts?.[3]) };
  const known = parts && date.year >= YEARS[0] && date.year <= YEARS[1];
  if (!known || dateText(civilDate(dayNumber(date))) !== text)
    throw new OutOfRangeError(input, text, allowed, 'Write it like 2026-03-29.');
  return date;
}
