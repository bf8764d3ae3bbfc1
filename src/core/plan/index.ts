export { buildPlan, type PlanOptions } from './build-plan.ts';
export { checkPlan, type PlanProblem } from './check/index.ts';
export { describePlan } from './describe/index.ts';
export type * from './types.ts';
