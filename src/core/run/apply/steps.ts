import { NO_REASON } from '../model/reason.ts';
import { message, type Message } from '../../messages/index.ts';
import type { Step, TimerSpec } from '../../plan/index.ts';
import type { FactBody } from '../model/facts.ts';
import {
  coldStage,
  dependentsOf,
  owesCold,
  stageNumber,
  stageOf,
  stepOf,
} from '../model/plan-index.ts';
import type { RunState } from '../model/state.ts';
import { elapsed } from '../model/elapsed-interval.ts';
import { carryId, isHold, startStageTimers, startTimer } from '../timers/timer.ts';
import type { Readings } from '../model/types.ts';
import { clockBase } from '../timers/unproved-time.ts';
import { freshStep } from './begin.ts';
import { closeTimers, hear, known, ofStep, putStep, putTimers } from './change.ts';
import { poursFrom } from '../rules/boiled-water.ts';
import { heatByStep } from './heated.ts';
import { unwindStep } from './run.ts';

type Body<K extends FactBody['kind']> = Extract<FactBody, { kind: K }>;

/** Puts a step into stage number `stage` and starts its clocks; past the last stage only the number moves. */
export function enterStage(state: RunState, step: string, stage: number, at: Readings): RunState {
  const next = putStep(state, step, {
    status: 'active',
    stage,
    begun: true,
    ...(stage === 0 && { begunWallMs: at.wallMs }),
    restart: NO_REASON,
  });
  const plan = stepOf(state.plan, step);
  const entered = stageOf(plan, stage);
  if (!entered) return next;
  const timers = startStageTimers(plan, known(next, step), entered, at, clockBase(state.clock));
  return putTimers(next, timers);
}

export function applyStart(state: RunState, body: Body<'step-started'>, at: Readings): RunState {
  const carriesUsed = poursFrom(stepOf(state.plan, body.step), 0)
    ? state
    : closeCarries(state, body.step);
  const needed = stepOf(state.plan, body.step).needs.map((need) => need.step);
  const heard =
    body.by === 'person' ? hear(carriesUsed, (timer) => needed.includes(timer.step)) : carriesUsed;
  return heatByStep(enterStage(heard, body.step, 0, at), body.step, at);
}

/** Ends the stage in progress; a person's word also answers its alerts, a clock's does not. */
export function applyStageEnd(state: RunState, body: Body<'stage-ended'>, at: Readings): RunState {
  const closed = closeTimers(
    conclude(state, body.step, at),
    (timer) => ofStep(body.step)(timer) && timer.spec.role === 'hold',
    body.by === 'person',
  );
  const quiet = closeTimers(closed, ofStep(body.step), true);
  const heard = body.by === 'person' ? hear(quiet, ofStep(body.step)) : quiet;
  const next = known(state, body.step).stage + 1;
  const poured = poursFrom(stepOf(state.plan, body.step), next)
    ? heard
    : closeCarries(heard, body.step);
  const entered = enterStage(poured, body.step, next, at);
  return heatByStep(entered, body.step, at);
}

/** Keeps the waits of the stage in progress that rest on a person's word about the clock. */
function conclude(state: RunState, step: string, at: Readings): RunState {
  const ended = Object.values(state.timers).filter(
    (timer) =>
      timer.mode === 'running' &&
      ofStep(step)(timer) &&
      isHold(timer) &&
      timer.span.told.some(({ atLeastS }) => atLeastS > 0),
  );
  if (ended.length === 0) return state;
  const concluded = Object.fromEntries(
    ended.map(({ id, attempt, stage, lengthS, span }) => [
      id,
      { step, attempt, stage, lengthS, provedS: elapsed(span, at).atLeastS, span },
    ]),
  );
  return { ...state, concluded: { ...state.concluded, ...concluded } };
}

export function applyRestart(
  state: RunState,
  body: Body<'stage-restarted'>,
  at: Readings,
): RunState {
  const round = known(state, body.step).round + 1;
  const quiet = closeTimers(state, ofStep(body.step), true);
  const stage = Math.max(0, stageNumber(stepOf(state.plan, body.step), body.stage));
  return enterStage(putStep(quiet, body.step, { round }), body.step, stage, at);
}

