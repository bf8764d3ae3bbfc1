export { LANGUAGES, languageFor, type Language, type PageSection } from './languages.ts';
