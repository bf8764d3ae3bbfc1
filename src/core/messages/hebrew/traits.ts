import type { LanguageTraits } from '../model/traits.ts';

/** How Hebrew is written. The signs of units are short words; a range reads in order from right to left. */
export const hebrewTraits: LanguageTraits = {
  language: 'he',
  locale: 'he-IL',
  direction: 'rtl',
  words: {
    hours: (count) => `${count} שע׳`,
    minutes: (count) => `${count} דק׳`,
    seconds: (count) => `${count} שנ׳`,
    about: (length) => `כ־${length}`,
    rangeTo: (low, high) => `${low}–${high}`,
  },
};
