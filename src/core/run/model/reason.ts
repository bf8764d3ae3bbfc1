import { asWritten, type Message } from '../../messages/index.ts';

/** Where nothing is to be said: what is done is done without a reason. */
export const NO_REASON: Message = asWritten('');

/** Is there a reason to tell? */
export function isSaid(reason: Message): boolean {
  return !(reason.key === NO_REASON.key && reason.params['text'] === '');
}

/** What a person gave as the reason, or what stands where they gave none. */
export function reasonOf(text: string, otherwise: Message): Message {
  return text.trim() === '' ? otherwise : asWritten(text);
}
