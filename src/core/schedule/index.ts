export { checkSchedule, type Violation } from './check.ts';
export { ScheduleRefusal, type RefusalCode } from './refusal.ts';
export { solve } from './solve.ts';
export type {
  Activity,
  After,
  BoundReason,
  Calendar,
  Problem,
  Resource,
  Schedule,
  SolveOptions,
  Solver,
} from './types.ts';
