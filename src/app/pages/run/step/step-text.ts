import type { Message } from '../../../../core/messages/index.ts';
import type { RunView, StepView } from '../../../../core/run/index.ts';

/** The one sentence of a step: of the stage in progress, or of the step when it has not begun. */
export function sentenceOf(step: StepView): Message {
  const begun = step.status === 'active' || step.status === 'checking';
  const stage = begun ? step.step.stages[step.stage] : undefined;
  return (stage ?? step.step).title;
}

/** Name of a fixture, as the kitchen has it; undefined for what is of no fixture. */
export function fixtureName(view: RunView, fixture: string | undefined): string | undefined {
  return view.plan.kitchen.fixtures.find((f) => f.id === fixture)?.name;
}
