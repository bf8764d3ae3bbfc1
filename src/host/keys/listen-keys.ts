import { createBounceGuard, intentOf, type Intent, type KeyPress } from './intent.ts';

const FIELDS = 'input, textarea, select, [contenteditable]:not([contenteditable="false"])';
const CONTROLS = 'button, a[href], summary, [role="button"], [role="slider"]';

function focusOf(target: EventTarget | null): KeyPress['focus'] {
  if (!(target instanceof Element)) return 'none';
  if (target.closest(FIELDS)) return 'field';
  return target.closest(CONTROLS) ? 'control' : 'none';
}

type KeyOptions = {
  readonly onIntent: (intent: Intent) => void;
  /** Read at each press, so that a setting takes effect at once. */
  readonly pedalActs: () => boolean;
};

/** Listens to the whole page; gives back how to stop. */
export function listenKeys({ onIntent, pedalActs }: KeyOptions): () => void {
  const passes = createBounceGuard();
  const pressed = (event: KeyboardEvent): void => {
    if (event.defaultPrevented || event.isComposing) return;
    const { key, repeat, altKey, ctrlKey, metaKey } = event;
    const press = { key, repeat, altKey, ctrlKey, metaKey, focus: focusOf(event.target) };
    const intent = intentOf(press, pedalActs());
    if (!intent) return;
    // Else Space and the page keys would scroll as well.
    event.preventDefault();
    if (passes(intent, performance.now())) onIntent(intent);
  };
  window.addEventListener('keydown', pressed);
  return () => window.removeEventListener('keydown', pressed);
}
