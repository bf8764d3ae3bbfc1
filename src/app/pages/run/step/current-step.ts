import type { RunView, StepView } from '../../../../core/run/index.ts';

/** A step that a person took up, in the state in which they did. */
export type ChosenStep = { readonly id: string; readonly state: string };

/** Changes with whatever ends a choice: the step begins, goes on to its next stage, is over, or is repeated. */
function stateOf({ status, stage, attempt }: StepView): string {
  return `${status} ${stage} ${attempt}`;
}

/** The choice of a step as it is now; none when it cannot be shown. */
export function chooseStep(view: RunView, id: string | undefined): ChosenStep | undefined {
  const step = view.currentSteps.find((one) => one.step.id === id);
  return step && { id: step.step.id, state: stateOf(step) };
}

/**
 * Which step is shown. The one a person works on stays until it is over; only
 * an alert, or a person's choice, puts another in its place. A choice has done
 * its work once it is acted on.
 */
export function currentStep(
  view: RunView,
  chosen: ChosenStep | undefined,
  before: string | undefined,
): StepView | undefined {
  const first = view.currentSteps[0];
  const of = (id: string | undefined) => view.currentSteps.find((s) => s.step.id === id);
  const picked = of(chosen?.id);
  if (picked && stateOf(picked) === chosen?.state) return picked;
  if (first?.timers.some((timer) => timer.alerting)) return first;
  const kept = of(before);
  const busy = kept !== undefined && ['active', 'checking'].includes(kept.status);
  return busy && kept.canConfirm ? kept : first;
}
