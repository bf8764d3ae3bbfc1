import { civilDate, dateText, weekday, type DayNumber } from './civil.ts';
import { MS_PER_DAY } from '../units/index.ts';

/** A day of the Hebrew calendar, by its daytime: it began at nightfall before. */
export type HebrewDate = {
  readonly year: number;
  /** As the engine writes it in English: "Tishri", "Nisan", "Sivan", "Adar I". */
  readonly month: string;
  readonly day: number;
};

// A civil day is asked about at its noon in UTC, so that no zone of the device shifts it.
const FORMAT = new Intl.DateTimeFormat('en-u-ca-hebrew-nu-latn', {
  timeZone: 'UTC',
  year: 'numeric',
  month: 'long',
  day: 'numeric',
});

/**
 * The Hebrew date of a civil day, by the calendar the engine carries.
 * @throws RangeError when the engine has no Hebrew calendar
 */
export function hebrewDate(number: DayNumber): HebrewDate {
  const parts = new Map(
    FORMAT.formatToParts((number + 0.5) * MS_PER_DAY).map(({ type, value }) => [type, value]),
  );
  const year = Number(parts.get('year'));
  const day = Number(parts.get('day'));
  const month = parts.get('month') ?? '';
  if (FORMAT.resolvedOptions().calendar !== 'hebrew' || !(year > 0) || !(day > 0))
    throw new RangeError(
      `calendar is "${FORMAT.resolvedOptions().calendar}"; allowed: one that knows Hebrew dates. Use a browser that has them.`,
    );
  return { year, month, day };
}

/** Engines spell Hebrew months a little differently ("Tishri", "Tishrei"): the first three letters tell. */
export function isMonth({ month }: HebrewDate, name: string): boolean {
  return month.slice(0, 3).toLowerCase() === name.slice(0, 3).toLowerCase();
}

/** Whether a civil day is a Sabbath by day. */
export function isSabbath(number: DayNumber): boolean {
  return weekday(number) === 6;
}

/** Days of the longest Hebrew year. */
const LONGEST_YEAR_DAYS = 385;

/**
 * The first civil day from a number on with that Hebrew month and day.
 * @throws RangeError when a whole year has none
 */
export function nextHebrew(from: DayNumber, month: string, day: number): DayNumber {
  for (let number = from; number <= from + LONGEST_YEAR_DAYS; number++) {
    const date = hebrewDate(number);
    if (date.day === day && isMonth(date, month)) return number;
  }
  throw new RangeError(
    `${day} ${month} is not within a year of ${dateText(civilDate(from))}; allowed: a day that each year has.`,
  );
}
