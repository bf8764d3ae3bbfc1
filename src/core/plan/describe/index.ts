export { describePlan } from './describe-plan.ts';
export { CUSTOMS_DIFFER } from './words.ts';
