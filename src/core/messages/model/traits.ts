import type { Unit } from './message.ts';

/** The few words a formatter itself needs, in its language. */
export type FormatWords = {
  readonly hours: (count: string) => string;
  readonly minutes: (count: string) => string;
  readonly seconds: (count: string) => string;
  /** An estimate. */
  readonly about: (length: string) => string;
  readonly rangeTo: (low: string, high: string) => string;
  /** A figure, or a range, with its metric unit; the unit alone where there is no figure. */
  readonly measure: (figure: string, unit: Unit) => string;
};

export type LanguageTraits = {
  readonly language: string;
  /** BCP 47 tag for numbers and dates; names the region too where that matters. */
  readonly locale: string;
  readonly direction: 'ltr' | 'rtl';
  readonly words: FormatWords;
};
