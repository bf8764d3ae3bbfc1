import { unkeyed } from '../../messages/temporary.ts';
import type { PlanContext } from '../context/step-draft.ts';
import type { Step } from '../model/types.ts';

/** A step that stands on a row nobody has answered yet says so where the hand is. */
export function withOpenQuestions(site: PlanContext, step: Step): Step {
  if (step.fixture === undefined || (step.phase !== 'purge' && step.phase !== 'cover')) return step;
  const questions = site.choices.get(step.fixture)?.questions ?? [];
  const [first, ...others] = step.stages;
  if (questions.length === 0 || !first) return step;
  const said = questions.map(({ ask, untilThen }) =>
    unkeyed(`Not answered yet: ${ask} Until then: ${untilThen}`),
  );
  return { ...step, stages: [{ ...first, detail: [...first.detail, ...said] }, ...others] };
}
