import { civilDate, dayNumber, momentOf, wallTime } from '../../calendar/index.ts';
import { customTable } from '../../custom/index.ts';
import { MS_PER_HOUR, MS_PER_MINUTE, MS_PER_DAY } from '../../units/index.ts';
import type { Plan } from '../../plan/index.ts';
import type { Change, Situation } from './change.ts';

/** Hours at which a household may begin: early, before and after a meal, and one last hour of an evening. */
const HOURS = [
  { hour: 8, minute: 0 },
  { hour: 10, minute: 0 },
  { hour: 13, minute: 0 },
  { hour: 16, minute: 0 },
  { hour: 19, minute: 0 },
  { hour: 21, minute: 30 },
] as const;
/** So far to either side of the planned beginning others are tried, ms. */
const AROUND_MS = MS_PER_DAY;
/** Nearer to the planned beginning than this is the same, ms. */
const SAME_MS = 20 * MS_PER_MINUTE;

/**
 * Beginnings that are tried: a day to either side of the planned one, by the wall of the kitchen,
 * outside rest days.
 * @param earliestWallMs before this nobody can begin any more, ms since 1970-01-01 UTC
 */
export function startChanges(
  { kitchen: { place }, options: { startWallMs } }: Situation,
  { days }: Plan,
  earliestWallMs: number,
): readonly Change[] {
  if (!place || startWallMs === undefined) return [];
  const today = dayNumber(wallTime(startWallMs, place.zone));
  const grid = [-1, 0, 1].flatMap((ahead) =>
    HOURS.map((at) => momentOf({ ...civilDate(today + ahead), ...at }, place.zone)),
  );
  const from = Math.max(earliestWallMs, startWallMs - AROUND_MS);
  return grid
    .filter(
      (ms) =>
        ms >= from &&
        ms <= startWallMs + AROUND_MS &&
        Math.abs(ms - startWallMs) >= SAME_MS &&
        !days?.restDays.some(({ fromWallMs, toWallMs }) => fromWallMs <= ms && ms < toWallMs),
    )
    .map((ms) => ({ kind: 'start', startWallMs: ms }));
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}

/**
 * Rests counted from the last hot use, where nobody told one: as if nothing had been hot for as
 * long as the custom asks. Only the household knows whether that is so.
 */
export function lastHotChanges({
  kitchen: { place, household, fixtures },
  options: { startWallMs },
}: Situation): readonly Change[] {
  const isUntold = fixtures.some(({ lastHotAt }) => lastHotAt === undefined);
  if (!place || startWallMs === undefined || household.lastHotAt !== undefined || !isUntold)
    return [];
  const { restHours } = customTable(household.custom);
  const at = wallTime(startWallMs - restHours * MS_PER_HOUR, place.zone);
  const day = `${String(at.year).padStart(4, '0')}-${two(at.month)}-${two(at.day)}`;
  return [{ kind: 'last-hot', lastHotAt: `${day}T${two(at.hour)}:${two(at.minute)}` }];
}
