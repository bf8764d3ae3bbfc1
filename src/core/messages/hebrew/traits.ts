import type { Unit } from '../model/message.ts';
import type { LanguageTraits } from '../model/traits.ts';

/** Those not named are written as they are, close to the figure. */
const UNITS: Partial<Record<Unit, string>> = {
  m: '\u00a0מ׳',
  cm: '\u00a0ס״מ',
  'm²': '\u00a0מ״ר',
  'cm²': '\u00a0סמ״ר',
  'm³': '\u00a0מ״ק',
  L: '\u00a0ליטר',
  'L/s': '\u00a0ליטר/שנ׳',
  K: '\u00a0מעלות',
  kg: '\u00a0ק״ג',
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
