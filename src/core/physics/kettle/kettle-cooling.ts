import { inRange } from '../../units/index.ts';
import { boilingTemp } from '../water/boiling-temp.ts';
import { water } from '../water/water.ts';
import { integrate, LARGEST_VESSEL_L, waterMassKg } from './heat-needed.ts';

/** Body of a steel kettle as water, L; shared/appliances.json has the others. */
const STEEL_BODY_WATER_L = 0.23;
/** Cold tap water that the volume mark was read at, °C. */
const FILL_C = 15;

export type Cooling = {
  readonly volumeL: number;
  readonly lossWK: number;
  /** Heat carried off by steam near the boil, W. */
  readonly evaporationW: number;
  readonly roomC: number;
  /** How far the water may fall below boiling, K. */
  readonly dropK: number;
  readonly altitudeM: number;
  readonly bodyWaterL?: number;
  /** It is poured out in the last so many seconds; default 0: it stays full. */
  readonly pourS?: number;
};

/** What stays in an emptied kettle and still carries its heat, as a share of the filling; common practice, no published source. */
const LEFT_SHARE = 0.05;

/**
 * What the last drop has lost more than a full kettle would have, K: the losses
 * stay while the water that bears them runs out.
 */
function lostPouringK(fullJK: number, emptyJK: number, lossW: number, pourS: number): number {
  const spentJK = fullJK - emptyJK;
  return (lossW * pourS * Math.log(fullJK / emptyJK)) / spentJK;
}

/**
 * How long the water of a switched-off kettle stays within `dropK` of boiling:
 * with `pourS` until its last drop, that time included. For an at-most clock
 * pass the high ends of the losses: they are guesses until measured once.
 * @throws OutOfRangeError also when the pour alone costs more than `dropK`
 * Source: lumped body with linear loss and steam; the loss coefficients are
 * common practice, no published source.
 */
export function kettleCooling(of: Cooling): { readonly timeS: number; readonly boilingC: number } {
  const boilingC = boilingTemp({ altitudeM: of.altitudeM }).tempC;
  inRange('volumeL', of.volumeL, 0.05, LARGEST_VESSEL_L);
  inRange('lossWK', of.lossWK, 0.01, 50);
  inRange('evaporationW', of.evaporationW, 0, 2000);
  inRange('roomC', of.roomC, -10, 50);
  inRange('dropK', of.dropK, 0.1, boilingC - of.roomC - 1);
  const bodyWaterL = inRange('bodyWaterL', of.bodyWaterL ?? STEEL_BODY_WATER_L, 0, 50);
  const massKg = waterMassKg(of.volumeL, FILL_C, bodyWaterL);
  const secondsPerKelvin = (tempC: number) =>
    (massKg * water({ tempC }).heatCapacityJKgK) /
    (of.lossWK * (tempC - of.roomC) + of.evaporationW);
  const pourS = inRange('pourS', of.pourS ?? 0, 0, 3600);
  if (pourS === 0)
    return { timeS: integrate(secondsPerKelvin, boilingC - of.dropK, boilingC), boilingC };
  const fullJK = massKg * water({ tempC: boilingC }).heatCapacityJKgK;
  const emptyKg = waterMassKg(LEFT_SHARE * of.volumeL, FILL_C, bodyWaterL);
  const emptyJK = emptyKg * water({ tempC: boilingC }).heatCapacityJKgK;
  const lossW = of.lossWK * (boilingC - of.roomC) + of.evaporationW;
  const pouringK = lostPouringK(fullJK, emptyJK, lossW, pourS);
  inRange('dropK', of.dropK, pouringK, boilingC - of.roomC - 1);
  const standsS = integrate(secondsPerKelvin, boilingC - of.dropK + pouringK, boilingC);
  return { timeS: standsS + pourS, boilingC };
}
