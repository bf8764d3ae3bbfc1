export { buildPlan, type PlanOptions } from './build-plan.ts';
export type * from './types.ts';
