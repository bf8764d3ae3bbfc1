import type { Translator } from '../../../src/core/messages/index.ts';
import { translatorOf } from '../translators.ts';
import { sampleMaker } from './sample-params.ts';

/** One sentence in English and in another language, with the same things filled in. */
export type Said = { readonly key: string; readonly english: string; readonly told: string };

/**
 * Every sentence of some keys with sample names and numbers.
 * @param letters of which names are made: each name another one, between ‹ and ›
 * @param variants which samples; a sentence into which nothing is filled is said once
 */
export async function saidBoth(
  language: string,
  keys: readonly string[],
  letters: string,
  variants: readonly number[] = [0, 1, 2, 3, 4],
): Promise<readonly Said[]> {
  const [english, other] = await Promise.all([translatorOf('en'), translatorOf(language)]);
  const names = [...letters].map((letter) => `‹${letter}${letter}›`);
  const maker = sampleMaker((index) => names[index % names.length] ?? '‹›');
  const filled = new Set(maker.keys);
  const say = (translator: Translator, key: string, variant: number): string =>
    translator.say({ key, params: filled.has(key) ? maker.sample(key, variant) : {} });
  return keys.flatMap((key) =>
    (filled.has(key) ? variants : [0]).map((variant) => ({
      key,
      english: say(english, key, variant),
      told: say(other, key, variant),
    })),
  );
}
