import { say } from '../../../context/language.ts';
import type { TimerView, RunView, StepView } from '../../../../core/run/index.ts';

/** The stage's one sentence: of the stage in progress, or of the step when it has not begun. */
export function sentenceOf(step: StepView): string {
  const begun = step.status === 'active' || step.status === 'checking';
  const stage = begun ? step.step.stages[step.stage] : undefined;
  return say((stage ?? step.step).title);
}

export function fixtureName(view: RunView, fixture: string | undefined): string {
  return view.plan.kitchen.fixtures.find((f) => f.id === fixture)?.name ?? '';
}

/** The label of a clock without the name that stands beside it. */
export function shortLabel(view: RunView, clock: TimerView): string {
  const name = fixtureName(view, clock.fixture);
  return name === '' ? clock.label : clock.label.replace(`: ${name}`, '');
}
