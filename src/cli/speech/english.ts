import { unitsOf, type Kitchen } from '../../core/kitchen/index.ts';
import { customarySizes } from '../../core/messages/customary/index.ts';
import { english, englishTraits } from '../../core/messages/english/index.ts';
import { createTranslator, entriesOf, type Translator } from '../../core/messages/index.ts';

const entryOf = entriesOf([english]);

/** The terminal speaks English: the whole catalogue at once. */
export const inEnglish = createTranslator(englishTraits, entryOf);

/** English with the sizes of a plan in its household's units; data are metric whatever those are. */
export function englishOf(kitchen: Kitchen): Translator {
  return unitsOf(kitchen) === 'metric'
    ? inEnglish
    : createTranslator(englishTraits, entryOf, customarySizes);
}
