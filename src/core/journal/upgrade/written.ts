import { asWritten, type Message } from '../../messages/index.ts';

/** English text of version 1 as a message: it stays as it was written, in whatever language it is read. */
export function written(text: string): Message {
  return asWritten(text);
}

export function allWritten(texts: readonly string[]): readonly Message[] {
  return texts.map(written);
}
