export { pseudoTranslator } from './pseudo-translator.ts';
