export { courseOf, type Course } from './course.ts';
export { daysOfPlan, type DayOfPlan } from './days.ts';
export { stepGroups, type StepGroup } from './groups.ts';
export { peopleLanes, type PersonLane, type Turn } from './lanes.ts';
export type { CourseBar, CourseRow } from './rows.ts';
export { foldedScale, type TimeSpan, type TimeScale } from './scale.ts';
