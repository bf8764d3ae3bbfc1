import { say } from '../../../context/language.ts';
import type { TimerView, FaultView, RunView, StepView } from '../../../../core/run/index.ts';
import { openGate } from '../step/main-action.ts';
import { fixtureName, sentenceOf, shortLabel } from '../step/step-text.ts';

/** What has been said already, so that nothing is said twice and nothing each second. */
export type Told = {
  readonly line: string;
  readonly alerts: ReadonlySet<string>;
  readonly faults: ReadonlySet<string>;
};

export const NOTHING_TOLD: Told = { line: '', alerts: new Set(), faults: new Set() };

function withStop(text: string): string {
  return /[.!?:]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`;
}

/** A clock that calls, in one short sentence. */
function alertLine(view: RunView, clock: TimerView): string {
  if (clock.role === 'carry') return 'The boiled water has waited too long: boil it again.';
  const name = fixtureName(view, clock.fixture);
  const of = name === '' ? '' : `${name}: `;
  const over = clock.role === 'hold' ? ': the time is over' : '';
  return withStop(`${of}${shortLabel(view, clock)}${over}`);
}

function faultLines(fault: FaultView): string {
  return [fault.name, ...fault.doThis].map(withStop).join(' ');
}

/** What the stage says just now: a question before it begins, or its sentence. */
function stageLine(view: RunView, step: StepView | undefined): string {
  if (view.status === 'reviewing')
    return ['Here is where you were.', view.review[0]?.ask ?? ''].join(' ').trim();
  if (view.status === 'closing') return 'Make these safe, then say so.';
  if (view.status !== 'running' && view.status !== 'held') return '';
  if (!step) return 'Nothing to do just now.';
  const gate = step.status === 'ready' ? openGate(step) : undefined;
  return gate && gate.value !== 'yes'
    ? `${gate.gate.signal}. ${withStop(say(gate.gate.ask))}`
    : withStop(sentenceOf(step));
}

/**
 * What to speak as the view changes: faults with what to do, clocks that call,
 * then the stage when its sentence is another one. Empty when there is nothing
 * new, and on a rest day always.
 */
export function promptOf(
  told: Told,
  view: RunView,
  step: StepView | undefined,
): { readonly told: Told; readonly say: string } {
  if (view.restDay || view.status === 'drafting' || view.status === 'closed')
    return { told, say: '' };
  const faults = view.faults.filter((fault) => !fault.cleared);
  const alerts = view.timers.filter((clock) => clock.alerting);
  const keyOf = (clock: TimerView): string => `${clock.id} ${clock.cause}`;
  const line = stageLine(view, step);
  const say = [
    ...faults.filter((fault) => !told.faults.has(fault.id)).map(faultLines),
    ...alerts
      .filter((clock) => !told.alerts.has(keyOf(clock)))
      .map((clock) => alertLine(view, clock)),
    ...(line !== told.line ? [line] : []),
  ];
  return {
    told: {
      line,
      alerts: new Set(alerts.map(keyOf)),
      faults: new Set(faults.map((fault) => fault.id)),
    },
    say: say.filter((one) => one !== '').join(' '),
  };
}

/** The whole of what holds now, for "say it again". */
export function promptAgain(view: RunView, step: StepView | undefined): string {
  return promptOf(NOTHING_TOLD, view, step).say;
}
