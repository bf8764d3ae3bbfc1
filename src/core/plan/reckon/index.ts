export { reckonBurner, type BurnerReckoned } from './burners.ts';
export { learnedBoil, learnedBurner, learnedOven, learnedPour, usableLearned } from './learned.ts';
export { OVEN_DUTY_SHARE, reckonHighHeat, reckonSelfClean, type OvenReckoned } from './ovens.ts';
export {
  deckM2,
  fittings,
  isPoured,
  reckonPour,
  sumBands,
  type Poured,
  type PourReckoned,
} from './pour-need.ts';
export {
  reckonBurnersAtOnce,
  reckonRoom,
  roomOf,
  UNLIT,
  type AtOnce,
  type RoomReckoned,
} from './room.ts';
export { isGas } from './tables.ts';
export {
  fillL,
  pouringKettles,
  reckonBoil,
  ROOM_C,
  standingVessels,
  type BoilReckoned,
  type Kettle,
} from './vessels.ts';
