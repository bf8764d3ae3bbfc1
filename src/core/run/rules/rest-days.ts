import type { Plan, RestDay, Step } from '../../plan/index.ts';
import type { RunState, Timer } from '../model/state.ts';
import { dependentsOf } from '../model/plan-index.ts';
import type { Readings } from '../model/types.ts';

/**
 * Work that should end this little after a rest day begins is still let in, s.
 * A choice about clocks: a plan counts in typical durations, and the rate error
 * allowed to a device clock lets a 24-hour rest be proved up to 9 s late.
 */
const REACH_SLACK_S = 60;

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

/**
 * May it lie in a rest day once begun? Rests and cool-downs measure what goes
 * on without anybody; and a wait with no hands, no eyes and no heat.
 */
function mayRunThrough(step: Step): boolean {
  if (step.attention !== 'none') return false;
  if (step.startsBy === 'chain') return true;
  return step.stages.every((stage) => stage.hazards.length === 0);
}

/** Typical time until this work can be left, with what must follow at once (boiled water is poured), s. */
function reachS(plan: Plan, step: Step): number {
  const atOnce = dependentsOf(plan, step.id)
    .filter((one) => one.needs.some((need) => need.step === step.id && need.withinS !== undefined))
    .map((one) => one.durationS.typical);
  return step.durationS.typical + Math.max(0, ...atOnce);
}

/** Why a step may not begin now because of a rest day (I-19). */
export type RestDayObstacle = { readonly why: 'inside' | 'reaches'; readonly day: RestDay };

/** @param by what starts by itself inside a rest day may be no more than a measure of what goes on anyway */
export function restDayObstacle(
  state: RunState,
  step: Step,
  now: Readings,
  by: 'person' | 'chain',
): RestDayObstacle | null {
  if (state.plan.days === undefined) return null;
  const wallMs = rightWallMs(state, now);
  const inside = restDayAt(state.plan, wallMs);
  if (inside) {
    const measuresOnly = by === 'chain' && step.attention === 'none';
    return measuresOnly ? null : { why: 'inside', day: inside };
  }
  if (mayRunThrough(step)) return null;
  const day = nextRestDay(state.plan, wallMs);
  if (!day) return null;
  const untilS = (day.fromWallMs - wallMs) / MS;
  return reachS(state.plan, step) > untilS + REACH_SLACK_S ? { why: 'reaches', day } : null;
}

/** Seconds until a rest day begins or ends, or Infinity: screens and sounds change there. */
export function restDayTurnS(state: RunState, now: Readings): number {
  const wallMs = rightWallMs(state, now);
  const turns = (state.plan.days?.restDays ?? [])
    .flatMap((day) => [day.fromWallMs, day.toWallMs])
    .filter((turnMs) => turnMs > wallMs);
  return (Math.min(...turns) - wallMs) / MS;
}
