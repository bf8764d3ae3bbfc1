import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';

let comes: () => void;
const slow = new Promise<void>((resolve) => (comes = resolve));
/** The picture's part of the app comes late, as over a slow network or from a slow disk. */
const on = onTablet('file', async (at) => {
  await at.open('', async ({ page }) => {
    await page.route(/kitchen-glance.*\.js/, async (route) => {
      await slow;
      await route.continue();
    });
  });
});

describe('the buttons beside a step', () => {
  it('stay where they are when the picture of the kitchen comes late', async () => {
    const { screen } = on;
    await screen.resize(1280, 800);
    await screen.prepareRun();
    await screen.passHearingCheck();
    await screen.press('start-run');
    await screen.waitForElement('[data-action="until-when"]');
    const topPx = () =>
      screen.see<number>(
        `document.querySelector('[data-action="until-when"]').getBoundingClientRect().top`,
      );
    expect(await screen.page.locator('.kitchen-glance').count()).toBe(0);
    const before = await topPx();
    comes();
    await screen.waitForElement('.kitchen-glance .kitchen-plan');
    expect(Math.abs((await topPx()) - before)).toBeLessThanOrEqual(8);
  });
});
