import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';

/** Two days before the eve of Passover, in the hall's own land. */
const MONDAY = Date.parse('2027-04-19T05:00:00Z');

const on = onTablet('file', async (at) => {
  await at.start({ wallMs: MONDAY });
  await at.open();
});

describe('a plan that is late', () => {
  it('says at what hour it ends, and after which festival, when there are fewer hands or a later start', async () => {
    const { screen } = on;
    await screen.openDemo('hall');
    // The first line says it; what it means opens under it, and is not said again among the notices.
    const late = () => screen.page.locator('.verdict--late .verdict-why p').allTextContents();
    expect(await late()).toEqual([]);
    await screen.goTo('kitchen');
    await screen.field('kitchen.choices.people').selectOption('2');
    await screen.goTo('plan');
    await screen.waitForElement('.plan-place');
    const begin = screen.page.locator('.begin-when input');
    await begin.fill('2027-04-20T08:00');
    await begin.blur();
    await expect
      .poll(async () => (await late()).join(), { timeout: 10_000 })
      .toMatch(/ends Wednesday 21 April \d\d:\d\d, /);
    await begin.fill('2027-04-20T15:00');
    await begin.blur();
    await expect
      .poll(async () => (await late()).join(), { timeout: 10_000 })
      .toMatch(/ends Friday 23 April \d\d:\d\d, after Passover, /);
    expect(await screen.page.locator('.notices li', { hasText: 'purging ends' }).count()).toBe(0);
    await screen.picture('late/after-passover');
  });
});
