export { boilingTemp, type BoilingPlace } from './water/boiling-temp.ts';
export { saturationPressure, saturationTemp } from './water/saturation.ts';
export { standardPressure } from './water/standard-pressure.ts';
export { water, type Water } from './water/water.ts';

export { boilTime, type Boil, type BoilResult } from './kettle/boil-time.ts';
export { boilCurve, kettleCoolingCurve } from './kettle/curves.ts';
export { gasPowerW } from './kettle/gas-power.ts';
export { heatNeeded } from './kettle/heat-needed.ts';
export { kettleCooling, type Cooling } from './kettle/kettle-cooling.ts';

export { filmJump } from './pour/film-jump.ts';
export { handSpeed } from './pour/hand-speed.ts';
export { levelJump } from './pour/level-jump.ts';
export { ORDINARY_HAND } from './pour/ordinary-hand.ts';
export { pourDemand, type PourDemandInput } from './pour/pour-demand.ts';
export type { PiecePour, PourDemand, PourGovern, PourHand, PourPiece } from './pour/pour-types.ts';
export { puddleDepth } from './pour/puddle-depth.ts';
export { radialFilm } from './pour/radial-film.ts';
export { fallingFilm, wettingRate } from './pour/wetting-rate.ts';

export { contactTemp } from './surface/contact-temp.ts';
export { erf, erfc, erfcScaled } from './surface/erf.ts';
export { checkLump, lumpPath, lumpSeconds, steadyTempC, type Lump } from './surface/lumped.ts';
export { puddlesToReach, sheetEquilibrium } from './surface/sheet-equilibrium.ts';
export { surfaceAfter, surfaceStep } from './surface/surface-after.ts';
export { shockLimit, thermalShock, type ShockVerdict } from './surface/thermal-shock.ts';

export { coolToTouch, type CoolInput } from './glow/cool-to-touch.ts';
export { COLOUR_SCALES, colourName, DRAPER_C, draperPoint } from './glow/colours.ts';
export { glowCurve } from './glow/glow-curve.ts';
export { glowTime, type GlowInput } from './glow/glow-time.ts';
export { luminance, tempOfLuminance } from './glow/luminance.ts';

export { ovenCurve } from './oven/oven-curve.ts';
export {
  highestHeat,
  ovenCooling,
  ovenStages,
  type CycleName,
  type OvenInput,
  type OvenStages,
} from './oven/oven-stages.ts';

export { admittance } from './room/admittance.ts';
export { airCurve, type AirCurveInput, type GasPiece, type LimitCheck } from './room/air-curve.ts';
export { air } from './room/air.ts';
export {
  burnersAtOnce,
  type BurnersInput,
  type BurnersReason,
  type BurnersRow,
} from './room/burners-at-once.ts';
export { heatIndex, type HeatBand } from './room/heat-index.ts';
export { roomHeat } from './room/room-heat.ts';
export type { HeatPiece, Hood, OpenWindow, RoomInput, RoomPoint } from './room/room-types.ts';
export { wallOfEffusivity, wallRates, type Wall } from './room/wall-layers.ts';
export { windowFlow } from './room/window-flow.ts';

export { burnTime } from './burn/burn-time.ts';
export { touchThreshold } from './burn/touch.ts';
export { circuitLoad } from './electricity/circuit-load.ts';
export { heatingPowerW } from './electricity/heating-power.ts';

export {
  learn,
  startEstimate,
  unlearn,
  type Estimate,
  type Prior,
} from './calibration/calibrate.ts';
export { PRIORS } from './calibration/priors.ts';

export type { CurvePoint } from './common/curve.ts';
export { cleanCycle, hobEfficiency, kettleBody, type KettleBody } from './tables/appliances.ts';
export {
  burnerRow,
  burnerTypes,
  glowBody,
  type BurnerRow,
  type GlowBody,
} from './tables/burners.ts';
export { CHILD_TIME_SHARE } from './tables/burns.ts';
export {
  AIR_LIMITS,
  emissionFactor,
  hoodCapture,
  type AirLimit,
  type Pollutant,
} from './tables/emissions.ts';
export { effusivity, material, materialIds, type MaterialRow } from './tables/materials.ts';
