import type { Pulse, Recipe } from './recipes.ts';
import { sineOfTurns } from './sine.ts';

/** Samples a second. Holds everything below 5.5 kHz; the highest partial is 4.4 kHz, and every byte is kept offline. */
export const SAMPLE_RATE_HZ = 11025;

/** Peak of every finished sound, full scale = 1: 1 dB is left for the device's own filters. */
const PEAK = 0.891;

/** Raised-cosine rise and fall, flat between; 0 outside. `at` is the part of the pulse gone by. */
function envelope(pulse: Pulse, at: number): number {
  if (at < 0 || at >= 1) return 0;
  if (at < pulse.rise) return raised(at / pulse.rise);
  if (at > 1 - pulse.fall) return raised((1 - at) / pulse.fall);
  return 1;
}

/**
 * Phase of a partial, turns, that spreads the peaks of the sum over its period:
 * more loudness below the same peak. M. R. Schroeder, "Synthesis of
 * low-peak-factor signals and binary sequences with low autocorrelation",
 * IEEE Trans. Information Theory 16 (1970): φₙ = −π n(n−1)/N (from memory).
 */
function phaseTurns(index: number, count: number): number {
  return -((index + 1) * index) / (2 * count);
}

/** (1 − cos πx) / 2 for 0 ≤ x ≤ 1. */
function raised(x: number): number {
  return (1 - sineOfTurns(x / 2 + 0.25)) / 2;
}

/** Samples of a recipe, −1 to 1, highest peak at −1 dB of full scale. */
export function synthesise(recipe: Recipe): Float64Array {
  const samples = new Float64Array(Math.round(recipe.durationS * SAMPLE_RATE_HZ));
  for (const pulse of recipe.pulses) {
    const first = Math.round(pulse.onsetS * SAMPLE_RATE_HZ);
    const count = Math.round(pulse.lengthS * SAMPLE_RATE_HZ);
    for (let i = 0; i < count && first + i < samples.length; i += 1) {
      const turns = (pulse.pitchHz * i) / SAMPLE_RATE_HZ;
      let value = 0;
      for (const [n, amplitude] of recipe.partials.entries()) {
        value += amplitude * sineOfTurns(turns * (n + 1) + phaseTurns(n, recipe.partials.length));
      }
      samples[first + i] = (samples[first + i] ?? 0) + value * envelope(pulse, i / count);
    }
  }
  const peak = samples.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  return samples.map((value) => (value * PEAK) / peak);
}

/** Root mean square over the time in which a pulse sounds, full scale = 1. */
export function soundingRms(recipe: Recipe, samples: Float64Array): number {
  let sum = 0;
  let count = 0;
  for (const pulse of recipe.pulses) {
    const first = Math.round(pulse.onsetS * SAMPLE_RATE_HZ);
    const end = Math.round((pulse.onsetS + pulse.lengthS) * SAMPLE_RATE_HZ);
    for (const value of samples.subarray(first, end)) {
      sum += value * value;
      count += 1;
    }
  }
  return Math.sqrt(sum / count);
}
