export { buildPlan, type PlanOptions } from './build/build-plan.ts';
export { whatItChanges, type AnswerChange } from './build/what-it-changes.ts';
export { checkPlan, LATER_RULES, planShapeProblems, type PlanProblem } from './check/index.ts';
export { midnightsBetween, nightsBetween } from './timetable/nights.ts';
export { gravestFirst, gravityOf } from './build/gravity.ts';
export { describePlan, titleUntil } from './describe/index.ts';
export { burnersNeedOf } from './context/burners-need.ts';
export { openEdges, pourNeedOf, roomNeedOf } from './pours/index.ts';
export type * from './model/index.ts';
export { runsThroughRestDays } from './model/rest-day-rule.ts';
export {
  heatCharts,
  pourCharts,
  moveMessage,
  pourMoves,
  type CurveLine,
  type HeatChart,
  type PourChart,
} from './charts/index.ts';
export { RESTS_ON } from './basis/rests-on.ts';
export { planForRecheck } from './recheck/index.ts';
export { ranOut, type Amendment } from './amend/ran-out.ts';
export { planQuestions } from './questions/plan-questions.ts';
export { endOf, replanned, type Replanned, type Standing } from './replan/index.ts';
export { criticalChain, longestLinks, type ChainLink } from './timetable/critical-chain.ts';
export { shares } from './context/shares.ts';
export { UTENSILS } from './model/all-utensils.ts';
export { calendarOf } from './timetable/days.ts';
export { usualNights, type ClosedHours } from './timetable/timetable.ts';
export {
  courseOf,
  type Cut,
  daysOfPlan,
  foldedScale,
  peopleLanes,
  stepGroups,
  type Course,
  type CourseBar,
  type CourseRow,
  type DayOfPlan,
  type PersonLane,
  type StepGroup,
  type TimeSpan,
  type TimeScale,
  type Turn,
} from './course/index.ts';
