import { inEnglish } from '../../messages/temporary.ts';
import type { Step } from '../../plan/index.ts';
import type { RunState } from '../model/state.ts';
import type { Request } from '../model/types.ts';
import { addedProblem, cycleThrough, replacedProblem } from './amend-guards.ts';
import { accept, refuse, type Decision } from './refusal.ts';

/** What an amended step names that nothing in the plan or the amendment answers to. */
function danglingIn(state: RunState, step: Step, steps: ReadonlySet<string>): string | undefined {
  const need = step.needs.find((one) => !steps.has(one.step));
  if (need) return `needs "${need.step}", which is no step`;
  const resource = Object.keys(step.demands).find(
    (id) => !state.plan.resources.some((one) => one.id === id),
  );
  if (resource) return `demands "${resource}", which is no resource`;
  const gate = step.gates.find((id) => !state.plan.gates.some((one) => one.id === id));
  return gate ? `names the gate "${gate}", which does not exist` : undefined;
}

/** Why one step of an amendment cannot be taken. */
function stepProblem(state: RunState, step: Step, ids: ReadonlySet<string>): Decision | null {
  const before = state.plan.steps.find(({ id }) => id === step.id);
  if (before && state.steps[step.id]?.status !== 'waiting') {
    return refuse(
      'already-begun',
      `“${inEnglish(before.title)}” has begun; only what has not can change.`,
    );
  }
  const dangling = danglingIn(state, step, ids);
  if (dangling) return refuse('bad-amendment', `Step "${step.id}" ${dangling}.`);
  const problem = before ? replacedProblem(before, step) : addedProblem(state.plan, step);
  return problem ? { refusal: problem } : null;
}

/**
 * Replaces steps that have not begun and adds new ones. Nothing begun is
 * touched, and nothing that guards the work can be taken out: a replaced step
 * keeps its work, gates, cautions, needs, stages, waits and limits; an added
 * one carries those of its siblings (same fixture and kind).
 */
export function amendPlan(
  state: RunState,
  asked: Extract<Request, { kind: 'amend-plan' }>,
): Decision {
  if (asked.reason.trim() === '') {
    return refuse('reason-missing', 'Say why the plan is changed; it goes into the record.');
  }
  if (asked.steps.length === 0) {
    return refuse('bad-amendment', 'The amendment has no step; allowed: one or more.');
  }
  const amended = new Set(asked.steps.map(({ id }) => id));
  if (amended.size < asked.steps.length) {
    return refuse('bad-amendment', 'The amendment names a step twice; allowed: once.');
  }
  const ids = new Set([...Object.keys(state.steps), ...amended]);
  for (const step of asked.steps) {
    const problem = stepProblem(state, step, ids);
    if (problem) return problem;
  }
  const circle = cycleThrough(state.plan, asked.steps);
  if (circle !== undefined) {
    return refuse('amendment-cycle', `Step "${circle}" would need itself; no order is left.`);
  }
  const { startS, reason } = asked;
  return accept({ kind: 'plan-amended', steps: asked.steps, startS, reason });
}
