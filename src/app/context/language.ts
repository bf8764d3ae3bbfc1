import { createSignal } from 'solid-js';
import {
  createTranslator,
  entriesOf,
  type Message,
  type MessageKey,
  type ParamArgs,
} from '../../core/messages/index.ts';
import { english } from '../../core/messages/english/index.ts';
import { englishTraits } from '../../core/messages/english/traits.ts';

const [translator] = createSignal(createTranslator(englishTraits, entriesOf([english])));

/** The text of a key in the language of the page; read inside JSX it follows the language. */
export function t<K extends MessageKey>(key: K, ...params: ParamArgs<K>): string {
  return translator().t(key, ...params);
}

/** A message of the plan, the run or the report in the language of the page. */
export function say(message: Message): string {
  return translator().say(message);
}

export { translator };
