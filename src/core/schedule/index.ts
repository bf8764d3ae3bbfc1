export { checkSchedule, type Violation } from './problem/check.ts';
export { ScheduleRefusal, type RefusalCode } from './problem/refusal.ts';
export { solve } from './solver/solve.ts';
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
} from './problem/types.ts';
