import { CLOCK_TOLERANCE_S } from '../model/constants.ts';
import type { FactBody } from '../model/facts.ts';
import type { RunState, Timer } from '../model/state.ts';
import { carry, gainInSession as gainTo, startInterval } from '../model/elapsed-interval.ts';
import { coolingById, putCooling } from '../timers/cooling.ts';
import { remember } from '../timers/clock-word.ts';
import type { Readings } from '../model/types.ts';
import { rightWallMs } from '../rules/rest-days.ts';
import { clockBase } from '../timers/unproved-time.ts';
import { hear, putTimers } from './change.ts';

type Body<K extends FactBody['kind']> = Extract<FactBody, { kind: K }>;

function timerOf(state: RunState, id: string): Timer {
  const timer = state.timers[id];
  if (!timer)
    throw new RangeError(`timer is "${id}"; allowed: one that was started. Check the journal.`);
  return timer;
}

export function applyDue(state: RunState, body: Body<'timer-due'>, at: Readings): RunState {
  const cooling = coolingById(state, body.timer);
  if (cooling) return putCooling(state, { ...cooling, announced: true, acknowledged: false });
  const timer = timerOf(state, body.timer);
  const { lateByS } = body;
  const dueWallMs = rightWallMs(state, at) - lateByS * 1000;
  return putTimers(state, [{ ...timer, announced: true, acknowledged: false, lateByS, dueWallMs }]);
}

/** A reminder that repeats begins its next round with the answer; everything else only falls silent. */
export function applyAcknowledge(
  state: RunState,
  body: Body<'timer-acknowledged'>,
  at: Readings,
): RunState {
  const cooling = coolingById(state, body.timer);
  if (cooling) return putCooling(state, { ...cooling, acknowledged: true });
  const timer = timerOf(state, body.timer);
  if (timer.mode === 'closed') return hear(state, (one) => one.id === timer.id);
  if (timer.spec.repeats !== true) {
    return putTimers(state, [{ ...timer, acknowledged: true }]);
  }
  return putTimers(state, [
    {
      ...timer,
      span: startInterval(at, clockBase(state.clock)),
      cause: timer.cause + 1,
      announced: false,
      acknowledged: false,
      lateByS: 0,
      dueWallMs: null,
    },
  ]);
}

/** A longer minimum; if it had come due, it will come due again for a new cause. */
export function applyExtension(state: RunState, body: Body<'timer-extended'>): RunState {
  const timer = timerOf(state, body.timer);
  return putTimers(state, [
    {
      ...timer,
      lengthS: timer.lengthS + body.byS,
      cause: timer.announced ? timer.cause + 1 : timer.cause,
      announced: false,
      acknowledged: false,
      lateByS: 0,
      dueWallMs: null,
    },
  ]);
}

/** How long it has been, by a person's word against the right clock; one that had come due may come due anew. */
export function applyCorrection(
  state: RunState,
  body: Body<'time-corrected'>,
  at: Readings,
): RunState {
  const timer = timerOf(state, body.timer);
  const correctedS = (timer.startedWallMs - body.sinceWallMs) / 1000;
  if (body.elapsedS === undefined) return correctByStart(state, timer, correctedS);
  const { elapsedS } = body;
  const told = {
    ...startInterval(at, clockBase(state.clock)),
    atLeastS: elapsedS,
    atMostS: elapsedS + CLOCK_TOLERANCE_S,
    told: timer.span.told,
  };
  const answer = state.clock.answers.at(-1)?.answer;
  const before = carry(timer.span, gainTo(timer.span.anchor, at), at);
  const span = answer === undefined ? told : remember(before, told, answer);
  const anew = timer.announced && elapsedS < timer.lengthS;
  const worded =
    body.clockRight === true ? { ...state, clock: { ...state.clock, told: true } } : state;
  return putTimers(worded, [
    {
      ...timer,
      correctedS,
      span,
      unproved: false,
      ...(anew ? ANEW : {}),
      cause: anew ? timer.cause + 1 : timer.cause,
    },
  ]);
}

const ANEW = { announced: false, acknowledged: false, lateByS: 0, dueWallMs: null } as const;

/** As journals from before the right clock was used were written. */
function correctByStart(state: RunState, timer: Timer, correctedS: number): RunState {
  const byS = correctedS - timer.correctedS;
  return putTimers(state, [
    {
      ...timer,
      correctedS,
      span: {
        ...timer.span,
        atLeastS: timer.span.atLeastS + byS,
        atMostS: timer.span.atMostS + byS,
      },
    },
  ]);
}
