export { boilingTemp, saturationPressure, standardPressure } from './boiling.ts';
export { boilTime, kettleCooling, type BoilInput, type CoolingInput } from './kettle.ts';
export { filmJump, levelJump, puddleDepth, wettingRate } from './pour.ts';
export {
  ORDINARY_HAND,
  pourDemand,
  type PourDemand,
  type PourDemandInput,
  type PourHand,
  type PourPiece,
} from './pour-demand.ts';
export { water, type Water } from './water.ts';
export { coolToTouch, DRAPER_C, glowTime, type GlowBody } from './glow.ts';
export {
  CLEAN_C,
  cycleMinutes,
  ovenCooling,
  ovenStages,
  UNLOCK_C,
  type CleanCycle,
  type OvenStages,
} from './oven.ts';
export { burnTime } from './burn.ts';
export { circuitLoad } from './electricity.ts';
export { burnersAtOnce, ROOM_LIMIT_C, roomHeat, windowFlowM3S, type RoomInput } from './room.ts';
export { air, NO2_HOUR_MG_M3, NO2_MG_KWH } from './air.ts';
export { heatIndex } from './heat-index.ts';
export { contactTemp, sheetEquilibrium, surfaceAfter } from './surface.ts';
