export { calendarOf, type CalendarEvent } from './ical/index.ts';
export { labelsOf, type Label } from './labels.ts';
export { reportOf } from './report-of.ts';
export { reportText } from './text/text.ts';
export { restEvents } from './rest-events.ts';
export { STANDING_LINES } from './standing-lines.ts';
export type * from './types.ts';
export {
  calibrationFrom,
  calibrationOf,
  withoutLearned,
  type CalibrationRow,
  type MeasuredQuantity,
  type LeftOutMeasurements,
  type TaughtBy,
} from '../calibration/index.ts';
export { METHOD_WORDS } from './words.ts';
