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

/** True when the touch is a person's press. */
export function isDeliberate(touch: Touch): boolean {
  if (touch.pointerType !== 'touch') return true;
  const size = Math.max(touch.widthPx, touch.heightPx);
  if (touch.touchesAtOnce > 1) return false;
  if (touch.heldMs < SHORTEST_PRESS_MS) return false;
  if (size > WIDEST_TOUCH_PX) return false;
  if (size > 1 && size < THINNEST_TOUCH_PX) return false;
  return touch.movedPx <= FARTHEST_SLIP_PX;
}
