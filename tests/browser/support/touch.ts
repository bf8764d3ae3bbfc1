import { pause, type Screen } from './screen.ts';

/** A contact with the glass, as the touch screen reports it: radii in CSS px. */
export type Touch = {
  readonly radiusX: number;
  readonly radiusY: number;
  readonly heldMs: number;
  /** Points beside the first, CSS px from it. */
  readonly also?: readonly (readonly [number, number])[];
  readonly slidesPx?: number;
};

/** A fingertip. */
export const FINGER: Touch = { radiusX: 11, radiusY: 13, heldMs: 120 };

/** How long a button that was refused a drop waits for the drop's click, ms (src/app/parts/action.tsx), and a little. */
const SETTLES_MS = 450;

/** One contact with the glass in the middle of an element. */
export async function touchAt(screen: Screen, selector: string, how: Touch): Promise<void> {
  const { cdp } = screen;
  await pause(SETTLES_MS);
  // Past the guard against bounces.
  await screen.shift({ wallMs: 500, monoMs: 500 });
  const box = await screen.page.locator(selector).first().boundingBox();
  if (!box) throw new Error(`${selector} is not on the screen.`);
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  const { radiusX, radiusY } = how;
  const touchPoints = [[0, 0] as const, ...(how.also ?? [])].map(([dx, dy], id) => ({
    x: x + dx,
    y: y + dy,
    id,
    radiusX,
    radiusY,
    force: 1,
  }));
  const began = cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints });
  // Held for no time it ends before a slow machine has answered.
  if (how.heldMs > 0) await began;
  if (how.slidesPx !== undefined)
    await cdp.send('Input.dispatchTouchEvent', {
      type: 'touchMove',
      touchPoints: touchPoints.map((point) => ({ ...point, x: point.x + (how.slidesPx ?? 0) })),
    });
  if (how.heldMs > 0) await pause(how.heldMs);
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}
