export { calendarOf, type CalendarEvent } from './ical/index.ts';
export { labelsOf, type Label } from './labels.ts';
export { recordOf } from './record-of.ts';
export { recordText } from './text.ts';
export { restEvents } from './rest-events.ts';
export { STANDING_LINES } from './standing-lines.ts';
export type * from './types.ts';
export {
  learnedFrom,
  learnedOf,
  withoutLearned,
  type LearnedRow,
  type LearnedWhat,
  type LeftOut,
  type TaughtBy,
} from './learned/index.ts';
export { METHOD_WORDS } from './words.ts';
