import { say } from '../../../context/language.ts';
import type {
  TimerView,
  GateView,
  Request,
  RunView,
  StepView,
} from '../../../../core/run/index.ts';

/**
 * The one thing to do now. `wait` says what is being waited for when there is
 * nothing to press.
 */
export type MainAction =
  | {
      readonly kind: 'press';
      readonly label: string;
      readonly request: Request;
      readonly urgent: boolean;
    }
  | { readonly kind: 'gate'; readonly gate: GateView }
  | { readonly kind: 'wait'; readonly label: string };

/** The clock of a step that belongs in the huge digits: what is due first, then what is waited for. */
export function leadTimer(step: StepView): TimerView | undefined {
  const order = ['hold', 'estimate', 'carry', 'limit', 'reminder'];
  const open = step.timers.filter((clock) => clock.status !== 'closed' && clock.status !== 'void');
  return (
    open.find((clock) => clock.alerting) ??
    open.toSorted((a, b) => order.indexOf(a.role) - order.indexOf(b.role))[0]
  );
}

/** The first gate of a step that is not answered yes. */
export function openGate(step: StepView): GateView | undefined {
  return step.gates.find((gate) => gate.value !== 'yes' || gate.settlesInS > 0);
}

function alertToAnswer(step: StepView): TimerView | undefined {
  return step.timers.find((clock) => clock.alerting);
}

/** What the big button says and asks for this step in this state of the run. */
export function mainAction(view: RunView, step: StepView): MainAction {
  const alert = alertToAnswer(step);
  if (alert && !step.canConfirm)
    return {
      kind: 'press',
      label: alert.role === 'reminder' ? 'I looked, all is well' : 'I heard it',
      request: { kind: 'acknowledge-timer', timer: alert.id },
      urgent: true,
    };
  const begun = step.status === 'active' || step.status === 'checking';
  // Paused work goes on: it is answered and ended as ever; only nothing new begins.
  if (view.status === 'held' && !(begun && step.canConfirm))
    return { kind: 'press', label: 'Go on', request: { kind: 'resume' }, urgent: false };
  if (begun) return activeAction(step);
  if (step.status === 'stalled') {
    const boil = step.step.needs.find((need) => need.withinS !== undefined);
    if (boil)
      return {
        kind: 'press',
        label: 'Boil this kettle again',
        request: {
          kind: 'repeat-step',
          step: boil.step,
          reason: 'The boiled water waited too long.',
        },
        urgent: true,
      };
  }
  const gate = openGate(step);
  if (gate && step.status === 'ready') return { kind: 'gate', gate };
  if (step.status === 'ready' && step.blockedBy.length === 0)
    return {
      kind: 'press',
      label: 'Begin',
      request: { kind: 'start-step', step: step.step.id },
      urgent: false,
    };
  return { kind: 'wait', label: step.blockedBy[0] ?? 'Not yet' };
}

function activeAction(step: StepView): MainAction {
  const stage = step.step.stages[step.stage];
  if (!stage) return { kind: 'wait', label: 'Not yet' };
  if (stage.say && step.canConfirm)
    return {
      kind: 'press',
      label: say(stage.say),
      request: { kind: 'confirm', step: step.step.id, stage: stage.id },
      urgent: step.status === 'checking',
    };
  const hold = step.timers.find((clock) => clock.role === 'hold' && clock.leftS > 0);
  if (hold) return { kind: 'wait', label: 'The clock ends this by itself; you will be called.' };
  return { kind: 'wait', label: step.blockedBy[0] ?? 'Waiting' };
}

/**
 * Which step stands on the stage. The one a person works on stays until it is
 * over; only an alert, or a person's choice, puts another in its place.
 */
export function currentStep(
  view: RunView,
  chosen: string | undefined,
  before: string | undefined,
): StepView | undefined {
  const first = view.currentSteps[0];
  const of = (id: string | undefined) => view.currentSteps.find((s) => s.step.id === id);
  const picked = of(chosen);
  if (picked) return picked;
  if (first?.timers.some((clock) => clock.alerting)) return first;
  const kept = of(before);
  const busy = kept !== undefined && ['active', 'checking'].includes(kept.status);
  return busy && kept.canConfirm ? kept : first;
}
