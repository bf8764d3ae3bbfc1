export { besideHeat, type BesideHeat } from './beside-heat.ts';
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
export { DROP_K, HAND_RECOIL_C, usualHands } from './pour-hand.ts';
export { spotWater, type SpotWater } from './pour-spot.ts';
export {
  deckM2,
  fittings,
  isPoured,
  estimatePour,
  pourPlaceOf,
  sumBands,
  type PourAssumed,
  type PouredFixture,
  type PourEstimate,
  type PourPlace,
} from './pour-need.ts';
export {
  estimateBurnersAtOnce,
  estimateRoom,
  outdoorOf,
  roomOf,
  UNLIT,
  type AtOnce,
} from './room.ts';
export {
  boilOf,
  coolingOf,
  fillL,
  pouringKettles,
  estimateBoil,
  standingVessels,
  type BoilEstimate,
  type Kettle,
} from './vessels.ts';
export { remembered } from './remembered.ts';
