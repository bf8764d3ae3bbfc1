export {
  calibrationFrom,
  calibrationOf,
  type CalibrationRow,
  type LeftOutMeasurements,
  type MeasuredRun,
} from './factors.ts';
export type { MeasuredQuantity } from './measurements.ts';
