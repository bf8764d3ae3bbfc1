import { LATE_S } from '../model/constants.ts';
import { isAlerting } from '../decide/timers.ts';
import { isFrozen } from '../rules/faults.ts';
import { settlesInS } from '../rules/gates.ts';
import { indexOf, stepOf } from '../model/plan-index.ts';
import { cameDueIn, restDayTurnS, rightWallMs } from '../rules/rest-days.ts';
import type { RunState, Timer } from '../model/state.ts';
import { elapsed } from '../model/elapsed-interval.ts';
import { coolingsWakeS } from '../timers/cooling.ts';
import { isAlarm, isHold, lateByS, safeLeftS, wakeAfterS } from '../timers/timer.ts';
import type { LastHotClaim } from '../model/questions.ts';
import type { TimerView, Readings, TimerStatus } from '../model/types.ts';

function statusOf(state: RunState, timer: Timer, now: Readings): TimerStatus {
  if (timer.announced)
    return timer.lateByS > LATE_S || toldAfter(state, timer, now) ? 'late' : 'due';
  if (timer.mode === 'closed') return 'closed';
  if (!isAlarm(timer) && isFrozen(state, timer.step)) return 'frozen';
  if (timer.unproved || timer.gapOpen) return 'unproved';
  const { atLeastS, atMostS } = elapsed(timer.span, now);
  const straddles = atLeastS < timer.lengthS && atMostS >= timer.lengthS;
  // A few seconds of tolerance at the very end are no doubt worth showing.
  return !isAlarm(timer) && straddles && atMostS - atLeastS > LATE_S ? 'unproved' : 'running';
}

/** It came due in the silence of a rest day that is over (I-19). */
function toldAfter(state: RunState, timer: Timer, now: Readings): boolean {
  const day = cameDueIn(state, timer);
  return day !== null && rightWallMs(state, now) >= day.toWallMs;
}

function lateNowS(state: RunState, timer: Timer, now: Readings): number {
  if (!timer.announced) return 0;
  if (timer.mode === 'running') return lateByS(timer, now);
  // The stopwatch of an ended one stands; since when it calls in vain, the wall clock tells.
  return timer.dueWallMs !== null && toldAfter(state, timer, now)
    ? Math.max(timer.lateByS, (rightWallMs(state, now) - timer.dueWallMs) / 1000)
    : timer.lateByS;
}

/**
 * A last hot use that the plan counts from and nobody has spoken about yet; none any more once
 * the rest was begun anew, or the record knows of a later hot use.
 */
function lastHotOf(state: RunState, timer: Timer): LastHotClaim | undefined {
  const { lastHotWallMs, fixture, work } = stepOf(state.plan, timer.step);
  const about = fixture ?? (work.on === 'vessel' ? work.vessel.id : undefined);
  if (lastHotWallMs === undefined || about === undefined) return undefined;
  const open = timer.mode === 'running' && isHold(timer) && !timer.announced;
  const untold = timer.attempt === 1 && timer.correctedS === 0;
  if (!open || !untold || Object.hasOwn(state.heated, about)) return undefined;
  return { wallMs: lastHotWallMs, about };
}

export function timerView(state: RunState, timer: Timer, now: Readings): TimerView {
  const { atLeastS, atMostS } = elapsed(timer.span, now);
  const { fixture } = stepOf(state.plan, timer.step);
  const day = cameDueIn(state, timer);
  const lastHot = lastHotOf(state, timer);
  return {
    id: timer.id,
    step: timer.step,
    stage: timer.stage,
    ...(fixture === undefined ? {} : { fixture }),
    label: timer.spec.label,
    ...(timer.spec.of === undefined ? {} : { of: timer.spec.of }),
    purpose: timer.spec.purpose,
    role: timer.spec.role,
    status: statusOf(state, timer, now),
    lengthS: timer.lengthS,
    atLeastS,
    atMostS,
    leftS: timer.mode === 'running' ? safeLeftS(timer, now) : 0,
    alerting: isAlerting(timer),
    lateByS: lateNowS(state, timer, now),
    cause: timer.cause,
    ...(day ? { cameDueIn: day.name } : {}),
    ...(lastHot && { lastHot }),
  };
}

/** Running clocks, and ended ones that still call for an answer; nearest first. */
export function timerViews(state: RunState, now: Readings): readonly TimerView[] {
  return Object.values(state.timers)
    .filter((timer) => timer.mode === 'running' || isAlerting(timer))
    .map((timer) => timerView(state, timer, now))
    .toSorted((a, b) => Number(b.alerting) - Number(a.alerting) || a.leftS - b.leftS);
}

/**
 * Seconds until something can come due, a gate can settle, or a rest day
 * begins or ends, or null (I-10).
 * Recomputed from the state each time; losing a wake-up loses nothing.
 */
export function wakeInS(state: RunState, now: Readings): number | null {
  if (state.status === 'closed') return null;
  let soonestS = Math.min(restDayTurnS(state, now), coolingsWakeS(state, now));
  for (const timer of Object.values(state.timers)) {
    if (timer.mode !== 'running' || timer.announced) continue;
    const waits =
      !isAlarm(timer) &&
      (state.status === 'reviewing' || state.storageDown || isFrozen(state, timer.step));
    if (!waits) soonestS = Math.min(soonestS, wakeAfterS(timer, now));
  }
  const { gates } = indexOf(state.plan);
  for (const known of Object.values(state.gates)) {
    const gate = gates.get(known.gate);
    const leftS = gate ? settlesInS(gate, known, now) : 0;
    if (leftS > 0) soonestS = Math.min(soonestS, leftS);
  }
  return Number.isFinite(soonestS) ? soonestS : null;
}
