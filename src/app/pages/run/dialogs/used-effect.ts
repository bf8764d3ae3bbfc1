import { message, type Message } from '../../../../core/messages/index.ts';
import { UTENSILS } from '../../../../core/plan/index.ts';
import type { RunView, StepView } from '../../../../core/run/index.ts';
import { MS_PER_SECOND } from '../../../../core/units/index.ts';
import { when } from '../../../parts/time/when.ts';

type Thing = { readonly id: string; readonly name: Message };

const AFTER_THE_REST: ReadonlySet<string> = new Set(['purge', 'cool', 'cover', 'mark']);

/** Steps at a fixture, with a kettle, or with the utensils that rest. */
function stepsAt(view: RunView, id: string): readonly StepView[] {
  return view.steps.filter(({ step: { fixture, work } }) => {
    if (fixture !== undefined) return fixture === id;
    if (work.on === 'utensils') return id === UTENSILS && work.method !== 'soak';
    return (work.on === 'vessel' || work.on === 'kettle') && work.vessel.id === id;
  });
}

/** How many steps of it that are over have to be done again once it was used. */
export function stepsDoneAgain(view: RunView, id: string): number {
  return stepsAt(view, id).filter(
    ({ status, step }) =>
      status === 'settled' && step.kind !== 'rest' && AFTER_THE_REST.has(step.phase),
  ).length;
}

/**
 * What becomes of the rest of something that was used: until when it rests
 * again, that its rest had not begun, or that it has none. `told`: the run
 * counts it already, and says itself when it is over.
 */
export function restAgain(
  view: RunView,
  { id, name }: Thing,
  nowMs: number,
  told: boolean,
): Message {
  const rest = stepsAt(view, id).find(({ step }) => step.kind === 'rest');
  if (!rest) {
    const isWorkedOn = view.plan.methods.some(({ fixture }) => fixture === id);
    return message(isWorkedOn ? 'run.used.no-rest' : 'run.used.put-away', { name });
  }
  if (rest.status === 'waiting') return message('run.used.not-begun', { name });
  const running = told ? rest.timers.find(({ role }) => role === 'hold') : undefined;
  const leftS = running?.leftS ?? rest.step.stages[0]?.timers[0]?.lengthS ?? 0;
  const ready = when(nowMs + leftS * MS_PER_SECOND, nowMs);
  return message(told ? 'run.used.rests' : 'run.used.will-rest', { name, ready });
}
