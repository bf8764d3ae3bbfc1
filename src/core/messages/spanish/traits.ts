import type { LanguageTraits } from '../model/traits.ts';

/** How Spanish is written. Spain's tables of numbers and dates; the words are those of both sides of the ocean. */
export const spanishTraits: LanguageTraits = {
  language: 'es',
  locale: 'es-ES',
  direction: 'ltr',
  words: {
    hours: (count) => `${count} h`,
    minutes: (count) => `${count} min`,
    seconds: (count) => `${count} s`,
    about: (length) => `aprox. ${length}`,
    rangeTo: (low, high) => `${low}–${high}`,
    measure: (figure, unit) => `${figure}\u00a0${unit}`.trim(),
  },
};