/** Its water is out, or not needed: how old it is no longer matters. */
function closeCarries(state: RunState, step: string): RunState {
  return closeTimers(state, (timer) => timer.step === step && timer.stage === '', true);
}

export function applyUnwinding(state: RunState, body: Body<'step-unwinding'>): RunState {
  const unwinding = unwindStep(
    state,
    body.step,
    body.outcome === 'failed' ? 'failed' : 'stopped',
    body.reason,
  );
  return body.renew === undefined ? unwinding : boilAgain(unwinding, body.step, body.renew);
}

/** The step will be done again with water boiled anew. */
function boilAgain(state: RunState, step: string, why: Message): RunState {
  let next = putStep(state, step, { renew: why });
  for (const { step: boil, withinS } of stepOf(state.plan, step).needs)
    if (withinS !== undefined) next = renew(next, boil, known(next, boil).attempt + 1);
  return next;
}

export function applySafe(state: RunState, body: Body<'safe-confirmed'>, at: Readings): RunState {
  return heatByStep(putStep(state, body.step, { safe: true }), body.step, at);
}

/**
 * Settles an attempt, once. A pour settles as done only after its last stage,
 * and in no other way before its cold water was confirmed (I-18).
 * @throws RangeError when that does not hold
 */
export function applySettled(state: RunState, body: Body<'step-settled'>, at: Readings): RunState {
  const before = known(state, body.step);
  const plan = stepOf(state.plan, body.step);
  if (before.status === 'settled' || before.attempt !== body.attempt) {
    throw new RangeError(
      `step ${body.step} attempt ${body.attempt} is settled twice; allowed: once. Check the journal.`,
    );
  }
  const coldOwed =
    before.status !== 'waiting' &&
    ((body.outcome === 'done' && plan.kind === 'pour' && before.stage <= coldStage(plan)) ||
      (owesCold(plan, before.stage) && !before.safe));
  if (coldOwed) {
    throw new RangeError(
      `step ${body.step} settles before its cold water was confirmed; allowed: after. Check the journal.`,
    );
  }
  const settled = putStep(state, body.step, {
    status: 'settled',
    outcome: body.outcome,
    reason: body.reason,
    restart: NO_REASON,
  });
  const quiet = closeTimers(settled, (timer) => timer.step === body.step, body.outcome !== 'done');
  const unasked = {
    ...quiet,
    questions: quiet.questions.filter((question) => question.step !== body.step),
  };
  return body.outcome === 'done' ? startCarries(unasked, body.step, at) : unasked;
}

/** Time that runs away is not time to wait. */
function withinLabel({ kind, title }: Step): Message {
  return kind === 'boil'
    ? message('engine.step.pour-now')
    : message('engine.step.use-within', { step: title });
}

/** What was just done waits for those who must start within a time of it. */
function startCarries(state: RunState, needed: string, at: Readings): RunState {
  let next = state;
  for (const dependent of dependentsOf(state.plan, needed)) {
    const withinS = dependent.needs.find((need) => need.step === needed)?.withinS;
    const one = known(state, dependent.id);
    if (withinS === undefined || one.status !== 'waiting') continue;
    const spec: TimerSpec = {
      id: needed,
      role: 'freshness',
      purpose: 'at-most',
      lengthS: withinS,
      label: withinLabel(stepOf(state.plan, needed)),
    };
    const id = carryId(dependent.id, one.attempt, needed, known(state, needed).attempt);
    next = putTimers(next, [
      startTimer(id, dependent.id, one.attempt, '', spec, at, clockBase(state.clock)),
    ]);
  }
  return next;
}

/** A new attempt, waiting; what the old one handed on no longer counts. */
export function applyRepeat(state: RunState, body: Body<'step-repeated'>): RunState {
  return renew(state, body.step, body.attempt);
}

export function renew(state: RunState, step: string, attempt: number): RunState {
  const fresh = { ...state, steps: { ...state.steps, [step]: freshStep(attempt) } };
  // What the old attempt still calls for is no longer so.
  return closeTimers(
    hear(fresh, ofStep(step)),
    (timer) => timer.step === step || (timer.stage === '' && timer.spec.id === step),
    true,
  );
}
