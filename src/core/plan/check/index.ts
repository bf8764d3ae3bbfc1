import type { Plan } from '../model/index.ts';
import { JOB_RULES, jobRuleProblems } from './job-rules.ts';
import { orderProblems } from './order.ts';
import type { PlanProblem } from './problem.ts';
import { chilledProblems } from './chilled.ts';
import { restLengthProblems } from './rest-lengths.ts';
import { ROOM_RULES, roomRuleProblems } from './room-rules.ts';
import { restProblems } from './rests.ts';
import { stepProblems } from './steps.ts';
import { wordProblems } from './words.ts';

export { planShapeProblems } from './plan-shape.ts';
export { byName, fields, flag, list, number, oneOf, text, type ShapeOf } from './shape-of.ts';
export { faultKind, stepShape } from './step-shape.ts';
export type { PlanProblem } from './problem.ts';

/** Rules that plans of earlier versions did not know. */
export const LATER_RULES = [...ROOM_RULES, ...JOB_RULES, 'cleaning-order', 'chilled'] as const;

/** Everything that a plan may not have; empty: the plan holds. */
export function checkPlan(plan: Plan): readonly PlanProblem[] {
  return [
    ...orderProblems(plan),
    ...restLengthProblems(plan),
    ...roomRuleProblems(plan),
    ...jobRuleProblems(plan),
    ...restProblems(plan),
    ...chilledProblems(plan),
    ...stepProblems(plan),
    ...wordProblems(plan),
  ];
}
