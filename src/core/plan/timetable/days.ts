import { message, type Message } from '../../messages/index.ts';
import { MS_PER_DAY, MS_PER_MINUTE, MS_PER_SECOND } from '../../units/index.ts';
import {
  civilDate,
  dayNumber,
  LIGHTING_MIN,
  momentOf,
  restDays,
  wallTime,
  type RestSpan,
} from '../../calendar/index.ts';
import type { Kitchen, Place } from '../../kitchen/index.ts';
import { deadlineOf } from './deadline.ts';
import { NIGHT, nightsBetween } from './nights.ts';
import type { ClosedHours } from './timetable.ts';
import type { PlanDays, RestDay } from '../model/index.ts';

/** Where the sun gives no hour on the eve, work ends at noon: the careful side. */
const NO_SUNSET = { hour: 12, minute: 0 } as const;
/** Work begins this long after a rest day is out: common practice, no published source. */
const AFTER_NIGHTFALL_MS = 45 * MS_PER_MINUTE;
/** Days ahead that are laid out; longer than any plan. */
const AHEAD_DAYS = 60;

/** The calendar a plan is made in. */
export type Calendar = {
  readonly days: PlanDays;
  /** Nights and rest days until people are ready again, s after the start: nothing that needs a person. */
  readonly closed: ClosedHours;
  /** Rest days alone: kept by work that no day is long enough for, too. */
  readonly rests: ClosedHours;
  /** s after the start; below 0: it has passed. */
  readonly purgeByS?: number;
  readonly notices: readonly Message[];
};

/** A span in ms; what the sun does not tell is taken on the careful side. */
function restDayOf(span: RestSpan, zone: string): RestDay {
  const { name, startsAtMs, endsAtMs, eve, last } = span;
  const after = civilDate(dayNumber(last) + 1);
  return {
    name,
    fromWallMs: startsAtMs ?? momentOf({ ...eve, ...NO_SUNSET }, zone),
    toWallMs: endsAtMs ?? momentOf({ ...after, ...NIGHT.to }, zone),
  };
}

function sunNotices(spans: readonly RestSpan[]): readonly Message[] {
  const dim = spans.filter(({ startsAtMs, endsAtMs }) => startsAtMs === null || endsAtMs === null);
  const [first] = dim;
  if (!first) return [];
  return [message('plan.notice.dim-days', { day: first.name, untilHour: NIGHT.to.hour })];
}

/**
 * The days from a start on: nights and rest days on the wall of the kitchen's zone, and the
 * deadline of a kitchen for Passover.
 * @param startWallMs ms since 1970-01-01 UTC, in the years 1950 to 2100
 * @throws OutOfRangeError when the place has no such zone or lies outside the earth
 */
export function calendarOf(kitchen: Kitchen, place: Place, startWallMs: number): Calendar {
  const { zone } = place;
  const { household } = kitchen;
  const from = wallTime(startWallMs, zone);
  const today = dayNumber(from);
  const spans = household.keepsRestDays
    ? restDays({
        ...place,
        from: civilDate(today - 1),
        days: AHEAD_DAYS + 1,
        lightingMin: household.lightingMin ?? LIGHTING_MIN,
      })
    : [];
  const kept = spans
    .map((span) => ({ span, day: restDayOf(span, zone) }))
    .filter(({ day }) => day.toWallMs > startWallMs);
  const { deadline, notices } = deadlineOf(kitchen, place, startWallMs);
  const toS = (atWallMs: number): number => (atWallMs - startWallMs) / MS_PER_SECOND;
  const closed = (list: readonly Pick<RestDay, 'fromWallMs' | 'toWallMs'>[]): ClosedHours =>
    list
      .filter(({ toWallMs }) => toWallMs > startWallMs)
      .map(({ fromWallMs, toWallMs }) => ({ fromS: toS(fromWallMs), toS: toS(toWallMs) }));
  const nights = nightsBetween(startWallMs, startWallMs + AHEAD_DAYS * MS_PER_DAY, zone);
  const rests = closed(kept.map(({ day }) => day));
  const untilReady = closed(
    spans
      .map((span) => restDayOf(span, zone))
      .map((day) => ({ ...day, toWallMs: day.toWallMs + AFTER_NIGHTFALL_MS })),
  );
  return {
    days: {
      startWallMs,
      restDays: kept.map(({ day }) => day),
      ...(deadline && { deadline }),
    },
    closed: [...closed(nights), ...untilReady],
    rests,
    ...(deadline && { purgeByS: toS(deadline.atWallMs) }),
    notices: [...notices, ...sunNotices(kept.map(({ span }) => span))],
  };
}
