export {
  burnerHeat,
  estimateBurner,
  glowVisible,
  usualHeat,
  type BurnerEstimate,
} from './burners.ts';
export {
  calibratedBoil,
  calibratedBurner,
  calibratedOven,
  calibratedPour,
  usableCalibration,
} from './calibrated.ts';
export {
  OVEN_DUTY_SHARE,
  estimateHighHeat,
  estimateSelfClean,
  type OvenEstimate,
} from './ovens.ts';
export {
  deckM2,
  fittings,
  isPoured,
  estimatePour,
  sumBands,
  type PouredFixture,
  type PourEstimate,
} from './pour-need.ts';
export { estimateBurnersAtOnce, estimateRoom, roomOf, UNLIT, type AtOnce } from './room.ts';
export {
  fillL,
  pouringKettles,
  estimateBoil,
  ROOM_C,
  standingVessels,
  type BoilEstimate,
  type Kettle,
} from './vessels.ts';
