export { reckonBurner, type BurnerReckoned } from './burners.ts';
export { reckonHighHeat, reckonSelfClean, type OvenReckoned } from './ovens.ts';
export {
  deckM2,
  fittings,
  isPoured,
  pieceL,
  reckonPour,
  sumBands,
  type Poured,
  type PourReckoned,
} from './pour-need.ts';
export { reckonBurnersAtOnce, reckonRoom, type RoomReckoned } from './room.ts';
export { isGas } from './tables.ts';
export {
  fillL,
  pouringKettles,
  reckonBoil,
  standingVessels,
  type BoilReckoned,
  type Kettle,
} from './vessels.ts';
