import { message, type Message } from '../../../../core/messages/index.ts';
import type {
  TimerView,
  GateView,
  Request,
  RunView,
  StepView,
} from '../../../../core/run/index.ts';
import { t } from '../../../context/language.ts';

/**
 * The one thing to do now. `wait` says what is being waited for when there is
 * nothing to press.
 */
export type MainAction =
  | {
      readonly kind: 'press';
      readonly label: Message;
      readonly request: Request;
      readonly urgent: boolean;
    }
  | { readonly kind: 'gate'; readonly gate: GateView }
  | { readonly kind: 'wait'; readonly label: Message };

/** The timer of a step that belongs in the huge digits: what is due first, then what is waited for. */
export function leadTimer(step: StepView): TimerView | undefined {
  const order = ['hold', 'estimate', 'freshness', 'limit', 'reminder'];
  const open = step.timers.filter(
    ({ status, role, alerting }) =>
      status !== 'closed' &&
      status !== 'void' &&
      // Water on the fire is not poured: how long it may wait is no hurry while nothing is due.
      (alerting || role !== 'freshness' || step.step.kind === 'pour'),
  );
  return (
    open.find((timer) => timer.alerting) ??
    open.toSorted((a, b) => order.indexOf(a.role) - order.indexOf(b.role))[0]
  );
}

/** The first gate of a step that is not answered yes. */
export function openGate(step: StepView): GateView | undefined {
  return step.gates.find((gate) => gate.value !== 'yes' || gate.settlesInS > 0);
}

function alertToAnswer(step: StepView): TimerView | undefined {
  return step.timers.find((timer) => timer.alerting);
}

/** What the big button says and asks for this step in this state of the run. */
export function mainAction(view: RunView, step: StepView): MainAction {
  const alert = alertToAnswer(step);
  if (alert && !step.canConfirm)
    return {
      kind: 'press',
      label: message(alert.role === 'reminder' ? 'run.action.looked' : 'run.action.heard'),
      request: { kind: 'acknowledge-timer', timer: alert.id },
      urgent: true,
    };
  const begun = step.status === 'active' || step.status === 'checking';
  // Paused work goes on: it is answered and ended as ever; only nothing new begins.
  if (view.status === 'held' && !(begun && step.canConfirm))
    return {
      kind: 'press',
      label: message('run.resume'),
      request: { kind: 'resume' },
      urgent: false,
    };
  if (begun) return activeAction(step);
  if (step.status === 'stalled') {
    const boil = step.step.needs.find((need) => need.withinS !== undefined);
    if (boil)
      return {
        kind: 'press',
        label: message('run.action.boil-again'),
        request: {
          kind: 'repeat-step',
          step: boil.step,
          reason: t('run.action.boil-again.reason'),
        },
        urgent: true,
      };
  }
  if (step.status === 'settled' && step.again)
    return {
      kind: 'press',
      label: message('run.action.again'),
      request: { kind: 'repeat-step', step: step.step.id, reason: t('run.action.again.reason') },
      urgent: false,
    };
  const gate = openGate(step);
  if (gate && step.status === 'ready') return { kind: 'gate', gate };
  if (step.status === 'ready' && step.blockedBy.length === 0)
    return {
      kind: 'press',
      label: message('run.action.begin'),
      request: { kind: 'start-step', step: step.step.id },
      urgent: false,
    };
  return { kind: 'wait', label: step.blockedBy[0] ?? message('run.action.not-yet') };
}

function activeAction(step: StepView): MainAction {
  const stage = step.step.stages[step.stage];
  if (!stage) return { kind: 'wait', label: message('run.action.not-yet') };
  if (stage.say && step.canConfirm)
    return {
      kind: 'press',
      label: stage.say,
      request: { kind: 'confirm', step: step.step.id, stage: stage.id },
      urgent: step.status === 'checking',
    };
  const hold = step.timers.find((timer) => timer.role === 'hold' && timer.leftS > 0);
  if (hold) return { kind: 'wait', label: message('run.action.timer-ends') };
  return { kind: 'wait', label: step.blockedBy[0] ?? message('run.action.waiting') };
}
