import type { Step } from '../../plan/index.ts';
import type { RunState } from '../state.ts';
import type { Request } from '../types.ts';
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

/**
 * Replaces steps that have not begun and adds new ones. Nothing begun is
 * touched, and nothing that guards a step can be taken out: its rest, its
 * gates and its resources must all be there.
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
  const steps = new Set([...Object.keys(state.steps), ...asked.steps.map(({ id }) => id)]);
  for (const step of asked.steps) {
    const before = state.plan.steps.find(({ id }) => id === step.id);
    const known = state.steps[step.id];
    if (before && (known?.begun || known?.status !== 'waiting')) {
      return refuse('already-begun', `“${before.title}” has begun; only what has not can change.`);
    }
    if (before && before.gates.some((gate) => !step.gates.includes(gate))) {
      return refuse('bad-amendment', `The amendment takes a gate away from “${before.title}”.`);
    }
    const dangling = danglingIn(state, step, steps);
    if (dangling) return refuse('bad-amendment', `Step "${step.id}" ${dangling}.`);
  }
  const { startS, reason } = asked;
  return accept({ kind: 'plan-amended', steps: asked.steps, startS, reason });
}
