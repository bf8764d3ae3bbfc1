/**
 * - `main`: the main action, by a key that means "do it";
 * - `pedal`: the forward pedal, set to act: the main action by foot;
 * - `forward`, `back`: move through what can stand on the stage;
 * - `dismiss`: out of what lies on top, or toward safety when nothing does;
 * - `stop`: open what makes safe; `repeat`: say the last prompt again.
 */
export type Intent = 'main' | 'pedal' | 'forward' | 'back' | 'dismiss' | 'stop' | 'repeat';

/** What is needed of a key press. */
export type KeyPress = {
  readonly key: string;
  readonly repeat: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  /**
   * The element that has the focus takes this key itself: a field takes all,
   * a button takes Space and Enter, a region that scrolls takes the keys that
   * move it.
   */
  readonly focus: 'none' | 'control' | 'field' | 'scroller';
};

/** Keys of keyboards, page-turner pedals and big knobs (names of W3C UI Events key values). */
const INTENTS: ReadonlyMap<string, Intent> = new Map([
  [' ', 'main'],
  // not shown: key values of W3C UI Events.
  ['Enter', 'main'],
  ['ArrowRight', 'forward'],
  ['ArrowDown', 'forward'],
  ['PageDown', 'forward'],
  ['ArrowLeft', 'back'],
  ['ArrowUp', 'back'],
  ['PageUp', 'back'],
  // not shown: as above.
  ['Escape', 'dismiss'],
  ['s', 'stop'],
  ['S', 'stop'],
  ['r', 'repeat'],
  ['R', 'repeat'],
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
  const moves = intent === 'forward' || intent === 'back';
  if (moves && press.focus === 'scroller') return null;
  return pedalActs && intent === 'forward' ? 'pedal' : intent;
}

/** A second main action this soon after the first is a bounce of a pedal or a wet finger, ms. Common practice, no published source. */
const BOUNCE_MS = 400;

/** Lets a main action pass only when it is no bounce of the one before. */
export function createBounceGuard(): (intent: Intent, nowMs: number) => boolean {
  let lastMs = -Infinity;
  return (intent, nowMs) => {
    if (intent !== 'main' && intent !== 'pedal') return true;
    const bounced = nowMs - lastMs < BOUNCE_MS;
    lastMs = nowMs;
    return !bounced;
  };
}
