import { describe, expect, it } from 'vitest';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';
import type { DemoId } from '../support/screen.ts';

/** Words in the picture of a kitchen: none lies over another, at any size. */
const on = onTablet('test', async (at) => {
  await at.open();
});

const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;

/** Pairs of words whose boxes meet, and how many words there are. */
const WORDS = `(() => {
  const boxes = [...document.querySelectorAll(':is(svg.kitchen-plan, svg.editor-plan) :is(.kp-word, .kp-mark > g)')]
    .filter((one) => one.getClientRects().length > 0)
    .map((one) => {
      // The letters alone: the halo round them may touch another one's.
      const { x, y, width, height } = one.getBBox();
      const { a, d, e, f } = one.getScreenCTM();
      const box = { left: x * a + e, right: (x + width) * a + e, top: y * d + f, bottom: (y + height) * d + f };
      return { text: one.textContent, box };
    });
  const meets = (a, b) =>
    a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
  const over = boxes.flatMap((a, i) =>
    boxes.slice(i + 1).filter((b) => meets(a.box, b.box)).map((b) => a.text + ' over ' + b.text));
  return { count: boxes.length, over };
})()`;

async function noneMeet(name: string): Promise<void> {
  for (const [width, height] of SIZES) {
    await on.screen.resize(width, height);
    const { count, over } = await on.screen.see<{ count: number; over: string[] }>(WORDS);
    await on.screen.picture(`names/${name}-${width}`);
    expect.soft({ name, width, over }).toEqual({ name, width, over: [] });
    expect(count).toBeGreaterThan(2);
  }
}

describe('names in the picture of a kitchen', () => {
  it.each<DemoId>(['flat-coils', 'mountain-gas', 'flat-glass-230', 'hall'])(
    'of %s never lie over each other',
    async (demo) => {
      await on.screen.openDemo(demo);
      await on.screen.goTo('kitchen');
      await on.screen.button('kitchen.change').click();
      await on.screen.waitForElement('svg.editor-plan');
      await on.screen.page
        .locator('.editor')
        .getByRole('button', { name: t('survey.editor.names') })
        .click();
      await on.screen.waitForElement('svg.editor-plan .kp-word');
      await noneMeet(demo);
    },
  );

  it('nor do the figures of a run, in the small picture', async () => {
    const { screen } = on;
    await screen.beginRun();
    await screen.actUntil({ isQuiet: true });
    await screen.waitForElement('svg.kitchen-plan .kp-mark');
    await noneMeet('run');
  });
});
