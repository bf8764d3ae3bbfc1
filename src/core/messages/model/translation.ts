import type { Formatter } from './message.ts';

/**
 * What a section must hold in another language: every key of the first one,
 * and for each the same parameters. A key that is missing, one too many, or a
 * parameter that is misspelt does not compile. A sentence may ask the formatter
 * where the first language needs none.
 */
export type TranslationOf<First> = {
  readonly [Key in keyof First]: First[Key] extends (params: infer P, format: Formatter) => string
    ? (params: P, format: Formatter) => string
    : string;
};
