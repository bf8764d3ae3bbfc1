export { FIRST_TRAITS, LANGUAGES, languageFor } from './languages.ts';
export type { Language, PageSection } from './language.ts';
