import type { Plan } from '../model/index.ts';
import { orderProblems } from './order.ts';
import type { PlanProblem } from './problem.ts';
import { restLengthProblems } from './rest-lengths.ts';
import { ROOM_RULES, roomRuleProblems } from './room-rules.ts';
import { stepProblems } from './steps.ts';
import { wordProblems } from './words.ts';

export { planShapeProblems } from './plan-shape.ts';
export type { PlanProblem } from './problem.ts';
export { ROOM_RULES };

/** Everything that a plan may not have; empty: the plan holds. */
export function checkPlan(plan: Plan): readonly PlanProblem[] {
  return [
    ...orderProblems(plan),
    ...restLengthProblems(plan),
    ...roomRuleProblems(plan),
    ...stepProblems(plan),
    ...wordProblems(plan),
  ];
}
