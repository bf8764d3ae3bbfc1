import type { Prior } from './calibrate.ts';

/**
 * Where learning starts, by what is learned. Spread and noise are common
 * practice, no published source; ranges are what hardware can be.
 */
export const PRIORS = {
  /** Measured over predicted boil time. */
  boilTimeFactor: { mean: 1, spread: 0.15, min: 0.5, max: 3, noise: 0.06 },
  /** L/min out of a person's kettle. */
  pourFlowLMin: { mean: 2, spread: 0.25, min: 0.3, max: 8, noise: 0.12 },
  /** Measured over predicted seconds to a glow. */
  glowTimeFactor: { mean: 1, spread: 0.4, min: 0.2, max: 6, noise: 0.15 },
  /** Area one kettle covered over the predicted one. */
  pourAreaFactor: { mean: 1, spread: 0.3, min: 0.2, max: 5, noise: 0.15 },
} as const satisfies Readonly<Record<string, Prior>>;
