import type { LanguageTraits } from '../model/traits.ts';

/** How French is written. A narrow no-break space stands between a number and its unit. */
export const frenchTraits: LanguageTraits = {
  language: 'fr',
  locale: 'fr-FR',
  direction: 'ltr',
  words: {
    hours: (count) => `${count} h`,
    minutes: (count) => `${count} min`,
    seconds: (count) => `${count} s`,
    about: (length) => `environ ${length}`,
    rangeTo: (low, high) => `${low}–${high}`,
    measure: (figure, unit) => `${figure} ${unit}`.trim(),
  },
};
