import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { inWords } from '../../../../src/app/pages/kitchen/demos.ts';
import { parseKitchen } from '../../../../src/core/kitchen/index.ts';
import { LANGUAGES } from '../../../../src/core/messages/languages/index.ts';
import { DEMO_TEXTS } from '../../../core/kitchen/demos.ts';

const FOLDER = 'demo-kitchens/words';
type Words = Readonly<Record<string, string>>;

/** What is written in the demos in own words, each with its field. */
function ownWords(value: unknown, field = ''): string[] {
  if (typeof value === 'string') return ['name', 'saidBy', 'text'].includes(field) ? [value] : [];
  if (typeof value !== 'object' || value === null) return [];
  if (Array.isArray(value)) return value.flatMap((one) => ownWords(one, field));
  return Object.entries(value).flatMap(([name, one]) => ownWords(one, name));
}

const written = new Set(DEMO_TEXTS.flatMap(([, text]) => ownWords(JSON.parse(text))));
const others = LANGUAGES.filter(({ isOffered, tag }) => isOffered && tag !== 'en');

describe('the demo kitchens in other languages', () => {
  it('has one list of words for each language that is offered', () => {
    expect(readdirSync(FOLDER).toSorted()).toEqual(
      others.map(({ tag }) => `${tag}.json`).toSorted(),
    );
  });

  it.each(others.map(({ name, tag }) => [name, tag] as const))(
    '%s: every name is said, none is left over, and each demo is the same kitchen by other names',
    (_, language) => {
      const words = JSON.parse(readFileSync(`${FOLDER}/${language}.json`, 'utf8')) as Words;
      expect(Object.keys(words).toSorted()).toEqual([...written].toSorted());
      for (const [file, text] of DEMO_TEXTS) {
        const translated = inWords(JSON.parse(text), words);
        const [ours, theirs] = [parseKitchen(translated), parseKitchen(text)];
        if (!('kitchen' in ours) || !('kitchen' in theirs)) throw new Error(`${file} is refused`);
        expect(ours.warnings, file).toEqual(theirs.warnings);
        const backwards = Object.fromEntries(Object.entries(words).map(([a, b]) => [b, a]));
        const named = new Set(ownWords(JSON.parse(translated)));
        expect(
          [...named].every((one) => backwards[one] !== undefined),
          file,
        ).toBe(true);
        // Two places that are told apart in English are so in every language.
        expect(named.size, file).toBe(new Set(ownWords(JSON.parse(text))).size);
        expect(JSON.parse(translated)).toEqual(
          JSON.parse(text, (field, value: unknown) => {
            if (field === 'comment') return undefined;
            return typeof value === 'string' && ['name', 'saidBy', 'text'].includes(field)
              ? words[value]
              : value;
          }),
        );
      }
    },
  );
});
