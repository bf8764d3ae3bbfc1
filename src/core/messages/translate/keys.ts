import type { English } from '../english/index.ts';
import type { Formatter, Message, Params } from '../model/message.ts';

/** English is the catalogue that says which keys there are and what fills them. */
export type MessageKey = keyof English;

/** What fills the sentence of a key; an empty object for fixed text. */
type ParamsOf<K extends MessageKey> = English[K] extends (
  params: infer P,
  format: Formatter,
) => string
  ? unknown extends P
    ? Record<never, never>
    : P
  : Record<never, never>;

/** Keys whose text is fixed. */
export type PlainKey = {
  readonly [K in MessageKey]: Record<never, never> extends ParamsOf<K> ? K : never;
}[MessageKey];

/** Arguments after a key: its parameters, or nothing where the text is fixed. */
export type ParamArgs<K extends MessageKey> =
  Record<never, never> extends ParamsOf<K> ? [] : [params: ParamsOf<K>];

/** A sentence to be made later. A key that does not exist, or parameters that do not fit, do not compile. */
export function message<K extends MessageKey>(key: K, ...[params]: ParamArgs<K>): Message {
  return { key, params: (params ?? {}) as Params };
}

/** The same sentence with a time of day filled in by a view that knows it; one that has no room for it stays as it is. */
export function untilTold({ key, params }: Message, until: Message): Message {
  return { key, params: { ...params, until } };
}

/** The label of what is expected, while it still lies ahead; one that says the same before and after stays as it is. */
export function aheadTold({ key, params }: Message): Message {
  return { key, params: { ...params, isAhead: true } };
}

/** What a person wrote, shown as it is: a name, a note, a reason, an answer of the household's rabbi. */
export function asWritten(text: string): Message {
  return message('common.as-written', { text });
}
