import { erfc } from './erf.ts';

/** What lies under a square metre of surface; nothing is lost below it. */
export type Slab = {
  readonly conductivityWMK: number;
  /** ρc, J/(m³ K). */
  readonly heatCapacityJM3K: number;
  readonly thicknessM: number;
};

/** Images further off than this add nothing that shows. */
const FAR = 4;
/** From this αt/L² on the body warms as a whole, and few terms tell how far its face is ahead. */
const WARMS_WHOLE = 0.3;
const TERMS = 3;

/** Integral of erfc from x to infinity. */
function ierfc(x: number): number {
  return Math.exp(-x * x) / Math.sqrt(Math.PI) - x * erfc(x);
}

/** How much the surface has warmed after a steady 1 W/m² for that long, K. */
function risenK({ conductivityWMK, heatCapacityJM3K, thicknessM }: Slab, timeS: number): number {
  if (timeS === 0) return 0;
  const diffusivityM2S = conductivityWMK / heatCapacityJM3K;
  const fourier = (diffusivityM2S * timeS) / thicknessM ** 2;
  if (fourier >= WARMS_WHOLE) {
    let ahead = 1 / 3;
    for (let n = 1; n <= TERMS; n += 1)
      ahead -= (2 / (n * Math.PI) ** 2) * Math.exp(-((n * Math.PI) ** 2) * fourier);
    return (thicknessM / conductivityWMK) * (fourier + ahead);
  }
  const reachM = Math.sqrt(diffusivityM2S * timeS);
  let images = ierfc(0);
  for (let n = 1; (n * thicknessM) / reachM < FAR; n += 1)
    images += 2 * ierfc((n * thicknessM) / reachM);
  return (2 * reachM * images) / conductivityWMK;
}

/**
 * Warming of a surface by 1 W/m² that lasted one step, seen at the end of that
 * step and of each one after it, K. Sums of these give the surface under any
 * course of heat.
 * Source: Carslaw & Jaeger, Conduction of Heat in Solids, 2.9 and 3.8 (from
 * memory): slab with steady flux on one face, none through the other.
 */
export function slabResponse(slab: Slab, stepS: number, steps: number): readonly number[] {
  const risen = Array.from({ length: steps + 1 }, (_, i) => risenK(slab, i * stepS));
  return risen.slice(1).map((rise, i) => rise - (risen[i] ?? 0));
}
