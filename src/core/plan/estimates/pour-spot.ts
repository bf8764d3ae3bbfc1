import type { Material } from '../../kitchen/index.ts';
import {
  contactTemp,
  effusivity,
  material,
  ORDINARY_HAND,
  pouredSpot,
  puddleDepth,
  sheetEquilibrium,
  water,
  worstOffset,
} from '../../physics/index.ts';
import { band, type Band } from '../../units/index.ts';
import type { PourHands } from './pour-hand.ts';
import { remembered } from './remembered.ts';

/** A surface that nothing has warmed, °C: common practice, no published source. */
const COLD_C = 20;
/** A sheet no thicker than this is warmed to its back by what stands on it, mm. */
const SHEET_MM = 3;
/** Fineness of what is told of a spot: within 1 K of a finer mesh. */
const CELLS = 12;

/** What the worst-placed spot of a strip meets, °C. `low`: the last drop that is still fresh; `high`: the hottest water. */
export type SpotWater = {
  readonly firstTouchC: Band;
  readonly hottestC: Band;
  readonly surfaceC: Band;
  /** First touch where a puddle was left standing. */
  readonly wetFirstTouchC: number;
  /** What runs off, and what it makes of the same material below it. */
  readonly runOffC: number;
  readonly belowC: number;
};

/** Temperature that run-off gives what lies below: a sheet is warmed through by what stands on it, a slab at its skin. */
function belowC(id: Material, runOffC: number): number {
  const { thicknessMm, contactDeg } = material(id);
  if (thicknessMm.typical <= SHEET_MM)
    return sheetEquilibrium({
      sheetMm: thicknessMm.typical,
      waterDepthMm: puddleDepth({ tempC: runOffC, contactDeg: contactDeg.typical }).depthMm,
      waterC: runOffC,
      sheetC: COLD_C,
      material: id,
    }).tempC;
  const { densityKgM3, heatCapacityJKgK, conductivityWMK } = water({ tempC: runOffC });
  return contactTemp({
    hotTempC: runOffC,
    hotEffusivity: Math.sqrt(conductivityWMK * densityKgM3 * heatCapacityJKgK),
    bodyTempC: COLD_C,
    bodyEffusivity: effusivity(id),
  }).tempC;
}

function reckoned(
  id: Material,
  boilingC: number,
  { impactC }: Pick<PourHands, 'impactC'>,
  handSpeedMS: number,
): SpotWater {
  const at = (water: number, standingMm = 0) =>
    pouredSpot({
      flowLMin: ORDINARY_HAND.flowLMin.typical,
      impactC: water,
      boilingC,
      handSpeedMS,
      material: id,
      offset: worstOffset(ORDINARY_HAND.overlapShare),
      surfaceC: COLD_C,
      standingMm,
      cells: CELLS,
    });
  const [low, usual, high] = [at(impactC.low), at(impactC.typical), at(impactC.high)];
  const of = (what: 'firstTouchC' | 'hottestC' | 'surfaceC'): Band =>
    band(low[what], usual[what], high[what]);
  const { depthMm } = puddleDepth({
    tempC: COLD_C,
    contactDeg: material(id).contactDeg.typical,
  });
  return {
    firstTouchC: of('firstTouchC'),
    hottestC: of('hottestC'),
    surfaceC: of('surfaceC'),
    wetFirstTouchC: at(impactC.typical, depthMm).firstTouchC,
    runOffC: usual.runOffC,
    belowC: belowC(id, usual.runOffC),
  };
}

/**
 * What the worst-placed spot of a strip meets under a hand of this speed.
 * @throws OutOfRangeError
 */
export const spotWater = remembered(reckoned);
