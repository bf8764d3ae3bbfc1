import type { Plan, RestDay } from '../../plan/index.ts';
import type { RunState, Timer } from '../model/state.ts';
import type { Readings } from '../model/types.ts';

const MS = 1000;

/**
 * The wall time by a person's last word, ms. A clock in doubt is taken as it
 * shows: to leave the time open would close the work, or sound an alarm, by a
 * guess; the question about the clock is asked beside it.
 */
export function rightWallMs(state: RunState, now: Readings): number {
  return now.wallMs + state.clock.errorS * MS;
}

/** The rest day (Sabbath or festival, from candle lighting to nightfall) at a moment, if there is one. */
export function restDayAt(plan: Plan, wallMs: number): RestDay | null {
  const days = plan.days?.restDays ?? [];
  return days.find((day) => day.fromWallMs <= wallMs && wallMs < day.toWallMs) ?? null;
}

/** The first rest day that begins after a moment. */
export function nextRestDay(plan: Plan, wallMs: number): RestDay | null {
  let next: RestDay | null = null;
  for (const day of plan.days?.restDays ?? []) {
    if (day.fromWallMs > wallMs && (!next || day.fromWallMs < next.fromWallMs)) next = day;
  }
  return next;
}

/** The rest day inside which a timer came due, or null. */
export function cameDueIn(state: RunState, timer: Timer): RestDay | null {
  return timer.dueWallMs === null ? null : restDayAt(state.plan, timer.dueWallMs);
}

/** Seconds until a rest day begins or ends, or the hour of leaven comes, or Infinity: screens and sounds change there. */
export function restDayTurnS(state: RunState, now: Readings): number {
  const wallMs = rightWallMs(state, now);
  const { restDays = [], deadline } = state.plan.days ?? {};
  const turns = [
    ...restDays.flatMap((day) => [day.fromWallMs, day.toWallMs]),
    ...(deadline ? [deadline.atWallMs] : []),
  ].filter((turnMs) => turnMs > wallMs);
  return (Math.min(...turns) - wallMs) / MS;
}
