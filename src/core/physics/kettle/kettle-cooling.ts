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
};

/**
 * How long a switched-off kettle stays within `dropK` of boiling. For an
 * at-most clock pass the high ends of the losses: they are guesses until
 * measured once.
 * @throws OutOfRangeError
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
  return { timeS: integrate(secondsPerKelvin, boilingC - of.dropK, boilingC), boilingC };
}
