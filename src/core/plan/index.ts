export { buildPlan, type PlanOptions } from './build/build-plan.ts';
export { whatItChanges } from './build/what-it-changes.ts';
export { checkPlan, planShapeProblems, type PlanProblem } from './check/index.ts';
export { midnightsBetween, nightsBetween } from './timetable/nights.ts';
export { describePlan } from './describe/index.ts';
export { pourNeedOf, roomNeedOf } from './pours/index.ts';
export type * from './model/index.ts';
export { runsThroughRestDays } from './model/rest-day-rule.ts';
export {
  heatCharts,
  pourCharts,
  type CurveLine,
  type HeatChart,
  type PourChart,
} from './charts/index.ts';
export { planForRecheck } from './recheck/index.ts';
export { ranOut, type Amendment } from './amend/ran-out.ts';
