import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import { storedEntries } from '../support/stored-run.ts';

/** A mistake in one part of the screen, planted from outside: what draws there throws. */
const on = onTablet('test', async (at) => {
  const screen = await at.open();
  await screen.beginRun();
  await screen.waitForElement('.stage-sentence');
});

/** From now on every drawing of a path, or of a text node of a class, fails as long as it is planted. */
const plant = `(() => {
  const real = Element.prototype.setAttribute;
  globalThis.mend = () => (Element.prototype.setAttribute = real);
  Element.prototype.setAttribute = function (name, value) {
    if (this.closest?.('svg') || this instanceof SVGElement) throw new Error('planted: no picture');
    return real.call(this, name, value);
  };
})()`;

describe('a part of the screen that fails', () => {
  it('says so in its place; clocks, presses and Stop live on, and the record has it', async () => {
    const { screen } = on;
    await screen.actUntil({ stage: 'boil', action: 'confirm' });
    const clocks = await screen.page.locator('[data-list="timers"] li').count();
    expect(clocks).toBeGreaterThan(0);
    await screen.see(plant);
    // On to the pour, whose picture cannot be drawn.
    await screen.press('confirm');
    const broken = await screen.waitFor<string[]>(
      `(() => {
        const parts = [...document.querySelectorAll('[data-broken]')];
        return parts.length > 0 ? parts.map((e) => e.dataset.broken) : null;
      })()`,
      'a part that says that it failed',
    );
    expect(broken.length).toBeGreaterThan(0);
    await screen.picture('faults/broken-part');
    expect((await screen.look()).status).toBe('running');
    const noted = (await storedEntries(screen)).flatMap(({ text }) => text ?? []);
    expect(noted).toEqual([expect.stringContaining('planted: no picture')]);
    const left = () => screen.page.locator('[data-list="timers"] .clock-left').allInnerTexts();
    const before = await left();
    await screen.jump(60_000);
    await screen.waitFor(
      `JSON.stringify([...document.querySelectorAll('[data-list="timers"] .clock-left')].map((e) => e.innerText)) !== ${JSON.stringify(JSON.stringify(before))} || null`,
      'clocks that go on',
    );
    await screen.see('globalThis.mend()');
    await screen.press('draw-again');
    await screen.waitForElement('[data-broken]', 'gone');
    await screen.press('stop');
    await screen.press('stop-run');
    await screen.until('stopped', ({ status }) => ['closing', 'closed'].includes(status));
  });
});

describe('a mistake behind a press, on a page without a run', () => {
  it('is told, and the page goes on', async () => {
    const screen = await on.open();
    await screen.waitForElement('.demo, .plan-place, .run-place');
    await screen.see(`setTimeout(() => { throw new Error('planted: nothing came of it'); }, 0)`);
    const told = screen.page.locator('[role="status"]', { hasText: 'planted: nothing came of it' });
    await told.waitFor();
    await screen.goTo('record');
  });
});
