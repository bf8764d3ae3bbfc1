export { buildUtensilPlan } from './build-utensil-plan.ts';
export { describeUtensils } from './describe/describe-utensils.ts';
export type * from './model/types.ts';
