import { english } from '../../src/core/messages/english/index.ts';
import { englishTraits } from '../../src/core/messages/english/traits.ts';
import { createTranslator, entriesOf } from '../../src/core/messages/index.ts';

/** What a reader of English sees: for tests that look at sentences, and for prints. */
export const inEnglish = createTranslator(englishTraits, entriesOf([english]));
