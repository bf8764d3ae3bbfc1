import type { Need, Step } from '../../plan/index.ts';
import { needsOf } from '../model/plan-index.ts';
import type { RunState } from '../model/state.ts';
import { carryId, isDue } from '../timers/timer.ts';
import type { Readings } from '../model/types.ts';

/**
 * - `open`: the needed step has not settled;
 * - `undone`: it settled, but neither done nor skipped: repeat or skip it;
 * - `left-out`: it was skipped, and boils no water for what must follow it closely (I-23);
 * - `late`: done too long ago (boiled water that cooled): repeat it.
 */
export type NeedProblem = {
  readonly need: Need;
  readonly why: 'open' | 'undone' | 'left-out' | 'late';
};

function problemOf(state: RunState, step: Step, need: Need, now: Readings): NeedProblem | null {
  const needed = state.steps[need.step];
  if (!needed || needed.status !== 'settled') return { need, why: 'open' };
  // A cool-down follows whatever became of the heating.
  if (step.kind === 'cool') return null;
  if (needed.outcome === 'skipped')
    return need.withinS === undefined ? null : { need, why: 'left-out' };
  if (needed.outcome !== 'done') return { need, why: 'undone' };
  if (need.withinS === undefined) return null;
  const attempt = state.steps[step.id]?.attempt ?? 1;
  const carry = state.timers[carryId(step.id, attempt, need.step, needed.attempt)];
  return carry && carry.mode === 'running' && !isDue(carry, now) && !carry.announced
    ? null
    : { need, why: 'late' };
}

/** Everything that keeps a step from its turn (I-11, I-17). */
export function unmetNeeds(state: RunState, step: Step, now: Readings): readonly NeedProblem[] {
  const problems: NeedProblem[] = [];
  for (const need of needsOf(state.plan, step.id)) {
    const problem = problemOf(state, step, need, now);
    if (problem) problems.push(problem);
  }
  return problems;
}

/** May a chained step start by itself? Cool-downs when any heating was begun, the rest when all is done. */
export function chainIsDue(state: RunState, step: Step): boolean {
  if (step.startsBy !== 'chain' || state.steps[step.id]?.status !== 'waiting') return false;
  const needed = step.needs.map((need) => state.steps[need.step]);
  if (!needed.every((one) => one?.status === 'settled')) return false;
  return step.kind === 'cool'
    ? needed.length === 0 || needed.some((one) => one?.begun)
    : needed.every((one) => one?.outcome === 'done');
}

/** A cool-down of something that was never heated has nothing to do. */
export function chainIsIdle(state: RunState, step: Step): boolean {
  if (step.startsBy !== 'chain' || step.kind !== 'cool' || step.needs.length === 0) return false;
  if (state.steps[step.id]?.status !== 'waiting') return false;
  const needed = step.needs.map((need) => state.steps[need.step]);
  return needed.every((one) => one?.status === 'settled' && !one.begun);
}
