/**
 * The four families of sound, each a rhythm of pulses.
 *
 * Ideas taken from standards (read in summaries and excerpts, not in the
 * standards themselves, so no clause is named):
 * - IEC 60601-1-8: a pulse has a fundamental of 150 to 1000 Hz and at least
 *   four harmonics between 300 and 4000 Hz within ±15 dB of it, and rises over
 *   10 to 40 % of its length.
 * - ISO 7731: main energy between 500 and 2500 Hz, enough below 1500 Hz for
 *   people who have lost the highs; pulses rather than a steady tone.
 *
 * Told apart by rhythm before pitch. None follows the rhythms that mean smoke
 * (three long pulses and a pause, ISO 8201) or carbon monoxide (four quick
 * pulses and a pause, ANSI/UL 2034): a kitchen may sound those at any moment.
 */
export type Family = 'due' | 'soon' | 'done' | 'hazard';

export type Pulse = {
  readonly onsetS: number;
  readonly lengthS: number;
  /** Fundamental, Hz. */
  readonly pitchHz: number;
  /** Part of the pulse over which it rises. */
  readonly rise: number;
  /** Part of the pulse over which it falls. */
  readonly fall: number;
};

export type Recipe = {
  readonly family: Family;
  /** What a person hears, in words. */
  readonly rhythm: string;
  readonly durationS: number;
  /** Amplitudes of the fundamental and its harmonics. */
  readonly partials: readonly number[];
  readonly pulses: readonly Pulse[];
};

/** Pitches of an equal-tempered scale on A = 440 Hz (ISO 16), Hz. */
const C5 = 523.25;
const E5 = 659.26;
const F_SHARP_5 = 739.99;
const G5 = 783.99;

/** Full tone, energy well spread over five partials. */
const BRIGHT = [1, 0.9, 0.7, 0.5, 0.4] as const;
/** Rounder, for sounds that only tell. */
const ROUND = [1, 0.6, 0.4, 0.3, 0.22] as const;
/** Rougher: the second partial as strong as the first. */
const ROUGH = [1, 1, 0.7, 0.55, 0.4] as const;

const firm = (onsetS: number, lengthS: number, pitchHz: number): Pulse => ({
  onsetS,
  lengthS,
  pitchHz,
  rise: 0.12,
  fall: 0.3,
});

const soft = (onsetS: number, lengthS: number, pitchHz: number): Pulse => ({
  onsetS,
  lengthS,
  pitchHz,
  rise: 0.2,
  fall: 0.7,
});

export const RECIPES: readonly Recipe[] = [
  {
    family: 'due',
    rhythm: 'long, short, short, long, rising',
    durationS: 1.6,
    partials: BRIGHT,
    pulses: [firm(0, 0.34, C5), firm(0.48, 0.16, E5), firm(0.72, 0.16, E5), firm(0.96, 0.5, G5)],
  },
  {
    family: 'soon',
    rhythm: 'two soft strokes, the second lower',
    durationS: 1.1,
    partials: ROUND,
    pulses: [soft(0, 0.36, E5), soft(0.5, 0.5, C5)],
  },
  {
    family: 'done',
    rhythm: 'two quick, one long',
    durationS: 1.3,
    partials: ROUND,
    pulses: [soft(0, 0.2, C5), soft(0.22, 0.2, E5), soft(0.56, 0.65, G5)],
  },
  {
    family: 'hazard',
    rhythm: 'four hurried pairs, each leaping up',
    durationS: 1.9,
    partials: ROUGH,
    pulses: [0, 0.48, 0.96, 1.44].flatMap((startS) => [
      firm(startS, 0.14, C5),
      firm(startS + 0.17, 0.14, F_SHARP_5),
    ]),
  },
];
