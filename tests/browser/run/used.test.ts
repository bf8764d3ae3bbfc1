import { describe, expect, it } from 'vitest';
import { axeFindsNothing } from '../support/axe.ts';
import { onTablet } from '../support/on-tablet.ts';
import type { Screen } from '../support/screen.ts';
import { storedEntries } from '../support/stored-run.ts';

/** Telling that something was used: which one first, words only if one has some, and what it did. */
let screen: Screen;
const on = onTablet('file', async (at) => {
  screen = await at.open();
  await screen.resize(1280, 800);
  await screen.beginRun();
});

const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;

async function openUsed(): Promise<void> {
  await screen.press('happened');
  await screen.press('used');
  await screen.waitForElement('.used-picture .kp-fixture');
}

/** Buttons of the sheet that nothing can be done with. */
const DEAD = `document.querySelectorAll('dialog[open] .sheet-body button:disabled').length`;

describe('something that was used', () => {
  it('is pressed on the picture, says what telling it does, and takes no words to be told', async () => {
    await screen.actUntil({ isQuiet: true });
    await openUsed();
    expect(await screen.see(DEAD)).toBe(0);
    await screen.pressAt('.used-picture [data-fixture="sink"]');
    const says = screen.page.locator('.used-says');
    expect(await says.innerText()).toMatch(
      /^Kitchen sink: its rest will begin again, ready .*\d\d:\d\d\.$/,
    );
    for (const [width, height] of SIZES) {
      await screen.resize(width, height);
      await screen.picture(`used/chosen-${width}`);
      expect(await screen.widthPx()).toBeLessThanOrEqual(width);
    }
    await screen.resize(1280, 800);
    await axeFindsNothing(screen, 'a fixture that was used');
    await screen.press('tell-used');
    await expect
      .poll(() => says.innerText())
      .toMatch(/^Kitchen sink: rests again, ready .*\d\d:\d\d\.$/);
    await screen.picture('used/told');
    const kinds = (await storedEntries(screen)).map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind === 'recheck-reported')).toHaveLength(1);
    await screen.press('back');
    await screen.dialog().waitFor({ state: 'detached' });
    const left = screen.page.locator('[data-timer^="rest-sink"] .clock-left').first();
    expect(await left.innerText()).toMatch(/^(24 h 00|23 h 59)/);
  });

  it('was the wrong one: one press gives its rest back, and the record keeps both words', async () => {
    const left = screen.page.locator('[data-timer^="rest-oven"] .clock-left').first();
    await screen.jump(2 * 3_600_000);
    await screen.until('it is awake', ({ isQuiet }) => isQuiet);
    await expect.poll(() => left.innerText()).toMatch(/^2[12] h/);
    await openUsed();
    // It lies under the cooktop: its number stands before it.
    const { oven } = await screen.see<Record<string, number>>(
      `Object.fromEntries([...document.querySelectorAll('.used-name')].map((one) => [one.dataset.action.slice(5), Number(one.querySelector('strong').innerText)]))`,
    );
    await screen.page.locator('.used-picture .kp-mark', { hasText: String(oven) }).click();
    await screen.press('tell-used');
    await screen.waitForElement('[data-action="undo-used"]');
    await expect.poll(() => left.innerText()).toMatch(/^2[34] h/);
    await screen.picture('used/undo');
    await screen.press('undo-used');
    await expect.poll(() => screen.page.locator('.used-says').innerText()).toContain('as before');
    await expect.poll(() => left.innerText()).toMatch(/^2[12] h/);
    const kinds = (await storedEntries(screen)).map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind === 'recheck-withdrawn')).toHaveLength(1);
    await screen.press('back');
    await screen.dialog().waitFor({ state: 'detached' });
  });

  it('is found by its name, too; what has no rest yet says that nothing is lost', async () => {
    await openUsed();
    await screen.press('used-microwave');
    await screen.waitForElement('.used-picture .kp-fixture--selected[data-fixture="microwave"]');
    expect(await screen.page.locator('.used-says').innerText()).toContain(
      'Microwave on the left counter',
    );
    await screen.closeDialog();
  });

  it('asks for the words where they are needed, instead of a dead button', async () => {
    await screen.press('happened');
    await screen.press('note');
    expect(await screen.see(DEAD)).toBe(0);
    await screen.press('keep-note');
    await screen.waitForElement('dialog[open] [role="alert"]');
    await screen.page.locator('input[name="what"]').fill('The window was opened.');
    await screen.press('keep-note');
    await screen.dialog().waitFor({ state: 'detached' });
    await expect
      .poll(async () => (await storedEntries(on.screen)).map(({ text }) => text))
      .toContain('The window was opened.');
  });
});
