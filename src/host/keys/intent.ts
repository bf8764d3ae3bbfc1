/** `main`: the main action; `forward`, `back`: move through what is on the stage; `dismiss`: close what lies on top. */
export type Intent = 'main' | 'forward' | 'back' | 'dismiss';

/** What is needed of a key press. */
export type KeyPress = {
  readonly key: string;
  readonly repeat: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  /** The element that has the focus takes this key itself: a field takes all, a button takes Space and Enter. */
  readonly focus: 'none' | 'control' | 'field';
};

/** Keys of keyboards, page-turner pedals and big knobs (names of W3C UI Events key values). */
const INTENTS: ReadonlyMap<string, Intent> = new Map([
  [' ', 'main'],
  ['Enter', 'main'],
  ['ArrowRight', 'forward'],
  ['ArrowDown', 'forward'],
  ['PageDown', 'forward'],
  ['ArrowLeft', 'back'],
  ['ArrowUp', 'back'],
  ['PageUp', 'back'],
  ['Escape', 'dismiss'],
]);

/**
 * What a key press means, or null: a held key, a shortcut of the browser, a
 * key that the focused element takes itself, or one without a meaning here.
 * With `pedalActs`, the forward pedal does the main action: a pedal has no
 * other key for it.
 */
export function intentOf(press: KeyPress, pedalActs: boolean): Intent | null {
  if (press.repeat || press.altKey || press.ctrlKey || press.metaKey) return null;
  const intent = INTENTS.get(press.key);
  if (!intent || press.focus === 'field') return null;
  if (intent === 'main' && press.focus === 'control') return null;
  return pedalActs && intent === 'forward' ? 'main' : intent;
}

/** A second main action this soon after the first is a bounce of a pedal or a wet finger, ms. Common practice, no published source. */
const BOUNCE_MS = 400;

/** Lets a main action pass only when it is no bounce of the one before. */
export function createBounceGuard(): (intent: Intent, nowMs: number) => boolean {
  let lastMs = -Infinity;
  return (intent, nowMs) => {
    if (intent !== 'main') return true;
    const bounced = nowMs - lastMs < BOUNCE_MS;
    lastMs = nowMs;
    return !bounced;
  };
}
