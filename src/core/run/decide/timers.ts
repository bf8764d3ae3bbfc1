import { message } from '../../messages/index.ts';
import { CORRECT_MAX_S, EXTEND_MAX_S } from '../model/constants.ts';
import { stepOf } from '../model/plan-index.ts';
import { rightWallMs } from '../rules/rest-days.ts';
import type { RunState, Timer } from '../model/state.ts';
import { elapsed } from '../model/elapsed-interval.ts';
import { coolingById } from '../timers/cooling.ts';
import { heatedAgoS } from '../timers/heated-ago.ts';
import { isHold } from '../timers/timer.ts';
import type { Readings, Request } from '../model/types.ts';
import { accept, refuse, type Decision } from './refusal.ts';

type Asked<K extends Request['kind']> = Extract<Request, { kind: K }>;

function timerClosed(): Decision {
  return refuse('timer-closed', message('engine.timer.ended'));
}

/** A timer by the id a request names; what every object has is none. */
export function timerById(state: RunState, id: string): Timer | undefined {
  return Object.hasOwn(state.timers, id) ? state.timers[id] : undefined;
}

/** Is it sounding for an answer? Also after its stage ended by itself. */
export function isAlerting(timer: Pick<Timer, 'announced' | 'acknowledged'>): boolean {
  return timer.announced && !timer.acknowledged;
}

export function acknowledgeTimer(state: RunState, asked: Asked<'acknowledge-timer'>): Decision {
  const timer = timerById(state, asked.timer) ?? coolingById(state, asked.timer);
  if (!timer) return timerClosed();
  if (!isAlerting(timer)) return refuse('not-alerting', message('engine.timer.does-not-call'));
  return accept({ kind: 'timer-acknowledged', timer: timer.id, cause: timer.cause });
}

/** A minimum may be made longer. An alarm may not be put off (I-07). */
export function extendTimer(state: RunState, asked: Asked<'extend-timer'>): Decision {
  const timer = timerById(state, asked.timer);
  if (!timer) return timerClosed();
  if (timer.mode !== 'running') return timerClosed();
  if (timer.spec.purpose === 'at-most')
    return refuse('cannot-extend', message('engine.timer.cannot-extend'));
  if (!(asked.byS > 0 && asked.byS <= EXTEND_MAX_S)) {
    return refuse(
      'out-of-range',
      message('engine.timer.extend-range', { byS: asked.byS, mostS: EXTEND_MAX_S }),
    );
  }
  return accept({ kind: 'timer-extended', timer: timer.id, byS: asked.byS });
}

/**
 * "It was last hot at …", by a person's word with a reason, counted on the
 * right clock: a person must have said in this run what is right. Never further
 * back than what the record tells of hot use. Only a rest has such a moment: what
 * cools or dries began when the run saw it begin, and its wait only gets longer.
 */
export function correctTime(
  state: RunState,
  asked: Asked<'correct-time'>,
  now: Readings,
): Decision {
  const timer = timerById(state, asked.timer);
  if (!timer) return timerClosed();
  if (timer.mode !== 'running') return timerClosed();
  if (timer.spec.purpose !== 'at-least' || !isHold(timer)) {
    return refuse('cannot-correct', message('engine.timer.cannot-correct'));
  }
  if (asked.reason.trim() === '') return refuse('reason-missing', message('engine.reason.correct'));
  const { doubt, errorKnown, told } = state.clock;
  // A clock that is only taken to be right may stand a day off, and would credit that day.
  const isFirstWord = !told && asked.clockRight === true;
  if (doubt || !errorKnown || !(told || isFirstWord))
    return refuse('clock-in-doubt', message('engine.resume.review-clock'));
  const elapsedS = (rightWallMs(state, now) - asked.sinceWallMs) / 1000;
  const mostS = longestS(state, timer, now);
  if (!(elapsedS >= 0 && elapsedS <= mostS)) {
    return refuse(
      'out-of-range',
      message('engine.timer.correct-range', { sinceWallMs: asked.sinceWallMs, mostS }),
    );
  }
  return accept({
    kind: 'time-corrected',
    timer: timer.id,
    sinceWallMs: asked.sinceWallMs,
    reason: asked.reason,
    elapsedS,
    ...(isFirstWord && { clockRight: true }),
  });
}

/** The longest that a wait can have gone on, by the record, s. */
function longestS(state: RunState, timer: Timer, now: Readings): number {
  const { atLeastS, atMostS } = elapsed(timer.span, now);
  const step = stepOf(state.plan, timer.step);
  if (step.kind !== 'rest') return atLeastS;
  const beforeS = Math.max(0, timer.correctedS);
  const begunS = Number.isFinite(atMostS) ? Math.max(0, atMostS - beforeS) : atLeastS;
  return Math.min(begunS + CORRECT_MAX_S, heatedAgoS(state, step, now));
}
