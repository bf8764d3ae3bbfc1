export { ARM_M, partsInReach } from './reach/arm.ts';
export { openSides } from './reach/open-sides.ts';
export { convexHull, minimumWidth } from './lanes/calipers.ts';
export { coverage, type Coverage } from './coverage/coverage.ts';
export { compareDirections, planLanes } from './planner/plan-lanes.ts';
export { LanesRefusal, type LanesRefusalCode } from './model/refusal.ts';
export { repairSurface } from './coverage/repair.ts';
export type {
  EdgeOfOuter,
  Lane,
  LanePoint,
  LanesOptions,
  LanesPlan,
  Ring,
  StandSide,
  Surface,
  Unreached,
} from './model/types.ts';
export { resplitFrom, splitIntoKettles, type KettleStretch } from './kettles/kettles.ts';
export { sinkLanes, type SinkPart } from './kettles/sink.ts';
