import type { Entry, Formatter, Message, Params, Section } from '../model/message.ts';
import type { LanguageTraits } from '../model/traits.ts';
import { intlFormat } from './intl-format.ts';
import { message, type MessageKey, type ParamArgs } from './keys.ts';

/** Sentences of one language out of keys and parameters. */
export type Translator = {
  /** BCP 47 tag of the language. */
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  readonly format: Formatter;
  t<K extends MessageKey>(key: K, ...params: ParamArgs<K>): string;
  say(message: Message): string;
};

/**
 * A translator over the sections that are loaded. `sections` is asked at each
 * sentence, so that what is loaded later is found. A key that is not there (a
 * file of a newer version) is shown as it is rather than as nothing.
 * @param others ways of writing that replace the language's own: sizes in other units, times of their own kind
 */
export function createTranslator(
  traits: LanguageTraits,
  entryOf: (key: string) => Entry | undefined,
  others?: (format: Formatter, traits: LanguageTraits) => Partial<Formatter>,
): Translator {
  const say = ({ key, params }: Message): string => {
    const entry = entryOf(key);
    if (entry === undefined) return key;
    if (typeof entry === 'string') return entry;
    return (entry as (params: Params, format: Formatter) => string)(params, format);
  };
  const own = intlFormat(traits.locale, traits.words, { say });
  const format = { ...own, ...others?.(own, traits) };
  return {
    language: traits.language,
    direction: traits.direction,
    format,
    say,
    t: (key, ...params) => say(message(key, ...params)),
  };
}

/** A look-up over whole sections. */
export function entriesOf(sections: readonly Section[]): (key: string) => Entry | undefined {
  const entries: Readonly<Record<string, Entry>> = Object.assign({}, ...sections);
  return (key) => (Object.hasOwn(entries, key) ? entries[key] : undefined);
}
