import { createSignal } from 'solid-js';

/** How long a refusal stays on the screen, ms. */
const SHOWN_MS = 8000;

/** A sentence for the person, shown for a while. */
export function createNotice() {
  const [notice, setNotice] = createSignal<string>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tell = (message: string): void => {
    setNotice(message);
    clearTimeout(timer);
    timer = setTimeout(() => setNotice(undefined), SHOWN_MS);
  };
  return { notice, tell };
}
