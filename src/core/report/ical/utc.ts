import { LATEST_WALL_MS, OutOfRangeError } from '../../units/index.ts';

const MS_PER_DAY = 86_400_000;
const MS_PER_SECOND = 1000;
/** A four-digit year is all the format has: from 0000-01-01T00:00:00Z, ms. */
const EARLIEST_MS = -62_167_219_200_000;

/** Days of a 400-year cycle of the Gregorian calendar, of a century in it, and of four years. */
const DAYS_400_YEARS = 146_097;
const DAYS_100_YEARS = 36_524;
const DAYS_4_YEARS = 1_461;
/** Days from 1 March of the year 0 to 1 January 1970. */
const DAYS_TO_EPOCH = 719_468;
/** Five months beginning with March or August hold 153 days. */
const DAYS_5_MONTHS = 153;

/**
 * Gregorian date of a day counted from 1970-01-01. Years begin in March in
 * here, so that the leap day is the last of its year.
 * Source: the definition of the Gregorian calendar (ISO 8601, proleptic); the
 * arithmetic is that of Howard Hinnant, "chrono-Compatible Low-Level Date
 * Algorithms", from memory.
 */
function dateOfDay(day: number): {
  readonly year: number;
  readonly month: number;
  readonly day: number;
} {
  const shifted = day + DAYS_TO_EPOCH;
  const cycle = Math.floor(shifted / DAYS_400_YEARS);
  const dayOfCycle = shifted - cycle * DAYS_400_YEARS;
  const yearOfCycle = Math.floor(
    (dayOfCycle -
      Math.floor(dayOfCycle / (DAYS_4_YEARS - 1)) +
      Math.floor(dayOfCycle / DAYS_100_YEARS) -
      Math.floor(dayOfCycle / (DAYS_400_YEARS - 1))) /
      365,
  );
  const dayOfYear =
    dayOfCycle - (365 * yearOfCycle + Math.floor(yearOfCycle / 4) - Math.floor(yearOfCycle / 100));
  const fromMarch = Math.floor((5 * dayOfYear + 2) / DAYS_5_MONTHS);
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  return {
    year: yearOfCycle + cycle * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((DAYS_5_MONTHS * fromMarch + 2) / 5) + 1,
  };
}

function digits(value: number, length: number): string {
  return String(value).padStart(length, '0');
}

/**
 * A moment in the UTC form of RFC 5545, 3.3.5: `20261125T131217Z`. Parts of a
 * second are cut.
 * @param field name for the error
 * @throws OutOfRangeError outside the years 0000 to 9999
 */
export function utcText(field: string, wallMs: number): string {
  if (!(wallMs >= EARLIEST_MS && wallMs <= LATEST_WALL_MS))
    throw new OutOfRangeError(
      field,
      wallMs,
      `${EARLIEST_MS} to ${LATEST_WALL_MS} ms (years 0000 to 9999)`,
      'Check the clock of the device.',
    );
  // Whole first: a hair before midnight must not become hour 24.
  const wholeMs = Math.floor(wallMs);
  const dayNumber = Math.floor(wholeMs / MS_PER_DAY);
  const secondOfDay = Math.floor((wholeMs - dayNumber * MS_PER_DAY) / MS_PER_SECOND);
  const { year, month, day } = dateOfDay(dayNumber);
  const h = Math.floor(secondOfDay / 3600);
  const min = Math.floor((secondOfDay % 3600) / 60);
  return `${digits(year, 4)}${digits(month, 2)}${digits(day, 2)}T${digits(h, 2)}${digits(min, 2)}${digits(secondOfDay % 60, 2)}Z`;
}
