export {
  calibrationFrom,
  calibrationOf,
  withoutLearned,
  type CalibrationRow,
  type LeftOutMeasurements,
  type TaughtBy,
} from './factors.ts';
export type { MeasuredQuantity } from './measurements.ts';
