import { isDeliberate, SHORTEST_PRESS_MS } from '../../../../parts/press/press.ts';

/** What a finger came down on. */
export type Grip =
  | { readonly kind: 'floor' }
  | { readonly kind: 'fixture'; readonly id: string }
  | { readonly kind: 'opening'; readonly id: string }
  | { readonly kind: 'wall'; readonly wall: number }
  | { readonly kind: 'corner'; readonly id: string; readonly corner: number }
  | { readonly kind: 'edge'; readonly id: string; readonly edge: number };

/** What of a pointer event counts. */
export type Contact = {
  readonly pointerId: number;
  readonly pointerType: string;
  readonly xPx: number;
  readonly yPx: number;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly atMs: number;
};

export type Gesture = {
  readonly from: Contact;
  readonly grip: Grip;
  readonly dragging: boolean;
};

/** A shorter way moves nothing: a wet finger slides this far while it presses. Common practice, no published source. */
const SHORTEST_DRAG_PX = 8;

export type Ending = 'tap' | 'dragged' | 'stray';

export function beginGesture(from: Contact, grip: Grip): Gesture {
  return { from, grip, dragging: false };
}

/** The gesture after a move; `byPx` is the way since it began, once it drags. */
export function moveGesture(
  gesture: Gesture,
  to: Contact,
): { readonly gesture: Gesture; readonly byPx?: readonly [number, number] } {
  if (to.pointerId !== gesture.from.pointerId) return { gesture };
  const byPx = [to.xPx - gesture.from.xPx, to.yPx - gesture.from.yPx] as const;
  if (!gesture.dragging && Math.hypot(...byPx) < SHORTEST_DRAG_PX) return { gesture };
  return { gesture: { ...gesture, dragging: true }, byPx };
}

/**
 * What it was in the end. Several fingers at once, a touch of a few
 * milliseconds or a wide splash is nobody's wish, however far it went.
 */
export function endGesture(gesture: Gesture, to: Contact, touchesAtOnce: number): Ending {
  const heldMs = to.atMs - gesture.from.atMs;
  const touch = to.pointerType === 'touch';
  if (touch && touchesAtOnce > 1) return 'stray';
  if (gesture.dragging) return touch && heldMs < SHORTEST_PRESS_MS ? 'stray' : 'dragged';
  const deliberate = isDeliberate({
    pointerType: to.pointerType,
    widthPx: Math.max(gesture.from.widthPx, to.widthPx),
    heightPx: Math.max(gesture.from.heightPx, to.heightPx),
    heldMs,
    touchesAtOnce,
    movedPx: Math.hypot(to.xPx - gesture.from.xPx, to.yPx - gesture.from.yPx),
  });
  return deliberate ? 'tap' : 'stray';
}

/** The grip written on what lies under the finger, or the floor. */
export function gripUnder(event: PointerEvent): Grip {
  const at = (event.target as Element).closest<SVGElement>('[data-grip]');
  const id = at?.dataset['id'] ?? '';
  const n = Number(at?.dataset['n'] ?? 0);
  const kind = at?.dataset['grip'];
  if (kind === 'corner') return { kind, id, corner: n };
  if (kind === 'edge') return { kind, id, edge: n };
  if (kind === 'wall') return { kind, wall: n };
  if (kind === 'fixture' || kind === 'opening') return { kind, id };
  return { kind: 'floor' };
}
