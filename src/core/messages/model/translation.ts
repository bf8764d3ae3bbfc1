/**
 * What a section must hold in another language: every key of the first one,
 * and for each the same parameters. A key that is missing, one too many, or a
 * parameter that is misspelt does not compile.
 */
export type TranslationOf<First> = {
  readonly [Key in keyof First]: First[Key] extends string ? string : First[Key];
};
