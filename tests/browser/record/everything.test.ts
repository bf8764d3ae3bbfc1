import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { axeFindsNothing } from '../support/axe.ts';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';
import { bringIn, playedFacts, runFile } from '../support/played-run.ts';

const folder = mkdtempSync(join(tmpdir(), 'glowpour-everything-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const on = onTablet('test');

/** The file that the device is handed, kept for the test. */
const KEEP_FILES = `(() => {
  const make = URL.createObjectURL.bind(URL);
  URL.createObjectURL = (what) => {
    if (what instanceof Blob) void what.text().then((text) => (window.lastFile = text));
    return make(what);
  };
})()`;

async function bringBack(text: string): Promise<string> {
  const { page } = on.screen;
  const path = join(folder, 'everything.glowpour.json');
  writeFileSync(path, text);
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    on.screen.press('bring-everything-back'),
  ]);
  await chooser.setFiles(path);
  const status = page.locator('.everything [role="status"] > p').first();
  await status.waitFor();
  return page.locator('.everything [role="status"]').innerText();
}

describe('everything in one file', () => {
  it('goes to another tablet and is there what it was', async () => {
    const first = await on.open('record', async ({ page }) => {
      await page.addInitScript(KEEP_FILES);
    });
    await bringIn(first, runFile(playedFacts('flat-coils', { disturbed: true })), folder);
    const digest = await first.page.locator('.record-digest strong').innerText();
    await first.page.locator('.record-history > summary').click();
    await first.page.locator('.record-history-runs > li').first().waitFor();
    expect(await first.page.locator('.record-history option').count()).toBeGreaterThan(5);
    for (const [width, height] of [
      [1280, 800],
      [390, 844],
    ] as const) {
      await first.resize(width, height);
      await first.see(`document.querySelector('.record-history').scrollIntoView()`);
      await first.picture(`everything/history-${width}`);
      expect(await first.widthPx()).toBeLessThanOrEqual(width);
    }
    await axeFindsNothing(first, 'the history of a place');
    await first.press('save-everything');
    const file = await first.waitFor<string>('window.lastFile', 'the file of everything');

    await on.end();
    await on.serve();
    const second = await on.open('record');
    expect(await bringBack(file)).toBe(
      t('record-page.restored', { kitchens: 0, runs: 1, same: 0 }),
    );
    await second.page.locator('.run-list a').first().click();
    await expect.poll(() => second.page.locator('.record-digest strong').innerText()).toBe(digest);
    expect(await bringBack(file)).toBe(
      t('record-page.restored', { kitchens: 0, runs: 0, same: 1 }),
    );
    expect(await second.page.locator('.run-list li').count()).toBe(1);
    const cut = await bringBack(file.slice(0, 500));
    expect(cut).toContain(t('problems.backup.cut'));
    await second.see(`document.querySelector('.everything').scrollIntoView()`);
    await second.picture('everything/cut');
    await axeFindsNothing(second, 'everything in one file');
  });
});
