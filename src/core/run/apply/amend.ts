import type { FactBody } from '../model/facts.ts';
import type { RunState } from '../model/state.ts';
import { freshStep } from './begin.ts';

/** The plan of the run with some steps replaced and some added; those added wait. */
export function applyAmendment(
  state: RunState,
  body: Extract<FactBody, { kind: 'plan-amended' }>,
): RunState {
  const amended = new Map(body.steps.map((step) => [step.id, step]));
  const known = new Set(state.plan.steps.map(({ id }) => id));
  const added = body.steps.filter(({ id }) => !known.has(id));
  return {
    ...state,
    plan: {
      ...state.plan,
      steps: [...state.plan.steps.map((step) => amended.get(step.id) ?? step), ...added],
      timetable: {
        ...state.plan.timetable,
        startS: { ...state.plan.timetable.startS, ...body.startS },
      },
    },
    steps: {
      ...state.steps,
      ...Object.fromEntries(added.map((step) => [step.id, freshStep(1)])),
    },
  };
}
