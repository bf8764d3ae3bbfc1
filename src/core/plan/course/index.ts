export { courseOf, type Course } from './course.ts';
export { daysOfPlan, type DayOfPlan } from './days.ts';
export { stepGroups, type StepGroup } from './groups.ts';
export type { Lane, Turn } from './lanes.ts';
export type { CourseBar, CourseRow } from './rows.ts';
export { foldedScale, type Stretch, type TimeScale } from './scale.ts';
