import {
  MS_PER_DAY,
  MS_PER_HOUR,
  MS_PER_MINUTE,
  MS_PER_SECOND,
  OutOfRangeError,
} from '../units/index.ts';
import { civilDate, dayNumber, type CivilDate } from './civil.ts';

/** What a clock on the wall shows. */
export type WallTime = CivilDate & { readonly hour: number; readonly minute: number };

const formats = new Map<string, Intl.DateTimeFormat>();

function formatOf(zone: string): Intl.DateTimeFormat {
  const known = formats.get(zone);
  if (known) return known;
  try {
    // Making one costs far more than using it; it holds nothing but the zone's rules.
    const made = new Intl.DateTimeFormat('en-u-ca-gregory-nu-latn', {
      timeZone: zone,
      hourCycle: 'h23',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
      second: 'numeric',
    });
    formats.set(zone, made);
    return made;
  } catch {
    throw new OutOfRangeError('zone', zone, 'an IANA time-zone name', 'Write Europe/Paris, or so.');
  }
}

/** The wall clock as if it stood in UTC, ms: its day number and time of day in one number. */
function wallMs(atMs: number, zone: string): number {
  const found: Record<string, number> = {};
  for (const { type, value } of formatOf(zone).formatToParts(atMs)) found[type] = Number(value);
  const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = found;
  return (
    dayNumber({ year, month, day }) * MS_PER_DAY +
    hour * MS_PER_HOUR +
    minute * MS_PER_MINUTE +
    second * MS_PER_SECOND
  );
}

/**
 * What the wall clock of a zone shows at a moment, seconds left away.
 * @param atMs ms since 1970-01-01 UTC
 * @throws OutOfRangeError when there is no such zone
 */
export function wallTime(atMs: number, zone: string): WallTime {
  const wall = wallMs(Math.floor(atMs / MS_PER_SECOND) * MS_PER_SECOND, zone);
  const minutes = Math.floor((wall - Math.floor(wall / MS_PER_DAY) * MS_PER_DAY) / MS_PER_MINUTE);
  return {
    ...civilDate(Math.floor(wall / MS_PER_DAY)),
    hour: Math.floor(minutes / 60),
    minute: minutes % 60,
  };
}

/**
 * The moment at which the wall clock of a zone shows a time, ms since 1970-01-01 UTC. Of an hour
 * that comes twice, the first; a time that the clock skips is taken as if it had not been put on
 * yet, so that it lies as long after the gap as it was meant after its start.
 * @throws OutOfRangeError when there is no such zone
 */
export function momentOf(wall: WallTime, zone: string): number {
  const asUtc =
    dayNumber(wall) * MS_PER_DAY + wall.hour * MS_PER_HOUR + wall.minute * MS_PER_MINUTE;
  const offset = (atMs: number): number => wallMs(atMs, zone) - atMs;
  // Offsets of the day before and after frame any change of the clock in between.
  const before = asUtc - offset(asUtc - MS_PER_DAY);
  const after = asUtc - offset(asUtc + MS_PER_DAY);
  const shows = [before, after].filter((atMs) => wallMs(atMs, zone) === asUtc);
  return shows.length > 0 ? Math.min(...shows) : before;
}

/** Local noon of a civil day, ms since 1970-01-01 UTC. */
export function noonOf(date: CivilDate, zone: string): number {
  return momentOf({ ...date, hour: 12, minute: 0 }, zone);
}
