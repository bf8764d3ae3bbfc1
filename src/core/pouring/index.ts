export { convexHull, minimumWidth, type MinimumWidth } from './lanes/calipers.ts';
export {
  COVERAGE_TOLERANCE_M,
  coverage,
  type Coverage,
  type CoverageOptions,
} from './coverage/coverage.ts';
export { compareDirections, planLanes, type DirectionFacts } from './lanes/plan-lanes.ts';
export { LanesRefusal, type LanesRefusalCode } from './model/refusal.ts';
export { repairSurface, type Repaired } from './coverage/repair.ts';
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
} from './model/types.ts';
export {
  resplitFrom,
  splitIntoKettles,
  type KettleOptions,
  type KettleStretch,
} from './kettles/kettles.ts';
export { sinkLanes, type SinkPart } from './kettles/sink.ts';
