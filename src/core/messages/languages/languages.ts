import { englishTraits } from '../english/traits.ts';
import { frenchTraits } from '../french/traits.ts';
import { hebrewTraits } from '../hebrew/traits.ts';
import { spanishTraits } from '../spanish/traits.ts';
import type { Language } from './language.ts';

const english: Language = {
  name: 'English',
  traits: englishTraits,
  isOffered: true,
  sentences: async () => (await import('./english.ts')).english,
};

const pseudo: Language = {
  ...english,
  name: 'Pseudo',
  traits: { ...englishTraits, language: 'en-XA' },
  isOffered: false,
  remake: async () => (await import('../pseudo/index.ts')).pseudoTranslator,
};

/** All languages, the one that stands in for any other first. */
export const LANGUAGES: readonly [Language, ...Language[]] = [
  english,
  {
    name: 'עברית',
    traits: hebrewTraits,
    isOffered: true,
    sentences: async () => (await import('./hebrew.ts')).hebrew,
  },
  {
    name: 'Français',
    traits: frenchTraits,
    isOffered: true,
    sentences: async () => (await import('./french.ts')).french,
  },
  {
    name: 'Español',
    traits: spanishTraits,
    isOffered: true,
    sentences: async () => (await import('./spanish.ts')).spanish,
  },
  pseudo,
];

/**
 * The language for a reader: of the tags (BCP 47, the dearest first) the first
 * that is here by itself, or, if it is offered, by its language alone.
 */
export function languageFor(tags: readonly string[]): Language {
  for (const tag of tags) {
    const wanted = tag.toLowerCase();
    const exact = LANGUAGES.find(({ traits }) => traits.language.toLowerCase() === wanted);
    if (exact) return exact;
    const alone = wanted.split('-')[0];
    const near = LANGUAGES.find(
      ({ traits, isOffered }) => isOffered && traits.language.toLowerCase() === alone,
    );
    if (near) return near;
  }
  return LANGUAGES[0];
}
