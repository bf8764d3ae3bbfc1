import { createSignal } from 'solid-js';
import type { Message } from '../../core/messages/index.ts';

/** How long a refusal stays on the screen, ms. */
const SHOWN_MS = 8000;

/** A sentence for the person, shown for a while. */
export function createNotice() {
  const [notice, setNotice] = createSignal<Message>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tell = (message: Message): void => {
    setNotice(message);
    clearTimeout(timer);
    timer = setTimeout(() => setNotice(undefined), SHOWN_MS);
  };
  return { notice, tell };
}
