import type { Unit } from '../model/message.ts';
import type { LanguageTraits } from '../model/traits.ts';

/** °C is written as it is, close to the figure. */
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
