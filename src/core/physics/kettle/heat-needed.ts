import { LITRES_PER_M3, inRange } from '../../units/index.ts';
import { water, waterHeatCapacity } from '../water/water.ts';

/** Simpson intervals over temperature: cp varies by 1 % from 0 to 100 °C, so few are plenty. */
const INTERVALS = 20;

/** ∫ f dT from `a` to `b` by Simpson's rule. */
export function integrate(f: (x: number) => number, a: number, b: number): number {
  const step = (b - a) / INTERVALS;
  let sum = f(a) + f(b);
  for (let i = 1; i < INTERVALS; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(a + i * step);
  return (sum * step) / 3;
}

/** Mass of what the tap filled, kg, with the kettle's body counted as water. */
export function waterMassKg(volumeL: number, fillC: number, bodyWaterL: number): number {
  return ((volumeL + bodyWaterL) / LITRES_PER_M3) * water({ tempC: fillC }).densityKgM3;
}

/** Largest vessel the models are asked about, L: a communal urn. */
export const LARGEST_VESSEL_L = 200;

/**
 * Heat that water and the vessel's body take up between two temperatures, J, without losses.
 * @param bodyWaterL the body as the volume of water with its heat capacity, L
 * @throws OutOfRangeError
 * Source: energy balance with cp of IAPWS SR6-08(2011).
 */
export function heatNeeded(of: {
  readonly volumeL: number;
  readonly startC: number;
  readonly endC: number;
  readonly bodyWaterL: number;
}): { readonly energyJ: number } {
  inRange('volumeL', of.volumeL, 0.01, LARGEST_VESSEL_L);
  inRange('bodyWaterL', of.bodyWaterL, 0, LARGEST_VESSEL_L);
  inRange('startC', of.startC, 0, 110);
  inRange('endC', of.endC, 0, 110);
  const massKg = waterMassKg(of.volumeL, of.startC, of.bodyWaterL);
  return { energyJ: massKg * integrate(waterHeatCapacity, of.startC, of.endC) };
}
