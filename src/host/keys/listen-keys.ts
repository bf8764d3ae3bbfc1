import { createBounceGuard, intentOf, type Intent, type KeyPress } from './intent.ts';

// not shown: selectors.
const FIELDS = 'input, textarea, select, [contenteditable]:not([contenteditable="false"])';
// not shown: selectors.
const CONTROLS = 'button, a[href], summary, [role="button"], [role="slider"]';
/** A region that a person scrolls by keys says so. */
const SCROLLERS = '[data-scrolls]';

function focusOf(target: EventTarget | null): KeyPress['focus'] {
  if (!(target instanceof Element)) return 'none';
  if (target.closest(FIELDS)) return 'field';
  if (target.closest(CONTROLS)) return 'control';
  return target.matches(SCROLLERS) ? 'scroller' : 'none';
}

type KeyOptions = {
  readonly onIntent: (intent: Intent) => void;
  /** Read at each press, so that a setting takes effect at once. */
  readonly pedalActs: () => boolean;
  /** False while something modal lies on top: then a key of the page means nothing. */
  readonly heeds: (intent: Intent) => boolean;
};

/** Listens to the whole page; gives back how to stop. */
export function listenKeys({ onIntent, pedalActs, heeds }: KeyOptions): () => void {
  const passes = createBounceGuard();
  const pressed = (event: KeyboardEvent): void => {
    if (event.defaultPrevented || event.isComposing) return;
    const { key, repeat, altKey, ctrlKey, metaKey } = event;
    const press = { key, repeat, altKey, ctrlKey, metaKey, focus: focusOf(event.target) };
    const intent = intentOf(press, pedalActs());
    if (!intent || !heeds(intent)) return;
    // Else Space and the page keys would scroll as well.
    event.preventDefault();
    if (passes(intent, performance.now())) onIntent(intent);
  };
  window.addEventListener('keydown', pressed);
  return () => window.removeEventListener('keydown', pressed);
}
