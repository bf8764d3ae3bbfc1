import type { Formatter, PluralForms, Rounding } from '../model/message.ts';
import type { FormatWords } from '../model/traits.ts';
import { metricSizes } from './metric-sizes.ts';

const MINUTE_S = 60;
const HOUR_S = 3600;
/** Below this a length of time is told with its seconds, s. */
const FINE_BELOW_S = 600;
/** Estimates of minutes are told to this, s. */
const FINE_STEP_S = 5;
/** Below this an estimate is told in seconds alone, s. */
const SECONDS_BELOW_S = 90;

/** Sums of binary fractions end a hair beside the whole number they mean. */
const HAIR = 1e-6;

/** To what an estimate is rounded in round figures, s. */
const ROUND_STEPS = [
  { belowS: 55, toS: 10 },
  { belowS: HOUR_S, toS: MINUTE_S },
] as const;
const HOUR_STEP_S = 300;

/** No date is further from 1970 than this, ms (ECMAScript, time values). */
const FURTHEST_MS = 8.64e15;

const ROUND: Readonly<Record<Rounding, (value: number) => number>> = {
  nearest: Math.round,
  down: (value) => Math.floor(value + HAIR),
  up: (value) => Math.ceil(value - HAIR),
};

/** To so many decimals; to the nearest is left to whoever writes it. No minus stands before a nought. */
function roundedTo(decimals: number, value: number, toward: Rounding): number {
  const tens = 10 ** decimals;
  return toward === 'nearest' ? value : ROUND[toward](value * tens) / tens + 0;
}

/** Whole hours, minutes and seconds to be told of a length of time; what is not told is undefined. */
function durationParts(
  lengthS: number,
  rounding: Rounding,
): { readonly h?: number; readonly min?: number; readonly s?: number } {
  const round = ROUND[rounding];
  const wholeS = Math.max(0, round(lengthS));
  const secondsBelowS = rounding === 'nearest' ? SECONDS_BELOW_S : MINUTE_S;
  if (wholeS < secondsBelowS) return { s: wholeS };
  if (wholeS < FINE_BELOW_S) {
    const fineS = rounding === 'nearest' ? Math.round(lengthS / FINE_STEP_S) * FINE_STEP_S : wholeS;
    const s = fineS % MINUTE_S;
    return { min: Math.floor(fineS / MINUTE_S), ...(s > 0 && { s }) };
  }
  const wholeMin = round(lengthS / MINUTE_S);
  if (wholeMin * MINUTE_S < HOUR_S) return { min: wholeMin };
  const min = wholeMin % 60;
  return { h: Math.floor(wholeMin / 60), ...(min > 0 && { min }) };
}

/** An estimate in the figures a person would name: tens of seconds, minutes, from an hour on five of them. */
function roundFigure(lengthS: number): number {
  const step = ROUND_STEPS.find(({ belowS }) => lengthS < belowS);
  const toS = step?.toS ?? HOUR_STEP_S;
  return Math.max(toS, Math.round(lengthS / toS) * toS);
}

type Says = Pick<Formatter, 'say'>;

/** A formatter on the platform's own tables (Intl) for a BCP 47 locale, with the words of its language. */
export function intlFormat(locale: string, words: FormatWords, { say }: Says): Formatter {
  const plurals = new Intl.PluralRules(locale);
  const number: Formatter['number'] = (value, decimals = 0, toward = 'nearest') =>
    roundedTo(decimals, value, toward).toLocaleString(locale, {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
      useGrouping: false,
    });
  const shortNumber: Formatter['shortNumber'] = (value, mostDecimals = 1, toward = 'nearest') =>
    roundedTo(mostDecimals, value, toward).toLocaleString(locale, {
      maximumFractionDigits: mostDecimals,
      useGrouping: false,
    });
  const duration = (lengthS: number, rounding: Rounding = 'nearest'): string => {
    const { h, min, s } = durationParts(lengthS, rounding);
    return [
      ...(h === undefined ? [] : [words.hours(number(h))]),
      ...(min === undefined ? [] : [words.minutes(number(min))]),
      ...(s === undefined ? [] : [words.seconds(number(s))]),
    ].join(' ');
  };
  // A screen tells the time four times a second, and making one of these costs more than all else it does then.
  const dates = new Map<string, Intl.DateTimeFormat>();
  /** A dash for a moment that is no date: a stored one must not end the page that tells it. */
  const date = (
    wallMs: number,
    zone: string,
    fields: Readonly<Intl.DateTimeFormatOptions>,
  ): string => {
    const options = { timeZone: zone, ...fields };
    const key = JSON.stringify(options);
    const made = dates.get(key) ?? new Intl.DateTimeFormat(locale, options);
    dates.set(key, made);
    return Math.abs(wallMs) <= FURTHEST_MS ? made.format(wallMs) : '–';
  };
  const clock = (wallMs: number, zone: string): string =>
    date(wallMs, zone, { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
  const day = (wallMs: number, zone: string): string =>
    date(wallMs, zone, { weekday: 'long', day: 'numeric', month: 'long' });
  const range = (low: number, high: number, decimals = 0): string => {
    const [a, b] = [number(low, decimals), number(high, decimals)];
    return a === b ? a : words.rangeTo(a, b);
  };
  return {
    locale,
    say,
    number,
    shortNumber,
    range,
    ...metricSizes({ number, shortNumber, range }, words),
    duration,
    about: (lengthS) => words.about(duration(roundFigure(lengthS), 'down')),
    clock,
    day,
    date: (wallMs, zone) =>
      date(wallMs, zone, { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' }),
    shortDay: (wallMs, zone) =>
      date(wallMs, zone, { weekday: 'short', day: 'numeric', month: 'short' }),
    weekday: (wallMs, zone) => date(wallMs, zone, { weekday: 'long' }),
    shortWeekday: (wallMs, zone) => date(wallMs, zone, { weekday: 'short' }),
    moment: (wallMs, zone) => `${day(wallMs, zone)} ${clock(wallMs, zone)}`,
    dateTime: (wallMs, zone) =>
      `${date(wallMs, zone, { weekday: 'short', day: 'numeric', month: 'short' })}, ${clock(wallMs, zone)}`,
    shortMoment: (wallMs, zone) =>
      `${date(wallMs, zone, { weekday: 'short' })} ${clock(wallMs, zone)}`,
    plural: (count, forms: PluralForms) => forms[plurals.select(count)] ?? forms.other,
    list: (parts) => new Intl.ListFormat(locale, { type: 'conjunction' }).format(parts),
    capital: (text) => text.slice(0, 1).toLocaleUpperCase(locale) + text.slice(1),
  };
}
