import { isSaid } from '../model/reason.ts';
import { dependentsOf } from '../model/plan-index.ts';
import type { Step } from '../../plan/index.ts';
import type { ReviewedGap, RunState } from '../model/state.ts';

/**
 * It is over, and neither done nor left out by a person with a reason: a fault
 * or a stop ended it. It comes back to be done again, or to be left out (I-22).
 * A cool-down measures what was heated and is no work of its own; a boil whose
 * water nobody waits for any more is not missing.
 */
export function isUndone(state: RunState, step: Step): boolean {
  const one = state.steps[step.id];
  if (one?.status !== 'settled' || step.kind === 'cool' || isSaid(one.renew)) return false;
  if (one.outcome === 'done' || one.outcome === 'skipped') return false;
  return step.kind !== 'boil' || waitedFor(state, step);
}

/**
 * Gaps of attempts that still stand: neither begun again since nor left out, so
 * that it would matter had the work broken off.
 */
export function standingGaps({ reviewed, steps }: RunState): readonly ReviewedGap[] {
  return reviewed.filter(({ step, attempt, round }) => {
    const one = steps[step];
    if (one?.attempt !== attempt || one.round !== round) return false;
    return one.status === 'active' || (one.status === 'settled' && one.outcome === 'done');
  });
}

function waitedFor(state: RunState, boil: Step): boolean {
  const pours = dependentsOf(state.plan, boil.id).filter(({ needs }) =>
    needs.some((need) => need.step === boil.id && need.withinS !== undefined),
  );
  const served = (pour: Step): boolean => {
    const outcome = state.steps[pour.id]?.outcome;
    return outcome === 'done' || outcome === 'skipped';
  };
  return pours.length === 0 || !pours.every(served);
}
