import { mkdirSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import {
  dropProfile,
  launch,
  newProfile,
  powerCut,
  tabletPage,
  type Running,
} from './support/browser.ts';
import { serve } from './support/server.ts';

/** Questions taken to the rabbi, their answers, and a custom of one's own; and what they print. */
const FOLDER = 'test-artifacts/screens';
/** A4 at 96 CSS px an inch. */
const A4 = { width: 794, height: 1123 };

let site: Awaited<ReturnType<typeof serve>>;
let profile: string;
let running: Running;
let page: Page;

beforeAll(async () => {
  mkdirSync(FOLDER, { recursive: true });
  site = await serve();
  profile = newProfile();
  running = await launch(profile);
  page = await tabletPage(running, { wallMs: Date.parse('2027-03-01T17:30:00Z') });
  page.setDefaultTimeout(10_000);
});
afterEach(async () => {
  await page.emulateMedia({ media: null });
  await page.evaluate(() => delete document.documentElement.dataset['printOnly']);
  await page.setViewportSize({ width: 1180, height: 820 });
});
afterAll(async () => {
  await powerCut(running);
  dropProfile(profile);
  await site.stop();
});

const part = (name: string) => page.getByRole('button', { name, exact: true });
const openAsks = () => page.locator('.questions > ol.question-list').first().locator('> li');
const answered = () => page.locator('.answered-list > li');
const method = (fixture: string) => page.locator(`.method[data-fixture="${fixture}"]`);

async function openDemo(): Promise<void> {
  await page.goto(`${site.url}/#/kitchen`);
  await page.locator('.demo', { hasText: 'Mountain house' }).click();
  await page.getByRole('heading', { name: 'Mountain house with gas' }).waitFor();
}

/** Opens the sheet of one question, taps one of its answers and keeps it. */
async function answer(fixture: string, choice: string, who: string): Promise<void> {
  await openAsks()
    .filter({ has: page.getByRole('heading', { name: fixture }) })
    .getByRole('button', { name: 'Enter the answer' })
    .click();
  const sheet = page.getByRole('dialog');
  await sheet.getByRole('button', { name: choice }).click();
  await sheet.getByLabel('Who said it').fill(who);
  await sheet.getByLabel('On which day').fill('2027-02-25');
  await sheet.getByRole('button', { name: 'Keep the answer' }).click();
  await sheet.waitFor({ state: 'detached' });
}

async function picture(name: string): Promise<void> {
  for (const [size, viewport] of [
    ['landscape', { width: 1180, height: 820 }],
    ['portrait', { width: 820, height: 1180 }],
  ] as const)
    for (const theme of ['day', 'night']) {
      await page.setViewportSize(viewport);
      await page.evaluate((t) => (document.documentElement.dataset['theme'] = t), theme);
      await page.screenshot({ path: `${FOLDER}/${name}-${size}-${theme}.png` });
      const widthPx = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(widthPx, `${name} ${size}`).toBeLessThanOrEqual(viewport.width);
    }
  await page.setViewportSize({ width: 1180, height: 820 });
  await page.evaluate(() => (document.documentElement.dataset['theme'] = 'day'));
}

describe('answers', () => {
  it('change the plan, and are still there after the page is opened anew', async () => {
    await openDemo();
    await part('Methods').click();
    await method('oven').getByText('The stricter way, until it is answered').waitFor();
    expect(await method('oven').locator('.method-what').innerText()).toContain('120 min');
    await picture('5-methods');

    await part('To ask').click();
    const before = await openAsks().count();
    expect(before).toBeGreaterThan(1);
    await picture('5-questions');
    await openAsks().first().getByRole('button', { name: 'Enter the answer' }).click();
    await picture('5-answer-sheet');
    await page.getByRole('dialog').getByRole('button', { name: 'Back' }).click();

    await answer('Gas oven of the range', 'One hour is accepted.', 'our rabbi');
    await answer(
      'Dishwasher under the corner counter',
      'Clean it, and run it empty at its hottest.',
      'our rabbi',
    );
    await expect.poll(() => openAsks().count()).toBe(before - 2);
    expect(await answered().allInnerTexts()).toEqual([
      expect.stringContaining('our rabbi, 2027-02-25'),
      expect.stringContaining('our rabbi, 2027-02-25'),
    ]);
    await picture('5-questions-answered');

    await part('Every step').click();
    await page
      .locator('.step-title')
      .getByText('Heat at the highest setting for 60 min: Gas oven of the range.')
      .waitFor();

    await page.reload();
    await page.getByRole('heading', { name: 'Mountain house with gas' }).waitFor();
    await part('Methods').click();
    expect(await method('oven').locator('.method-what').innerText()).toContain('60 min');
    expect(await method('dishwasher').innerText()).toContain('Your rabbi’s answer');

    await method('dishwasher').getByRole('button', { name: 'Take it back' }).click();
    await method('dishwasher').getByText('The stricter way, until it is answered').waitFor();
  });

  it('print the questions alone, with room to write', async () => {
    await openDemo();
    await part('To ask').click();
    const asks = await openAsks().count();
    // What the print button does, without the browser's own dialog.
    await page.evaluate(() => (document.documentElement.dataset['printOnly'] = 'questions'));
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize(A4);
    expect(await page.locator('.methods').isVisible()).toBe(false);
    expect(await page.locator('.shopping-list').isVisible()).toBe(false);
    expect(await page.locator('.questions .button:visible').count()).toBe(0);
    const lines = page.locator('.answer-line:visible');
    expect(await lines.count()).toBeGreaterThanOrEqual(asks);
    const box = await lines.first().boundingBox();
    // 12 mm of paper is the least that a pen writes a line or two in.
    expect(((box?.height ?? 0) / 96) * 25.4).toBeGreaterThan(12);
    await page.screenshot({ path: `${FOLDER}/5-questions-print.png`, fullPage: true });
  });
});

describe('a custom of one’s own', () => {
  it('is copied, changed by a row, followed after a reload, and taken back', async () => {
    await openDemo();
    await part('Methods').click();
    await page.getByRole('button', { name: 'Make a custom of our own' }).click();
    const sheet = page.getByRole('dialog', { name: 'A custom of your own' });
    await sheet.getByLabel('What you call it').fill('As at home');
    await sheet.getByRole('button', { name: /^Copy the/ }).click();
    await sheet.getByRole('heading', { name: 'As at home' }).waitFor();
    await sheet.locator('[data-row="burner-gas"]').getByRole('button', { name: 'Change' }).click();
    const row = page.getByRole('dialog', { name: /^Change the row/ });
    await row.getByLabel('Minutes').fill('15');
    await row.getByLabel('Who said it').fill('our rabbi');
    await row.getByLabel('Why').fill('Fifteen minutes is what we were taught.');
    await picture('5-own-row');
    await row.getByRole('button', { name: 'Keep the row' }).click();
    await sheet.getByText('Heat to glow, 15 min').waitFor();
    await picture('5-own-custom');
    await sheet.getByRole('button', { name: 'Done' }).click();

    await page.reload();
    await page.getByRole('heading', { name: 'Mountain house with gas' }).waitFor();
    await part('Methods').click();
    const range = method('range-top');
    expect(await range.locator('.method-what').innerText()).toContain('15 min');
    expect(await range.innerText()).toContain('Your own custom');

    await page.getByRole('button', { name: 'Your own custom' }).click();
    await sheet.getByRole('button', { name: 'Back to the custom’s row' }).click();
    await sheet.getByText('no row is changed yet').waitFor();
    await sheet.getByRole('button', { name: 'Delete this custom' }).click();
    await sheet.getByRole('button', { name: /^Yes, delete/ }).click();
    await sheet.getByRole('button', { name: 'Back', exact: true }).click();
    expect(await range.locator('.method-what').innerText()).toContain('30 min');
  });
});
