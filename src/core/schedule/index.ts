export { checkSchedule } from './problem/check.ts';
export { ScheduleRefusal, type RefusalCode } from './problem/refusal.ts';
export { solve } from './solver/solve.ts';
export type {
  Activity,
  After,
  Calendar,
  Problem,
  Schedule,
  SolveOptions,
} from './problem/types.ts';
