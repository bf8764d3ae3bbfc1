import { englishTraits } from '../english/traits.ts';
import type { Language } from './language.ts';

const english: Language = {
  name: 'English',
  tag: 'en',
  isOffered: true,
  sentences: async () => (await import('./english.ts')).english,
};

const pseudo: Language = {
  ...english,
  name: 'Pseudo',
  tag: 'en-XA',
  isOffered: false,
  sentences: async () => {
    const sentences = await english.sentences();
    return { ...sentences, traits: { ...sentences.traits, language: 'en-XA' } };
  },
  remake: async () => (await import('../pseudo/index.ts')).pseudoTranslator,
};

/** How the page is written before any language is here. */
export const FIRST_TRAITS = englishTraits;

/** All languages, the one that stands in for any other first. */
export const LANGUAGES: readonly [Language, ...Language[]] = [
  english,
  {
    name: 'עברית',
    tag: 'he',
    isOffered: true,
    sentences: async () => (await import('./hebrew.ts')).hebrew,
  },
  {
    name: 'Français',
    tag: 'fr',
    isOffered: true,
    sentences: async () => (await import('./french.ts')).french,
  },
  {
    name: 'Español',
    tag: 'es',
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
    const exact = LANGUAGES.find(({ tag: own }) => own.toLowerCase() === wanted);
    if (exact) return exact;
    const alone = wanted.split('-')[0];
    const near = LANGUAGES.find(
      ({ tag: own, isOffered }) => isOffered && own.toLowerCase() === alone,
    );
    if (near) return near;
  }
  return LANGUAGES[0];
}
