import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';

let comes: () => void;
const slow = new Promise<void>((resolve) => (comes = resolve));
/** The picture's part of the app comes late, as over a slow network or from a slow disk. */
const on = onTablet('file', async (at) => {
  await at.open('', async ({ page }) => {
    // What a service worker has kept is not late.
    await page.addInitScript(() => {
      ServiceWorkerContainer.prototype.register = () => new Promise(() => undefined);
    });
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
    // The first frame of the run is laid out once more before anybody sees it.
    await screen.see('new Promise((r) => requestAnimationFrame(() => requestAnimationFrame(r)))');
    const before = await topPx();
    expect(await screen.page.locator('.kitchen-glance').count()).toBe(0);
    comes();
    await screen.waitForElement('.kitchen-glance .kitchen-plan');
    expect(Math.abs((await topPx()) - before)).toBeLessThanOrEqual(8);
  });
});
