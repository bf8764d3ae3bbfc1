import { message, type Message } from '../../../../core/messages/index.ts';
import type { FaultView, RunView, StepView, TimerView } from '../../../../core/run/index.ts';
import { openGate } from '../step/main-action.ts';
import { sentenceOf } from '../step/step-text.ts';
import { namedTimer } from '../timers/timer-messages.ts';

/** What has been said already, so that nothing is said twice and nothing each second. */
export type Told = {
  /** The line about the step, as data. */
  readonly line: string;
  readonly alerts: ReadonlySet<string>;
  readonly faults: ReadonlySet<string>;
};

export const NOTHING_TOLD: Told = { line: '', alerts: new Set(), faults: new Set() };

/** A timer that calls, in one short sentence. */
function alertLine(view: RunView, timer: TimerView): Message {
  if (timer.role === 'freshness') return message('run.voice.water-waited');
  const over = timer.role === 'hold';
  return message(over ? 'run.voice.timer-over' : 'run.voice.timer', {
    timer: namedTimer(view, timer),
  });
}

function faultLines({ name, doThis }: FaultView): Message {
  return message('run.voice.fault', { fault: name, doThis });
}

/** What the screen says just now: a question before a step begins, or its sentence. */
function stepLines(view: RunView, step: StepView | undefined): readonly Message[] {
  switch (view.status) {
    case 'reviewing':
      return [message('run.voice.review'), ...(view.review[0] ? [view.review[0].ask] : [])];
    case 'closing':
      return [message('run.voice.closing')];
    case 'running':
    case 'held': {
      if (!step) return [message('run.voice.quiet')];
      const gate = step.status === 'ready' ? openGate(step) : undefined;
      if (!gate || gate.value === 'yes')
        return [message('run.voice.sentence', { sentence: sentenceOf(step) })];
      const signal = message(`common.signal.${gate.gate.signal}`);
      return [message('run.voice.gate', { signal, ask: gate.gate.ask })];
    }
    default:
      return [];
  }
}

/**
 * What to speak as the view changes: faults with what to do, timers that call,
 * then the step when its sentence is another one. Empty when there is nothing
 * new, and on a rest day always.
 */
export function promptOf(
  told: Told,
  view: RunView,
  step: StepView | undefined,
): { readonly told: Told; readonly says: readonly Message[] } {
  if (view.restDay || view.status === 'drafting' || view.status === 'closed')
    return { told, says: [] };
  const faults = view.faults.filter((fault) => !fault.cleared);
  const alerts = view.timers.filter((timer) => timer.alerting);
  const keyOf = (timer: TimerView): string => `${timer.id} ${timer.cause}`;
  const lines = stepLines(view, step);
  const line = JSON.stringify(lines);
  return {
    told: {
      line,
      alerts: new Set(alerts.map(keyOf)),
      faults: new Set(faults.map((fault) => fault.id)),
    },
    says: [
      ...faults.filter((fault) => !told.faults.has(fault.id)).map(faultLines),
      ...alerts
        .filter((timer) => !told.alerts.has(keyOf(timer)))
        .map((timer) => alertLine(view, timer)),
      ...(line === told.line ? [] : lines),
    ],
  };
}

/** The whole of what holds now, for "say it again". */
export function promptAgain(view: RunView, step: StepView | undefined): readonly Message[] {
  return promptOf(NOTHING_TOLD, view, step).says;
}
