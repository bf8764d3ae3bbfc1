import type { LanguageTraits } from '../model/traits.ts';

/** How Hebrew is written. The signs of units are short words, and so is what stands between the ends of a range: a dash would turn them round. */
export const hebrewTraits: LanguageTraits = {
  language: 'he',
  locale: 'he-IL',
  direction: 'rtl',
  words: {
    hours: (count) => `${count} שע׳`,
    minutes: (count) => `${count} דק׳`,
    seconds: (count) => `${count} שנ׳`,
    about: (length) => `כ־${length}`,
    rangeTo: (low, high) => `${low} עד ${high}`,
  },
};
