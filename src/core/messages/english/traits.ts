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
    about: (length) => `about ${length}`,
    rangeTo: (low, high) => `${low}–${high}`,
    measure: (figure, unit) => `${figure}\u00a0${unit}`.trim(),
  },
};
