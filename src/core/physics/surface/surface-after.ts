import { inRange } from '../../units/index.ts';
import { erf, erfc, erfcScaled } from './erf.ts';

export type SurfaceAfter = {
  readonly bodyTempC: number;
  readonly fluidTempC: number;
  readonly filmWM2K: number;
  readonly conductivityWMK: number;
  readonly diffusivityM2S: number;
  /** Depth below the surface; 0 is the surface. */
  readonly depthM: number;
  readonly timeS: number;
};

/**
 * Temperature in a thick body some time after a fluid begins to flow over it, °C.
 * @param filmWM2K film coefficient, 0.1 to 1 000 000 W/(m² K)
 * @throws OutOfRangeError
 * Source: Incropera & DeWitt, eq. 5.63 (semi-infinite solid, surface convection).
 */
export function surfaceAfter(of: SurfaceAfter): { readonly tempC: number } {
  inRange('bodyTempC', of.bodyTempC, -100, 1500);
  inRange('fluidTempC', of.fluidTempC, -100, 1500);
  const h = inRange('filmWM2K', of.filmWM2K, 0.1, 1e6);
  const k = inRange('conductivityWMK', of.conductivityWMK, 0.01, 500);
  const a = inRange('diffusivityM2S', of.diffusivityM2S, 1e-9, 1e-3);
  const x = inRange('depthM', of.depthM, 0, 10);
  const t = inRange('timeS', of.timeS, 0, 3.2e8);
  if (t === 0) return { tempC: of.bodyTempC };
  const eta = x / (2 * Math.sqrt(a * t));
  const beta = (h * Math.sqrt(a * t)) / k;
  // exp(hx/k + β²)·erfc(η + β) = exp(−η²)·erfcScaled(η + β): the exponents of the two cancel.
  const theta = erfc(eta) - Math.exp(-(eta ** 2)) * erfcScaled(eta + beta);
  return { tempC: of.bodyTempC + (of.fluidTempC - of.bodyTempC) * theta };
}

/**
 * Temperature in a thick body some time after its surface is held at a new temperature, °C.
 * @throws OutOfRangeError
 * Source: Incropera & DeWitt, eq. 5.60.
 */
export function surfaceStep(of: {
  readonly bodyTempC: number;
  readonly surfaceC: number;
  readonly diffusivityM2S: number;
  readonly depthM: number;
  readonly timeS: number;
}): { readonly tempC: number } {
  const a = inRange('diffusivityM2S', of.diffusivityM2S, 1e-9, 1e-3);
  const x = inRange('depthM', of.depthM, 0, 100);
  const t = inRange('timeS', of.timeS, 1e-6, 3.2e8);
  const share = erf(x / (2 * Math.sqrt(a * t)));
  return { tempC: of.surfaceC + (of.bodyTempC - of.surfaceC) * share };
}
