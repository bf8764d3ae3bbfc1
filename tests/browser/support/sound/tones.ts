import { RECIPES, type Family } from '../../../../sounds/recipes.ts';

/** Sampling rate of everything listened to, Hz. */
export const RATE_HZ = 22_050;
/** Window and step of the search for a tone, s. */
const WINDOW_S = 0.05;
const STEP_S = 0.01;
/** A fundamental this strong (of full scale 1) is there; room noise of a null sink is 0. */
const THERE = 0.012;
/** Share of the pulses that must be there: a busy machine's sound card drops one now and then. */
const ENOUGH = 0.75;
/** How far a pulse may lie from its place in the rhythm, s. */
const RHYTHM_S = 0.06;

export type Heard = {
  readonly family: Family;
  /** Seconds from the first sample. */
  readonly atS: number;
};

/** Strength of one frequency in a window (Goertzel, 1958), as an amplitude of full scale 1. */
function strength(
  samples: Float32Array,
  from: number,
  length: number,
  frequencyHz: number,
): number {
  const turn = (2 * Math.PI * frequencyHz) / RATE_HZ;
  const factor = 2 * Math.cos(turn);
  let one = 0;
  let two = 0;
  for (let n = from; n < from + length; n += 1) {
    const next = (samples[n] ?? 0) + factor * one - two;
    two = one;
    one = next;
  }
  const power = one * one + two * two - factor * one * two;
  return (2 * Math.sqrt(Math.max(0, power))) / length;
}

/** Which pitches are there at each step. */
function track(samples: Float32Array, pitchHz: number): Float32Array {
  const length = Math.round(WINDOW_S * RATE_HZ);
  const step = Math.round(STEP_S * RATE_HZ);
  const steps = Math.max(0, Math.floor((samples.length - length) / step) + 1);
  const strengths = new Float32Array(steps);
  for (let n = 0; n < steps; n += 1) strengths[n] = strength(samples, n * step, length, pitchHz);
  return strengths;
}

const pitches = [...new Set(RECIPES.flatMap(({ pulses }) => pulses.map((p) => p.pitchHz)))];

/**
 * The soundings of all families in a recording, by pitch and rhythm: three
 * of four pulses of a recipe must be there, each at its place, with its second partial, and
 * no other pitch of the recipes may be as strong meanwhile.
 */
export function findSoundings(samples: Float32Array): readonly Heard[] {
  const first = new Map(pitches.map((hz) => [hz, track(samples, hz)]));
  const second = new Map(pitches.map((hz) => [hz, track(samples, 2 * hz)]));
  const steps = first.get(pitches[0] ?? 0)?.length ?? 0;
  const at = (atS: number) => Math.round(atS / STEP_S);
  const pulseAt = (n: number, pitchHz: number): boolean => {
    const here = first.get(pitchHz)?.[n] ?? 0;
    if (here < THERE || (second.get(pitchHz)?.[n] ?? 0) < THERE / 3) return false;
    return pitches.every((hz) => hz === pitchHz || (first.get(hz)?.[n] ?? 0) <= here);
  };
  /** Does the pulse stand around its middle, within the play of the rhythm? */
  const stands = (n: number, pitchHz: number): boolean => {
    const play = at(RHYTHM_S);
    for (let d = -play; d <= play; d += 1) if (pulseAt(n + d, pitchHz)) return true;
    return false;
  };
  const heard: Heard[] = [];
  for (let n = 0; n < steps; n += 1) {
    for (const { family, pulses, durationS } of RECIPES) {
      const lead = pulses[0];
      if (!lead || !pulseAt(n, lead.pitchHz) || pulseAt(n - 1, lead.pitchHz)) continue;
      const standing = pulses.filter(({ onsetS, lengthS, pitchHz }) =>
        stands(n + at(onsetS + lengthS / 2) - at(WINDOW_S / 2), pitchHz),
      );
      const whole = standing.length >= Math.ceil(pulses.length * ENOUGH);
      const atS = n * STEP_S;
      const last = heard.at(-1);
      if (whole && (!last || atS - last.atS > durationS / 2)) heard.push({ family, atS });
    }
  }
  return heard;
}
