import { inRange } from '../../units/index.ts';
import { admittance } from './admittance.ts';

/**
 * Thickness of the layers into which a thick wall is cut, in √s (depth over
 * the root of its diffusivity): fine at the skin, together deep enough for a
 * day.
 */
const LAYERS_SQRTS = [5, 7, 10, 14, 20, 28, 40, 56, 80] as const;
/** Admittance is meant for a swing of an hour, s. */
const SWING_S = 3600;

/** A thick wall as a ladder of layers: W/(m² K) to the next deeper one, J/(m² K) of each. */
export type Wall = {
  readonly conductances: readonly number[];
  readonly capacities: readonly number[];
};

/**
 * The thick wall with that admittance for a swing of an hour: its effusivity is
 * found by bisection, its layers follow from it.
 * @param admittanceWM2K 0.5 to 8 W/(m² K)
 * @throws OutOfRangeError
 * Source: CIBSE admittance of a thick layer; heat conduction in one dimension.
 */
export function wallOf(admittanceWM2K: number): Wall {
  inRange('wallAdmittanceWM2K', admittanceWM2K, 0.5, 8);
  let low = 10;
  let high = 10_000;
  for (let i = 0; i < 60; i += 1) {
    const effusivity = Math.sqrt(low * high);
    const found = admittance({ effusivity, periodS: SWING_S }).admittanceWM2K;
    if (found < admittanceWM2K) low = effusivity;
    else high = effusivity;
  }
  return wallOfEffusivity(Math.sqrt(low * high));
}

/** The ladder of a wall of that effusivity, W·s^½/(m² K). */
export function wallOfEffusivity(effusivity: number): Wall {
  const conductances = LAYERS_SQRTS.slice(0, -1).map((z, i) => {
    const next = LAYERS_SQRTS[i + 1] ?? z;
    return effusivity / ((z + next) / 2);
  });
  return { conductances, capacities: LAYERS_SQRTS.map((z) => effusivity * z) };
}

/**
 * Rate of change of each layer, K/s.
 * @param intoSkinWM2 heat that enters the skin
 */
export function wallRates(
  wall: Wall,
  layersC: readonly number[],
  intoSkinWM2: number,
): readonly number[] {
  const flows = wall.conductances.map((g, i) => g * ((layersC[i] ?? 0) - (layersC[i + 1] ?? 0)));
  return wall.capacities.map((c, i) => {
    const entering = i === 0 ? intoSkinWM2 : (flows[i - 1] ?? 0);
    return (entering - (flows[i] ?? 0)) / c;
  });
}
