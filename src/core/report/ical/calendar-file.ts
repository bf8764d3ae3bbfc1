import type { Translator } from '../../messages/index.ts';
import type { Plan } from '../../plan/index.ts';
import type { RunState } from '../../run/index.ts';
import { calendarOf } from './calendar-of.ts';
import { restEvents } from './rest-events.ts';

/**
 * What lies ahead as an iCalendar file: ends of rests, blocks of purge work.
 * Undefined where nothing lies ahead.
 * @param startWallMs wall time of second 0 of the timetable, ms
 * @param stampMs when the file is made, wall ms: the host's reading
 * @param state the run, if it has begun
 */
export function calendarFile(
  plan: Plan,
  startWallMs: number,
  stampMs: number,
  translator: Translator,
  state?: RunState,
): string | undefined {
  const events = restEvents(plan, startWallMs, translator, state);
  return events.length === 0 ? undefined : calendarOf(events, stampMs);
}
