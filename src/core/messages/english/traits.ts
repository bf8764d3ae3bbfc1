import type { LanguageTraits } from '../model/traits.ts';

/** How English is written. Day before month and 24 hours, as the job counts. */
export const englishTraits: LanguageTraits = {
  language: 'en',
  locale: 'en-GB',
  direction: 'ltr',
  words: {
    hours: (count) => `${count} h`,
    minutes: (count) => `${count} min`,
    seconds: (count) => `${count} s`,
    spread: (typical, low, high) => `${typical} (${low} to ${high})`,
    rangeTo: (low, high) => `${low}–${high}`,
  },
};
