import { english } from '../../src/core/messages/english/index.ts';
import { englishTraits } from '../../src/core/messages/english/traits.ts';
import {
  createTranslator,
  entriesOf,
  type Formatter,
  type Translator,
} from '../../src/core/messages/index.ts';

/** What a reader of English sees: for tests that look at sentences, and for prints. */
export const inEnglish = createTranslator(englishTraits, entriesOf([english]));

/** The same, with ways of writing of a test's own: times that are easy to read in it. */
export function inEnglishWith(others: Partial<Formatter>): Translator {
  return createTranslator(englishTraits, entriesOf([english]), () => others);
}
