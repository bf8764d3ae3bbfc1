export { boilingTemp } from './water/boiling-temp.ts';
export { saturationPressure, saturationTemp } from './water/saturation.ts';
export { standardPressure } from './water/standard-pressure.ts';
export { water } from './water/water.ts';

export { boilTime, type Boil } from './kettle/boil-time.ts';
export { boilCurve, kettleCoolingCurve } from './kettle/curves.ts';
export { gasPowerW } from './kettle/gas-power.ts';
export { heatNeeded } from './kettle/heat-needed.ts';
export { kettleCooling } from './kettle/kettle-cooling.ts';

export { immersionDrop } from './immersion/immersion-drop.ts';
export { dipDrop } from './immersion/immersion-drop.ts';
export { dipRecovery, immersionRecovery } from './immersion/immersion-recovery.ts';
export { potLoss } from './immersion/pot-loss.ts';

export { filmJump } from './pour/film-jump.ts';
export { heatedSpeed, keepsUp, reachedSpeed, worstOffset } from './pour/hand-speed.ts';
export { jetLoss } from './pour/jet-loss.ts';
export { levelJump } from './pour/level-jump.ts';
export { ORDINARY_HAND } from './pour/ordinary-hand.ts';
export { pourDemand } from './pour/pour-demand.ts';
export type { PourPiece } from './pour/pour-types.ts';
export { pouredSpot } from './pour/poured-spot.ts';
export { puddleDepth } from './pour/puddle-depth.ts';
export { fallingFilm, wettingRate } from './pour/wetting-rate.ts';

export { contactTemp } from './surface/contact-temp.ts';
export { erf, erfc, erfcScaled } from './surface/erf.ts';
export { freeConvection, freeNusselt } from './surface/free-convection.ts';
export { lumpSeconds, steadyTempC, type Lump } from './surface/lumped.ts';
export { puddlesToReach, sheetEquilibrium } from './surface/sheet-equilibrium.ts';
export { surfaceAfter, surfaceStep } from './surface/surface-after.ts';
export { shockLimit, thermalShock } from './surface/thermal-shock.ts';

export { coolToTouch } from './glow/cool-to-touch.ts';
export { colourName, DRAPER_C, draperPoint } from './glow/colours.ts';
export { glowCurve } from './glow/glow-curve.ts';
export { glowTime } from './glow/glow-time.ts';
export { luminance } from './glow/luminance.ts';

export { ovenCurve } from './oven/oven-curve.ts';
export { highestHeat, ovenCooling, ovenStages } from './oven/oven-stages.ts';

export { admittance } from './room/admittance.ts';
export { airChanges } from './room/air-changes.ts';
export { airCurve } from './room/air-curve.ts';
export { air } from './room/air.ts';
export {
  batchesOf,
  burnersAtOnce,
  heatOf,
  type Batch,
  type BurnersInput,
  type BurnersReason,
} from './room/burners-at-once.ts';
export { heatIndex } from './room/heat-index.ts';
export { outdoorTemp, WITHOUT_PLACE_LAT_DEG } from './room/outdoor.ts';
export { roomHeat } from './room/room-heat.ts';
export type { HeatPiece, RoomInput, RoomPoint } from './room/room-types.ts';
export { wallOfEffusivity, wallRates } from './room/wall-layers.ts';
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

export { cleanCycle, hobEfficiency, kettleBody } from './tables/appliances.ts';
export { burnerTypes } from './tables/burners.ts';
export { BASIS } from './basis/basis.ts';
export { AIR_LIMITS, emissionFactor, hoodCapture } from './tables/emissions.ts';
export { STILL_SHAPES } from './tables/still-shapes.ts';
export { displacedLitres, specificHeat, specificHeatIds } from './tables/specific-heats.ts';
export { effusivity, material, materialIds } from './tables/materials.ts';
