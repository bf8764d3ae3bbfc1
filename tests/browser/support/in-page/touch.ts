/**
 * Runs inside the page before the app does: says where a touch should land, and whether it did.
 * Kept free of imports: it is handed to the browser as text.
 */
type TestTouch = {
  /** Middle of the first that is seen of a selector and can be pressed, CSS px; null while it moves. */
  aim(selector: string): Promise<{ x: number; y: number } | null>;
  /** The next touch should meet this. */
  expect(selector: string): void;
  /** What it met instead; empty where it met that, or where that touch led to another page. */
  missed(): string;
};

export function installTouch(): void {
  let expected: string | undefined;
  let met = 'nothing';
  const note = ({ target }: Event): void => {
    if (expected === undefined || !(target instanceof Element)) return;
    // In a picture a number may stand on what is pressed, and leads to it.
    const aimed = target.closest('svg')?.querySelector(expected);
    if (target.closest(expected) ?? aimed) expected = undefined;
    else met = target.outerHTML.slice(0, 200);
  };
  for (const kind of ['pointerdown', 'click']) addEventListener(kind, note, { capture: true });
  /** A page behind another one draws nothing. */
  const nextFrame = () =>
    new Promise((resolve) => {
      requestAnimationFrame(resolve);
      setTimeout(resolve, 100);
    });
  const touch: TestTouch = {
    async aim(selector) {
      const one = [...document.querySelectorAll(selector)].find(
        (element) => element.getClientRects().length > 0 && !element.matches(':disabled'),
      );
      if (!one) return null;
      one.scrollIntoView({ block: 'center', behavior: 'instant' });
      const before = one.getBoundingClientRect();
      await nextFrame();
      await nextFrame();
      const { x, y, width, height } = one.getBoundingClientRect();
      const stays = one.isConnected && x === before.x && y === before.y && width === before.width;
      return stays ? { x: x + width / 2, y: y + height / 2 } : null;
    },
    expect(selector) {
      expected = selector;
      met = 'nothing';
    },
    missed: () => (expected === undefined ? '' : met),
  };
  Object.assign(globalThis, { touch });
}
