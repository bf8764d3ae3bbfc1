import { message, type Message } from '../../messages/index.ts';
import { NO_REASON } from '../model/reason.ts';
import type { FactBody } from '../model/facts.ts';
import { needsMakeSafe, stepOf } from '../model/plan-index.ts';
import type { RunState } from '../model/state.ts';
import type { Readings } from '../model/types.ts';
import { closeTimers, goOn, halt, putStep } from './change.ts';

type Body<K extends FactBody['kind']> = Extract<FactBody, { kind: K }>;

/** The wall clock is taken to be right when the run starts; what it does after is watched. */
export function applyRunStart(state: RunState, body: Body<'run-started'>, at: Readings): RunState {
  return {
    ...state,
    status: 'running',
    clock: {
      ...state.clock,
      anchor: at,
      doubt: false,
      claimS: 0,
      errorKnown: true,
      confirmed: body.clockRight === true,
    },
  };
}

export function applyPause(state: RunState): RunState {
  return halt(state, 'held', message('engine.because.paused'));
}

/** A person's word: from a review back to where it was, otherwise on. */
export function applyResume(state: RunState): RunState {
  if (state.status !== 'reviewing') return goOn(state);
  return leaveReview(state);
}

export function leaveReview(state: RunState): RunState {
  if (state.reviewFrom === 'running') return goOn(state);
  return { ...state, status: state.reviewFrom };
}

/** Everything hot is to be made safe; what is not hot settles in the same turn. */
export function applyClosing(state: RunState, body: Body<'closing-begun'>): RunState {
  const closing: RunState = {
    ...state,
    status: 'closing',
    closingAs: body.as,
    reason: body.reason,
    questions: [],
  };
  return unwindHot(closing, () => true, body.reason);
}

/** Sends every active step that matches and is hot into unwinding, to settle as stopped. */
export function unwindHot(
  state: RunState,
  match: (step: string) => boolean,
  reason: Message,
): RunState {
  let next = state;
  for (const [id, one] of Object.entries(state.steps)) {
    if (one.status !== 'active' || !match(id)) continue;
    if (!needsMakeSafe(stepOf(state.plan, id), one.stage)) continue;
    next = unwindStep(next, id, 'stopped', reason);
  }
  return next;
}

export function unwindStep(
  state: RunState,
  step: string,
  outcome: 'stopped' | 'failed',
  reason: Message,
): RunState {
  const unwinding = putStep(state, step, {
    status: 'unwinding',
    outcome,
    reason,
    safe: false,
    restart: NO_REASON,
  });
  const quiet = closeTimers(unwinding, (timer) => timer.step === step, true);
  return { ...quiet, questions: quiet.questions.filter((question) => question.step !== step) };
}

/** The stage in progress broke off: it begins again in this turn, or has failed where it cannot. */
export function breakOff(state: RunState, step: string, why: Message): RunState {
  const stage = stepOf(state.plan, step).stages[state.steps[step]?.stage ?? 0];
  return stage?.resumption === 'void'
    ? unwindStep(state, step, 'failed', message('engine.because.interrupted'))
    : putStep(state, step, { restart: why });
}

export function applyRunClosed(state: RunState, body: Body<'run-closed'>): RunState {
  return {
    ...state,
    timers: {},
    status: 'closed',
    closedAs: body.as,
    reason: body.reason,
  };
}
