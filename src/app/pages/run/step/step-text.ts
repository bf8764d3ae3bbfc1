import { aheadTold, untilTold, type Message } from '../../../../core/messages/index.ts';
import type { RunView, StepView, TimerView } from '../../../../core/run/index.ts';
import { MS_PER_SECOND } from '../../../../core/units/index.ts';
import { say, t } from '../../../context/language.ts';
import { when } from '../../../parts/time/when.ts';

/** The one sentence of a step: of the stage in progress, or of the step when it has not begun. */
export function sentenceOf(step: StepView): Message {
  const begun = step.status === 'active' || step.status === 'checking';
  const stage = begun ? step.step.stages[step.stage] : undefined;
  return (stage ?? step.step).title;
}

/** What a timer counts to: while that lies ahead it is not said to be now. */
export function labelNow({ role, leftS, label: own }: TimerView, label = own): Message {
  return role === 'estimate' && leftS > 0 ? aheadTold(label) : label;
}

/** Name of a fixture, as the kitchen has it; undefined for what is of no fixture. */
export function fixtureName(view: RunView, fixture: string | undefined): string | undefined {
  return view.plan.kitchen.fixtures.find((f) => f.id === fixture)?.name;
}

/** What a step is about, over its sentence: its place, which utensils, or the kitchen as a whole. */
export function placeOf(view: RunView, { step: { fixture, work } }: StepView): string {
  const name = fixtureName(view, fixture);
  if (name !== undefined) return name;
  if (work.on !== 'utensils') return t('run.whole-kitchen');
  const [first, second] = work.items;
  return first && !second ? say(first.name) : t('run.utensils');
}

/** A line of a step that is over at `nowMs`, with the hour until which the rest after it lasts, ms. */
export function withRestEnd(view: RunView, step: StepView, line: Message, nowMs: number): Message {
  const rest = view.plan.steps.find(
    ({ kind, needs }) => kind === 'rest' && needs.some((need) => need.step === step.step.id),
  );
  const lengthS = rest?.stages[0]?.timers[0]?.lengthS;
  return lengthS === undefined
    ? line
    : untilTold(line, when(nowMs + lengthS * MS_PER_SECOND, nowMs));
}
