import table from '../../../shared/calendar.json';
import { message, type Message } from '../messages/index.ts';
import { inRange, MS_PER_MINUTE, OutOfRangeError } from '../units/index.ts';
import { civilDate, dayNumber, type CivilDate, type DayNumber } from './civil.ts';
import { hebrewDate, isMonth, isSabbath } from './hebrew.ts';
import { checkSpot, NIGHTFALL_DEG, sunTimes, type Spot } from './sun.ts';

/** Whose second days are kept. */
export type Land = 'israel' | 'diaspora';

/** One Sabbath or festival, or several that touch, joined. */
export type RestSpan = {
  /** "Sabbath", "Passover", "Shavuot and Sabbath". */
  readonly name: Message;
  /** Lighting before sunset; null: the sun does not set on the eve. ms since 1970-01-01 UTC. */
  readonly startsAtMs: number | null;
  /** Nightfall; null: that night never gets so dark, or there is no sunset. */
  readonly endsAtMs: number | null;
  /** The eve on which it begins, and its last day. */
  readonly eve: CivilDate;
  readonly last: CivilDate;
};

/** Minutes before sunset at which lights are lit: common practice. */
export const LIGHTING_MIN = 18;

const SABBATH = 'sabbath';
/** A century. */
const LONGEST_DAYS = 36_600;

/** Ids of the rest days that a civil day is, by daytime; empty on a working day. */
export function restDayIds(number: DayNumber, land: Land): readonly string[] {
  const hebrew = hebrewDate(number);
  const festivals = table.festivals.filter(
    (row) =>
      row.day === hebrew.day &&
      isMonth(hebrew, row.month) &&
      (row.land === 'both' || land === 'diaspora'),
  );
  return [...festivals.map(({ id }) => id), ...(isSabbath(number) ? [SABBATH] : [])];
}

/** The name of a day of the table; a test holds the catalogue against it. */
function dayName(id: string): Message {
  return { key: `calendar.day.${id}`, params: {} };
}

function joinedName(ids: readonly string[]): Message {
  const days = [...new Set(ids)].map(dayName);
  const [first] = days;
  return first && days.length === 1 ? first : message('calendar.days', { days });
}

function spanOf(
  spot: Spot,
  days: readonly DayNumber[],
  land: Land,
  lightingMin: number,
  nightfallDeg: number,
): RestSpan {
  const eve = civilDate((days[0] ?? 0) - 1);
  const last = civilDate(days.at(-1) ?? 0);
  const { sunsetAtMs } = sunTimes({ ...spot, date: eve, nightfallDeg });
  return {
    name: joinedName(days.flatMap((day) => restDayIds(day, land))),
    startsAtMs: sunsetAtMs === null ? null : sunsetAtMs - lightingMin * MS_PER_MINUTE,
    endsAtMs: sunTimes({ ...spot, date: last, nightfallDeg }).nightfallAtMs,
    eve,
    last,
  };
}

/**
 * Sabbaths and the festivals on which work is forbidden, from lighting to nightfall. Days that
 * follow each other are one span: between them there is no working hour. Told are all spans of
 * which some part, the evening of the eve included, lies in the days asked about; each is whole.
 * @param input `from` and `days` (1 to 36600, a century), `land` for second days, `lightingMin` 0 to 90
 * @throws OutOfRangeError
 */
export function restDays(
  input: Spot & {
    readonly from: CivilDate;
    readonly days: number;
    readonly land: Land;
    readonly lightingMin?: number;
    readonly nightfallDeg?: number;
  },
): readonly RestSpan[] {
  const { from, days, land, lightingMin = LIGHTING_MIN, nightfallDeg = NIGHTFALL_DEG } = input;
  checkSpot(input, nightfallDeg);
  inRange('days', days, 1, LONGEST_DAYS);
  if (!Number.isInteger(days)) throw new OutOfRangeError('days', days, 'whole days');
  inRange('lightingMin', lightingMin, 0, 90);
  const rests = (number: DayNumber): boolean => restDayIds(number, land).length > 0;
  const spans: RestSpan[] = [];
  const first = dayNumber(from);
  // The evening of the last day asked about may be the eve of the day after it.
  for (let at = first; at <= first + days; at++) {
    if (!rests(at)) continue;
    const span = [at];
    while (rests((span[0] ?? at) - 1)) span.unshift((span[0] ?? at) - 1);
    while (rests((span.at(-1) ?? at) + 1)) span.push((span.at(-1) ?? at) + 1);
    spans.push(spanOf(input, span, land, lightingMin, nightfallDeg));
    at = span.at(-1) ?? at;
  }
  return spans;
}
