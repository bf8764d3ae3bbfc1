export type * from './calibration.ts';
export type * from './caution.ts';
export type * from './fault.ts';
export type * from './picture.ts';
export type * from './plan.ts';
export type * from './pour.ts';
export type * from './stage.ts';
export type * from './step.ts';
export { restDayBroken, runsThroughRestDays } from './rest-day-rule.ts';
