export {
  learnedFrom,
  learnedOf,
  withoutLearned,
  type LearnedRow,
  type LeftOut,
  type TaughtBy,
} from './lessons.ts';
export type { LearnedWhat } from './reports.ts';
