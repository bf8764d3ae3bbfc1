import { createHash } from 'node:crypto';
import { RECIPES, type Family, type Recipe } from './recipes.ts';
import { SAMPLE_RATE_HZ, soundingRms, synthesise } from './synthesise.ts';
import { toWav } from './wav.ts';

/** What a player must know of a sound without opening its file. */
export type SoundEntry = {
  readonly file: string;
  readonly family: Family;
  readonly rhythm: string;
  readonly durationS: number;
  /** Root mean square over the sounding time, dB of full scale. */
  readonly loudnessDbfs: number;
  readonly onsetsS: readonly number[];
  readonly bytes: number;
  readonly sha256: string;
};

export type MadeSound = { readonly entry: SoundEntry; readonly bytes: Uint8Array };

export function makeSound(recipe: Recipe): MadeSound {
  const samples = synthesise(recipe);
  const bytes = toWav(samples, SAMPLE_RATE_HZ);
  const rmsDb = 20 * Math.log10(soundingRms(recipe, samples));
  return {
    bytes,
    entry: {
      file: `${recipe.family}.wav`,
      family: recipe.family,
      rhythm: recipe.rhythm,
      durationS: recipe.durationS,
      loudnessDbfs: Math.round(rmsDb * 10) / 10,
      onsetsS: recipe.pulses.map(({ onsetS }) => Math.round(onsetS * 1000) / 1000),
      bytes: bytes.length,
      sha256: createHash('sha256').update(bytes).digest('hex'),
    },
  };
}

export function makeAll(): readonly MadeSound[] {
  return RECIPES.map((recipe) => makeSound(recipe));
}

/** The manifest's text: the same sounds give the same text. */
export function manifestText(made: readonly MadeSound[]): string {
  const manifest = {
    about: 'Made by make-sounds.ts; do not edit. Seconds, dB of full scale.',
    sampleRateHz: SAMPLE_RATE_HZ,
    sounds: made.map(({ entry }) => entry),
  };
  return `${JSON.stringify(manifest, null, 2)}\n`;
}
