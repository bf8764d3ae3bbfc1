export { buildPlan, type PlanOptions } from './build-plan.ts';
export { checkPlan, type PlanProblem } from './check/index.ts';
export { midnightsBetween, nightsBetween } from './days-nights.ts';
export { clockText, dayText, momentInZone } from './days-words.ts';
export { CUSTOMS_DIFFER, describePlan } from './describe/index.ts';
export { pourNeedOf, roomNeedOf, type PourNeed, type RoomNeed } from './needs-of-kitchen.ts';
export type * from './types.ts';
export {
  heatPictures,
  pourPictures,
  type CurveLine,
  type HeatPicture,
  type PourPicture,
} from './curves/index.ts';
export { planForDoubt } from './doubt/index.ts';
export { ranOut, type Amendment } from './ran-out/index.ts';
