import type { Formatter } from './message.ts';

/**
 * What a section must hold in another language: every key of the first one,
 * and for each the same parameters. A key that is missing, one too many, or a
 * parameter that is misspelt does not compile. Where the first language makes
 * a sentence, another may count, so it has the formatter at hand too.
 */
export type TranslationOf<First> = {
  readonly [Key in keyof First]: First[Key] extends (params: infer P, ...rest: never[]) => string
    ? (params: P, format: Formatter) => string
    : string;
};
