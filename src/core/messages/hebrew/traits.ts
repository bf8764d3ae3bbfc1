import type { Unit } from '../model/message.ts';
import type { LanguageTraits } from '../model/traits.ts';

/** Those not named are written as they are, close to the figure. */
const UNITS: Partial<Record<Unit, string>> = {
  m: ' מ׳',
  cm: ' ס״מ',
  'm²': ' מ״ר',
  'cm²': ' סמ״ר',
  'm³': ' מ״ק',
  L: ' ליטר',
  'L/s': ' ליטר/שנ׳',
  K: ' מעלות',
  kg: ' ק״ג',
};

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
    measure: (figure, unit) =>
      (figure.replace(/\u200e?−/u, 'מינוס ') + (UNITS[unit] ?? unit)).trim(),
  },
};
