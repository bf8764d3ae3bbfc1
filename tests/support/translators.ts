import { customarySizes } from '../../src/core/messages/customary/index.ts';
import type { UnitSystem } from '../../src/core/units/index.ts';
import { LANGUAGES } from '../../src/core/messages/languages/index.ts';
import { createTranslator, entriesOf, type Translator } from '../../src/core/messages/index.ts';

/**
 * Everything a language says, as its readers see it.
 * @param tag BCP 47, one of those the app knows ("en", "en-XA")
 * @param units those that the household reads
 * @throws RangeError for any other
 */
export async function translatorOf(tag: string, units: UnitSystem = 'metric'): Promise<Translator> {
  const language = LANGUAGES.find((one) => one.tag === tag);
  if (!language) {
    const known = LANGUAGES.map((one) => one.tag).join(', ');
    throw new RangeError(`Language is ${tag}; known: ${known}. Name one of these.`);
  }
  const { traits, first, sections } = await language.sentences();
  const parts = await Promise.all([first(), ...Object.values(sections).map((load) => load())]);
  const plain = createTranslator(
    traits,
    entriesOf(parts),
    units === 'metric' ? undefined : customarySizes,
  );
  const remake = await language.remake?.();
  return remake?.(plain) ?? plain;
}
