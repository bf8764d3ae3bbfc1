import type { Stage, Step, TimerSpec } from '../../plan/index.ts';
import { CLOCK_RATE_ERROR } from '../model/constants.ts';
import type { StepState, Timer } from '../model/state.ts';
import type { Readings } from '../model/types.ts';
import { elapsed, startInterval, type ElapsedInterval } from '../model/elapsed-interval.ts';

/** Id of a timer of a stage; a restarted stage gets new timers, told apart by the round. */
function timerId(step: string, state: StepState, stage: string, spec: string): string {
  const round = state.round > 1 ? `~${state.round}` : '';
  return `${step}#${state.attempt}${round}/${stage}/${spec}`;
}

/** Id of the carry of a dependent step: how long what it needs has been waiting. */
export function carryId(
  step: string,
  attempt: number,
  needed: string,
  neededAttempt: number,
): string {
  return `${step}#${attempt}/need/${needed}#${neededAttempt}`;
}

export function startTimer(
  id: string,
  step: string,
  attempt: number,
  stage: string,
  spec: TimerSpec,
  at: Readings,
  base: ElapsedInterval['base'],
): Timer {
  return {
    id,
    step,
    attempt,
    stage,
    spec,
    lengthS: spec.lengthS,
    span: startInterval(at, base),
    startedWallMs: at.wallMs,
    correctedS: 0,
    mode: 'running',
    gapOpen: false,
    clockProved: false,
    unproved: false,
    cause: 1,
    announced: false,
    acknowledged: false,
    lateByS: 0,
    dueWallMs: null,
  };
}

/** All timers of a stage, started at `at`. */
export function startStageTimers(
  step: Step,
  state: StepState,
  stage: Stage,
  at: Readings,
  base: ElapsedInterval['base'],
): Timer[] {
  return stage.timers.map((spec) => {
    const id = timerId(step.id, state, stage.id, spec.id);
    return startTimer(id, step.id, state.attempt, stage.id, spec, at, base);
  });
}

/** Alarms round towards sounding; minimums towards having waited less. */
export function isAlarm(timer: Timer): boolean {
  return timer.spec.purpose === 'at-most';
}

/** Elapsed time on the side that is safe for the timer's purpose, s; may be Infinity for an alarm. */
function safeElapsedS(timer: Timer, now: Readings): number {
  const { atLeastS, atMostS } = elapsed(timer.span, now);
  return isAlarm(timer) ? atMostS : atLeastS;
}

export function safeLeftS(timer: Timer, now: Readings): number {
  return Math.max(0, timer.lengthS - safeElapsedS(timer, now));
}

/** Has it come due? A minimum with an unanswered gap has not, whatever its clock shows (I-05). */
export function isDue(timer: Timer, now: Readings): boolean {
  if (timer.mode !== 'running') return false;
  if (!isAlarm(timer) && timer.gapOpen) return false;
  return safeElapsedS(timer, now) >= timer.lengthS;
}

/** By how much it is overdue at the least, s; finite. */
export function lateByS(timer: Timer, now: Readings): number {
  const { atLeastS, atMostS } = elapsed(timer.span, now);
  const over = (isAlarm(timer) && Number.isFinite(atMostS) ? atMostS : atLeastS) - timer.lengthS;
  return Math.max(0, over);
}

/** Seconds of the monotonic clock until it comes due, 0 when it is; Infinity when only an answer can. With a gap unanswered the run is in review, where nobody waits for a minimum. */
export function wakeAfterS(timer: Timer, now: Readings): number {
  const leftS = safeLeftS(timer, now);
  return isAlarm(timer) ? leftS / (1 + CLOCK_RATE_ERROR) : leftS / (1 - CLOCK_RATE_ERROR);
}

/** A hold keeps a stage from ending. */
export function isHold(timer: Timer): boolean {
  return timer.spec.role === 'hold';
}
