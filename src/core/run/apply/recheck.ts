import type { Step } from '../../plan/index.ts';
import type { FactBody } from '../model/facts.ts';
import { needsMakeSafe } from '../model/plan-index.ts';
import type { RunState } from '../model/state.ts';
import type { Readings } from '../model/types.ts';
import { closeTimers, known, putStep } from './change.ts';
import { unwindStep } from './run.ts';
import { enterStage, renew } from './steps.ts';

type Body<K extends FactBody['kind']> = Extract<FactBody, { kind: K }>;

const LATER: ReadonlySet<Step['phase']> = new Set(['purge', 'cool', 'cover', 'mark']);

/**
 * A fixture was used or touched: its rest begins again at once, as a new
 * attempt, and everything of that fixture that comes after the rest will be
 * done again (I-17). What is hot just now is made safe first. A cool-down that
 * is going on stays: the thing is hot whatever was doubted.
 */
export function applyRecheck(
  state: RunState,
  body: Body<'recheck-reported'>,
  at: Readings,
): RunState {
  let next = state;
  for (const step of doubted(state, body.fixture)) {
    const one = known(next, step.id);
    if (one.status === 'waiting') continue;
    if (step.kind === 'cool' && one.status === 'active') {
      next = putStep(next, step.id, { renew: body.text });
      continue;
    }
    next =
      one.status === 'settled'
        ? renew(next, step.id, one.attempt + 1)
        : stopAndRenew(next, step, body.text);
  }
  for (const step of state.plan.steps) {
    if (step.kind !== 'rest' || step.fixture !== body.fixture) continue;
    if (known(next, step.id).status === 'waiting') continue;
    const attempt = known(next, step.id).attempt + 1;
    next = enterStage(renew(next, step.id, attempt), step.id, 0, at);
  }
  return next;
}

function stopAndRenew(state: RunState, step: Step, reason: string): RunState {
  const one = known(state, step.id);
  if (one.status === 'unwinding') return putStep(state, step.id, { renew: reason });
  if (needsMakeSafe(step, one.stage)) {
    return putStep(unwindStep(state, step.id, 'stopped', reason), step.id, { renew: reason });
  }
  const quiet = closeTimers(state, (timer) => timer.step === step.id, true);
  return renew(
    { ...quiet, questions: quiet.questions.filter((question) => question.step !== step.id) },
    step.id,
    one.attempt + 1,
  );
}

/** Later steps of the fixture, and what had to be done shortly before them (boiling). */
function doubted(state: RunState, fixture: string): readonly Step[] {
  const later = state.plan.steps.filter(
    (step) => step.fixture === fixture && LATER.has(step.phase) && step.kind !== 'rest',
  );
  const before = new Set(
    later
      .filter((step) => known(state, step.id).status !== 'waiting')
      .flatMap((step) => step.needs.filter((need) => need.withinS !== undefined))
      .map((need) => need.step),
  );
  return [
    ...later,
    ...state.plan.steps.filter((step) => before.has(step.id) && !later.includes(step)),
  ];
}
