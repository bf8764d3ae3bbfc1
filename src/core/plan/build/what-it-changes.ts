import { answerAs, withAnswer, type ChosenQuestion, type RowAnswer } from '../../custom/index.ts';
import type { Kitchen } from '../../kitchen/index.ts';
import { buildPlan, type PlanOptions } from './build-plan.ts';

/** What one answer would make of a plan, against the plan without it; below 0 is saved. */
type Change = {
  readonly answer: RowAnswer;
  readonly finishS: number;
  readonly kettles: number;
  readonly handsOnS: number;
};

/** Nobody said it yet: it is only tried. */
const TRIED = { saidBy: '?', saidOn: '2000-01-01' } as const;

/**
 * What each known answer to a question would change, by planning again with
 * it: seconds until all is done, kettles, seconds with the hands. Planning
 * takes as long for every answer as for the plan: ask for one question at a time.
 * @throws OutOfRangeError when a model refuses a number of the kitchen
 */
export function whatItChanges(
  kitchen: Kitchen,
  question: Pick<ChosenQuestion, 'fixture' | 'row' | 'part' | 'answers'>,
  options: PlanOptions = {},
): readonly Change[] {
  const before = buildPlan(kitchen, options);
  return (question.answers ?? []).map((answer) => {
    const after = buildPlan(withAnswer(kitchen, answerAs(question, answer, TRIED)), options);
    return {
      answer,
      finishS: after.timetable.finishS - before.timetable.finishS,
      kettles: after.totals.kettles.typical - before.totals.kettles.typical,
      handsOnS: after.totals.handsOnS - before.totals.handsOnS,
    };
  });
}
