export {
  calibrationFrom,
  calibrationOf,
  type CalibrationRow,
  type LeftOutMeasurements,
} from './factors.ts';
