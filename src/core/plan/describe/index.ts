export { describePlan } from './describe-plan.ts';
export { titleUntil } from './timetable.ts';
