import { inRange } from '../quantity/index.ts';

/**
 * Temperature at the touching faces of two thick bodies at the first moment:
 * (e₁T₁ + e₂T₂) / (e₁ + e₂), e = √(kρc).
 * @throws OutOfRangeError
 */
export function contactTemp(input: {
  readonly hotTempC: number;
  readonly hotEffusivity: number;
  readonly bodyTempC: number;
  readonly bodyEffusivity: number;
}): { readonly tempC: number } {
  inRange('hotEffusivity', input.hotEffusivity, 1, 50_000);
  inRange('bodyEffusivity', input.bodyEffusivity, 1, 50_000);
  const total = input.hotEffusivity + input.bodyEffusivity;
  return {
    tempC: (input.hotEffusivity * input.hotTempC + input.bodyEffusivity * input.bodyTempC) / total,
  };
}

/** Complementary error function times e^(z²), Numerical Recipes' Chebyshev fit; error below 1.2e-7. */
function scaledErfc(z: number): number {
  const t = 1 / (1 + z / 2);
  const fit = [
    -1.26551223, 1.00002368, 0.37409196, 0.09678418, -0.18628806, 0.27886807, -1.13520398,
    1.48851587, -0.82215223, 0.17087277,
  ];
  const exponent = fit.toReversed().reduce((sum, factor) => sum * t + factor, 0);
  return t * Math.exp(exponent);
}

/**
 * Temperature inside a thick body after a fluid at `fluidTempC` has swept its
 * face: θ = erfc(η) − exp(hx/k + h²αt/k²) erfc(η + h√(αt)/k).
 * @param input.depthM 0 is the face
 * @throws OutOfRangeError
 */
export function surfaceAfter(input: {
  readonly bodyTempC: number;
  readonly fluidTempC: number;
  readonly filmWM2K: number;
  readonly conductivityWMK: number;
  readonly diffusivityM2S: number;
  readonly depthM: number;
  readonly timeS: number;
}): { readonly tempC: number } {
  inRange('filmWM2K', input.filmWM2K, 1, 100_000);
  inRange('conductivityWMK', input.conductivityWMK, 0.01, 500);
  inRange('diffusivityM2S', input.diffusivityM2S, 1e-9, 1e-3);
  inRange('depthM', input.depthM, 0, 1);
  inRange('timeS', input.timeS, 0.001, 1e8);
  const reach = Math.sqrt(input.diffusivityM2S * input.timeS);
  const eta = input.depthM / (2 * reach);
  const beta = (input.filmWM2K * reach) / input.conductivityWMK;
  // exp(hx/k + β²) erfc(η + β) = exp(−η²) × scaled erfc(η + β): no overflow for large β.
  const face = Math.exp(-(eta ** 2));
  const theta = face * (scaledErfc(eta) - scaledErfc(eta + beta));
  return { tempC: input.bodyTempC + theta * (input.fluidTempC - input.bodyTempC) };
}

/** Volumetric heat of water at 95 °C and of 304 stainless steel, J/(m³ K). */
const WATER_J_M3K = 961.9 * 4210;
const STEEL_J_M3K = 7900 * 477;

/**
 * Temperature at which a puddle and a thin steel sheet, insulated behind, come to rest together.
 * @throws OutOfRangeError
 */
export function sheetEquilibrium(input: {
  readonly sheetMm: number;
  readonly waterDepthMm: number;
  readonly waterC: number;
  readonly sheetC: number;
}): { readonly tempC: number } {
  const water = inRange('waterDepthMm', input.waterDepthMm, 0.1, 100) * WATER_J_M3K;
  const sheet = inRange('sheetMm', input.sheetMm, 0.1, 10) * STEEL_J_M3K;
  return { tempC: (water * input.waterC + sheet * input.sheetC) / (water + sheet) };
}
