export { LANGUAGES, languageFor } from './languages.ts';
export type { Language, PageSection } from './language.ts';
