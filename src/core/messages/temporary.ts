import { english } from './english/index.ts';
import { englishTraits } from './english/traits.ts';
import type { Message } from './model/message.ts';
import { message } from './translate/keys.ts';
import { createTranslator, entriesOf } from './translate/translator.ts';

const translator = createTranslator(englishTraits, entriesOf([english]));

/** Until its sentence has a key. */
export function unkeyed(text: string): Message {
  return message('common.as-written', { text });
}

/** Until what reads it takes a message. */
export function inEnglish(text: Message): string {
  return translator.say(text);
}
