export { convexHull, minimumWidth, type MinimumWidth } from './calipers.ts';
export { COVERAGE_TOLERANCE_M, coverage, type Coverage, type CoverageOptions } from './coverage.ts';
export { compareDirections, planLanes, type DirectionFacts } from './plan-lanes.ts';
export { LanesRefusal, type LanesRefusalCode } from './refusal.ts';
export { repairSurface, type Repaired } from './repair.ts';
export type {
  EdgeLane,
  EdgeOfOuter,
  Lane,
  LanePoint,
  LanesOptions,
  LanesPlan,
  LanesQuality,
  Repair,
  Ring,
  Surface,
} from './types.ts';
export {
  resplitFrom,
  splitIntoKettles,
  type KettleOptions,
  type KettleStretch,
} from './kettles.ts';
export {
  sinkKettles,
  sinkLanes,
  type BowlSize,
  type SinkOptions,
  type SinkPart,
  type SinkShare,
  type SinkWater,
} from './sink.ts';
