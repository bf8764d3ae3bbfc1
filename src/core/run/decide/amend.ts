import { isSaid } from '../model/reason.ts';
import { message, type Message } from '../../messages/index.ts';
import type { Step } from '../../plan/index.ts';
import type { RunState } from '../model/state.ts';
import type { Request } from '../model/types.ts';
import { addedProblem, cycleThrough, replacedProblem } from './amend-guards.ts';
import { shapeProblem, startsProblem } from './amend-shape.ts';
import { accept, refuse, type Decision } from './refusal.ts';

/** What an amended step names that nothing in the plan or the amendment answers to. */
function danglingIn(state: RunState, step: Step, steps: ReadonlySet<string>): Message | undefined {
  const need = step.needs.find((one) => !steps.has(one.step));
  if (need) return message('engine.amend.no-need', { id: step.id, need: need.step });
  const resource = Object.keys(step.demands).find(
    (id) => !state.plan.resources.some((one) => one.id === id),
  );
  if (resource) return message('engine.amend.no-resource', { id: step.id, resource });
  const gate = step.gates.find((id) => !state.plan.gates.some((one) => one.id === id));
  return gate ? message('engine.amend.no-gate', { id: step.id, gate }) : undefined;
}

/** Why one step of an amendment cannot be taken. */
function stepProblem(state: RunState, step: Step, ids: ReadonlySet<string>): Decision | null {
  const before = state.plan.steps.find(({ id }) => id === step.id);
  if (before && state.steps[step.id]?.status !== 'waiting') {
    return refuse('already-begun', message('engine.amend.begun', { step: before.title }));
  }
  const shape = shapeProblem(step);
  if (shape) return refuse('bad-amendment', shape);
  const dangling = danglingIn(state, step, ids);
  if (dangling) return refuse('bad-amendment', dangling);
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
  if (!isSaid(asked.reason)) {
    return refuse('reason-missing', message('engine.reason.amend'));
  }
  if (asked.steps.length === 0) {
    return refuse('bad-amendment', message('engine.amend.empty'));
  }
  const amended = new Set(asked.steps.map(({ id }) => id));
  if (amended.size < asked.steps.length) {
    return refuse('bad-amendment', message('engine.amend.twice'));
  }
  const ids = new Set([...Object.keys(state.steps), ...amended]);
  const starts = startsProblem(asked.startS, ids);
  if (starts) return refuse('bad-amendment', starts);
  for (const step of asked.steps) {
    const problem = stepProblem(state, step, ids);
    if (problem) return problem;
  }
  const circle = cycleThrough(state.plan, asked.steps);
  if (circle !== undefined) {
    return refuse('amendment-cycle', message('engine.amend.cycle', { id: circle }));
  }
  const { startS, reason } = asked;
  return accept({ kind: 'plan-amended', steps: asked.steps, startS, reason });
}
