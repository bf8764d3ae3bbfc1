import { message } from '../../messages/index.ts';
import type { Step } from '../../plan/index.ts';
import { stepOf } from '../model/plan-index.ts';
import type { Concluded, RunState } from '../model/state.ts';
import { elapsed } from '../model/elapsed-interval.ts';
import { coolingsAgain } from '../timers/cooling.ts';
import { creditedBy, forgetAnswer } from '../timers/clock-word.ts';
import { heatedAgoS } from '../timers/heated-ago.ts';
import type { Readings } from '../model/types.ts';
import type { FactBody } from '../model/facts.ts';
import { standingGaps } from '../rules/undone.ts';
import { changeTimers, known } from './change.ts';
import { breakOff } from './run.ts';
import { stopAndRenew } from './recheck.ts';
import { enterStage, renew } from './steps.ts';

/**
 * Takes the last answer about the clock back. A wait that ended only by what
 * it credited has not ended; what was done upon it will be done again (I-26).
 */
export function applyWithdrawal(state: RunState, at: Readings): RunState {
  const answer = state.clock.answers.at(-1)?.answer;
  if (answer === undefined) return state;
  const judged = Object.entries(state.concluded).map(([id, one]) => {
    const provedS = one.provedS - creditedBy(one.span, answer);
    return { id, one: { ...one, provedS }, stands: provedS >= one.lengthS };
  });
  const forgotten = forgetAnswer(state);
  let next: RunState = {
    ...coolingsAgain(forgotten, at),
    concluded: Object.fromEntries(
      judged
        .filter(({ stands }) => stands)
        .map(({ id, one }) => [id, { ...one, span: forgotten.concluded[id]?.span ?? one.span }]),
    ),
  };
  for (const { id, one, stands } of judged) {
    const { attempt } = known(next, one.step);
    if (stands || attempt !== one.attempt) continue;
    next = fallBack(next, { ...one, span: forgotten.concluded[id]?.span ?? one.span }, at);
  }
  return next;
}

/** The wait goes on where it was, unless what it guards has been heated since; then it begins again. */
function fallBack(state: RunState, fallen: Concluded, at: Readings): RunState {
  const step = stepOf(state.plan, fallen.step);
  let next = again(state, builtUpon(state, step));
  if (step.kind !== 'rest' && step.kind !== 'cool') return again(next, [step]);
  next = enterStage(renew(next, step.id, fallen.attempt + 1), step.id, 0, at);
  return heatedAgoS(state, step, at) >= elapsed(fallen.span, at).atLeastS
    ? changeTimers(
        next,
        (timer) => timer.step === step.id && timer.lengthS === fallen.lengthS,
        (timer) => ({ ...timer, span: fallen.span }),
      )
    : next;
}

/** What of these was begun is done again; what is hot is made safe first. */
function again(state: RunState, steps: readonly Step[]): RunState {
  let next = state;
  for (const step of steps) {
    const { status, attempt } = known(next, step.id);
    if (status === 'settled') next = renew(next, step.id, attempt + 1);
    else if (status !== 'waiting')
      next = stopAndRenew(next, step, message('engine.because.answer-withdrawn'));
  }
  return next;
}

/**
 * The work broke off in a gap after all. In the same stage it begins again;
 * once it has gone on from there, it is done again with all that rests upon it.
 */
export function applyReviewWithdrawal(
  state: RunState,
  { question }: Extract<FactBody, { kind: 'review-answer-withdrawn' }>,
): RunState {
  const gap = standingGaps(state).find(({ id }) => id === question);
  if (!gap) return state;
  const asked = {
    ...state,
    reviewed: state.reviewed.filter(({ id }) => id !== question),
    questions: state.questions.filter(({ step }) => step !== gap.step),
  };
  const one = known(state, gap.step);
  if (one.status === 'active' && one.stage === gap.stage)
    return breakOff(asked, gap.step, message('engine.because.broke-off'));
  const step = stepOf(state.plan, gap.step);
  return again(asked, [...builtUpon(asked, step), step]);
}

/** Steps of the same thing that come after this one by their needs, however far on. */
function builtUpon({ plan }: RunState, step: Step): readonly Step[] {
  const found = new Set([step.id]);
  for (let before = 0; before < found.size;) {
    before = found.size;
    for (const one of plan.steps)
      if (one.fixture === step.fixture && one.needs.some((need) => found.has(need.step)))
        found.add(one.id);
  }
  found.delete(step.id);
  return plan.steps.filter(({ id, kind }) => found.has(id) && kind !== 'cool');
}
