import type { Unit } from '../model/message.ts';
import type { LanguageTraits } from '../model/traits.ts';

/** °C is written as it is, close to the figure. */
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

/** A Latin letter would draw what follows it into its own direction; a sign alone would be turned round. */
const degrees = (figure: string, unit: Unit): string =>
  figure === '' ? `\u2066${unit}\u2069` : `${figure}${unit}\u200f`;

/** How Hebrew is written. The signs of units are short words, and so is what stands between the ends of a range: a dash would turn them round. */
export const hebrewTraits: LanguageTraits = {
  language: 'he',
  locale: 'he-IL',
  direction: 'rtl',
  words: {
    hours: (count) => `${count}\u00a0שע׳`,
    minutes: (count) => `${count}\u00a0דק׳`,
    seconds: (count) => `${count}\u00a0שנ׳`,
    about: (length) => `כ־${length}`,
    rangeTo: (low, high) => `${low} עד ${high}`,
    measure: (figure, unit) => {
      const told = figure.replace(/\u200e?−/u, 'מינוס ');
      const name = UNITS[unit];
      return name === undefined ? degrees(told, unit) : (told + name).trim();
    },
  },
};
