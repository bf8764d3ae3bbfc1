/**
 * Telling a finger from a splash. Drops make touches that are tiny, huge,
 * very short, or several at once; a knuckle or an elbow makes a wide one.
 * Keyboard and mouse pass untouched.
 */
export type Touch = {
  readonly pointerType: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly heldMs: number;
  readonly touchesAtOnce: number;
  readonly movedPx: number;
};

/** Shorter than any deliberate press seen in common practice; no published source. */
export const SHORTEST_PRESS_MS = 45;
/** An elbow on a 13-inch screen; wider is a wet cloth or a splash. Common practice, no published source. */
const WIDEST_TOUCH_PX = 190;
/**
 * About 1 mm at 150 CSS px an inch, thinner than a stylus: a drop. A device
 * that reports no size says 0 or 1 and is believed. Common practice, no
 * published source.
 */
const THINNEST_TOUCH_PX = 6;
const FARTHEST_SLIP_PX = 40;

/** Why a touch is no press: too short for a finger, not of one fingertip, or a slide over the glass. */
export type NoPress = 'short' | 'no-fingertip' | 'slide';

/** What a touch lacks to be a person's press; undefined: it is one. */
export function noPress(touch: Touch): NoPress | undefined {
  if (touch.pointerType !== 'touch') return undefined;
  const size = Math.max(touch.widthPx, touch.heightPx);
  const isThin = size > 1 && size < THINNEST_TOUCH_PX;
  if (touch.touchesAtOnce > 1 || size > WIDEST_TOUCH_PX || isThin) return 'no-fingertip';
  if (touch.movedPx > FARTHEST_SLIP_PX) return 'slide';
  return touch.heldMs < SHORTEST_PRESS_MS ? 'short' : undefined;
}

/** True when the touch is a person's press. */
export function isDeliberate(touch: Touch): boolean {
  return noPress(touch) === undefined;
}
