export { describePlan } from './describe-plan.ts';
