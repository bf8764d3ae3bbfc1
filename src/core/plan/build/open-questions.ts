import { REST_ROW } from '../../custom/index.ts';
import { message } from '../../messages/index.ts';
import type { PlanContext } from '../context/plan-context.ts';
import type { Step } from '../model/index.ts';

/** A step that stands on a row nobody has answered yet says so where the hand is. */
export function withOpenQuestions(context: PlanContext, step: Step): Step {
  if (step.fixture === undefined || (step.phase !== 'purge' && step.phase !== 'cover')) return step;
  const all = context.choices.get(step.fixture)?.questions ?? [];
  // The rest was before; a part is asked about where it is purged.
  const questions = all.filter(
    ({ row, part }) => row !== REST_ROW && (part === undefined || step.phase === 'purge'),
  );
  const [first, ...others] = step.stages;
  if (questions.length === 0 || !first) return step;
  const said = questions.map(({ ask, untilThen }) =>
    message('steps.open-question', { ask, untilThen }),
  );
  return { ...step, stages: [{ ...first, detail: [...first.detail, ...said] }, ...others] };
}
