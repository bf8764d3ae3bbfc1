import type { TimerView, RunView, StepView } from '../../../../core/run/index.ts';

/** The stage's one sentence: of the stage in progress, or of the step when it has not begun. */
export function sentenceOf(step: StepView): string {
  const begun = step.status === 'active' || step.status === 'checking';
  return (begun ? step.step.stages[step.stage]?.title : undefined) ?? step.step.title;
}

export function fixtureName(view: RunView, fixture: string | undefined): string {
  return view.plan.kitchen.fixtures.find((f) => f.id === fixture)?.name ?? '';
}

/** The label of a clock without the name that stands beside it. */
export function shortLabel(view: RunView, clock: TimerView): string {
  const name = fixtureName(view, clock.fixture);
  return name === '' ? clock.label : clock.label.replace(`: ${name}`, '');
}
