import { describe, expect, it } from 'vitest';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';

/** Words that first-time users stumbled over. */
const on = onTablet('file', async (at) => {
  await at.open();
});

describe('the words of the first screens', () => {
  it('say what the app is for, in the word that everybody looks for', async () => {
    const { screen } = on;
    await screen.waitForElement('.welcome');
    expect(await screen.page.locator('.welcome').innerText()).toMatch(/kosher/i);
    for (const [width, height] of [
      [390, 844],
      [800, 1280],
      [1280, 800],
    ] as const) {
      await screen.resize(width, height);
      await screen.picture(`words/welcome-${width}`);
      expect(await screen.widthPx()).toBeLessThanOrEqual(width);
    }
  });

  it('count kettlefuls, and name a clock by its town', async () => {
    const { screen } = on;
    await screen.openDemo('flat-coils');
    const page = await screen.page.locator('.plan-place').innerText();
    expect(page).toContain('Kettlefuls');
    expect(page).toContain(t('plan-page.begin.zone', { zone: 'America/New_York' }));
    expect(page).toContain('By the clock in New York');
    expect(page).not.toContain('America/');
  });
});
