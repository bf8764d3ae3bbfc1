import { english, englishTraits } from '../../core/messages/english/index.ts';
import { createTranslator, entriesOf } from '../../core/messages/index.ts';

/** The terminal speaks English: the whole catalogue at once. */
export const inEnglish = createTranslator(englishTraits, entriesOf([english]));
