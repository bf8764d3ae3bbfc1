import type { Locator } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { message } from '../../src/core/messages/index.ts';
import { format, say, t } from './support/language.ts';
import { onTablet } from './support/on-tablet.ts';

/** Questions taken to the rabbi, their answers, and a custom of one's own; and what they print. */
const FOLDER = 'screens';
/** A4 at 96 CSS px an inch. */
const A4 = { width: 794, height: 1123 };

const on = onTablet('file', async (at) => {
  await at.open();
});
afterEach(async () => {
  const { page } = on.screen;
  await page.emulateMedia({ media: null });
  await page.evaluate(() => delete document.documentElement.dataset['printOnly']);
  await on.screen.resize(1180, 820);
});

const locate = (selector: string) => on.screen.page.locator(selector);
const openAsks = () => locate('.questions > ol.question-list').first().locator('> li');
const answered = () => locate('.answered-list > li');
const method = (fixture: string) => locate(`.method[data-fixture="${fixture}"]`);
const whatIsDone = (fixture: string) => method(fixture).locator('.method-what').innerText();
const minutes = (n: number) => new RegExp(String.raw`\b${format.number(n)}\b`);

/** What is called by a key inside a part of the page. */
const buttonIn = (part: Locator, text: string) =>
  part.getByRole('button', { name: text, exact: true });

async function openDemo(): Promise<void> {
  await on.load('kitchen');
  await on.screen.openDemo('mountain-gas');
  await kitchenIsThere();
}

const kitchenIsThere = () =>
  on.screen.page.getByRole('heading', { name: 'Mountain house with gas' }).waitFor();

async function sayWho(sheet: Locator): Promise<void> {
  await sheet.getByLabel(t('kitchen.custom.way.said-by')).fill('our rabbi');
  await sheet.getByLabel(t('kitchen.custom.way.said-on')).fill('2027-02-25');
}

/** Opens the sheet of a question about a fixture, taps an answer by its place among those given, and keeps it. */
async function answer(fixture: string, question: string, choice: number): Promise<void> {
  const { page } = on.screen;
  const ask = openAsks()
    .filter({ has: page.getByRole('heading', { name: fixture }) })
    .filter({ hasText: question });
  await buttonIn(ask, t('plan-page.questions.enter')).click();
  const sheet = on.screen.dialog();
  await sheet.locator('.answer-choice').nth(choice).click();
  await sayWho(sheet);
  await buttonIn(sheet, t('plan-page.answer.keep')).click();
  await sheet.waitFor({ state: 'detached' });
}

async function picture(name: string): Promise<void> {
  const { screen } = on;
  for (const [size, width, height] of [
    ['landscape', 1180, 820],
    ['portrait', 820, 1180],
  ] as const)
    for (const theme of ['day', 'night'] as const) {
      await screen.resize(width, height);
      await screen.setTheme(theme);
      await screen.picture(`${FOLDER}/${name}-${size}-${theme}`);
      expect(await screen.widthPx(), `${name} ${size}`).toBeLessThanOrEqual(width);
    }
  await screen.resize(1180, 820);
  await screen.setTheme('day');
}

describe('answers', () => {
  it('change the plan, and are still there after the page is opened anew', async () => {
    const { screen } = on;
    await openDemo();
    await screen.openPart('methods');
    await method('oven').getByText(t('plan-page.methods.provisional')).waitFor();
    expect(await whatIsDone('oven')).toMatch(minutes(120));
    await picture('5-methods');

    await screen.openPart('ask');
    const before = await openAsks().count();
    expect(before).toBeGreaterThan(1);
    await picture('5-questions');
    await buttonIn(openAsks().first(), t('plan-page.questions.enter')).click();
    await picture('5-answer-sheet');
    await buttonIn(screen.dialog(), t('plan-page.back')).click();

    await answer('Gas oven of the range', t('custom.way.oven-plain.ask'), 0);
    await answer('Dishwasher under the corner counter', t('custom.way.dishwasher.ask'), 0);
    await expect.poll(() => openAsks().count()).toBe(before - 2);
    expect(await answered().allInnerTexts()).toEqual([
      expect.stringMatching(/our rabbi[^]*2027/),
      expect.stringMatching(/our rabbi[^]*2027/),
    ]);
    await picture('5-questions-answered');

    await screen.openPart('steps');
    const oven = { oven: 'Gas oven of the range', lengthS: 3600 };
    await locate('.step-title').getByText(t('steps.oven.title', oven)).first().waitFor();

    await on.load('plan');
    await kitchenIsThere();
    await screen.openPart('methods');
    expect(await whatIsDone('oven')).toMatch(minutes(60));
    expect(await method('dishwasher').innerText()).toContain(t('plan-page.methods.answered'));

    await buttonIn(method('dishwasher'), t('plan-page.methods.take-back')).click();
    await method('dishwasher').getByText(t('plan-page.methods.provisional')).waitFor();
  });

  it('print the questions alone, with room to write', async () => {
    const { screen } = on;
    await openDemo();
    await screen.openPart('ask');
    const asks = await openAsks().count();
    // What the print button does, without the browser's own dialog.
    await screen.page.evaluate(() => (document.documentElement.dataset['printOnly'] = 'questions'));
    await screen.page.emulateMedia({ media: 'print' });
    await screen.resize(A4.width, A4.height);
    expect(await locate('.methods').isVisible()).toBe(false);
    expect(await locate('.shopping-list').isVisible()).toBe(false);
    expect(await locate('.questions .button:visible').count()).toBe(0);
    const lines = locate('.answer-line:visible');
    expect(await lines.count()).toBeGreaterThanOrEqual(asks);
    const box = await lines.first().boundingBox();
    // 12 mm of paper is the least that a pen writes a line or two in.
    expect(((box?.height ?? 0) / 96) * 25.4).toBeGreaterThan(12);
    await screen.picture(`${FOLDER}/5-questions-print`);
  });
});

describe('a custom of one’s own', () => {
  it('is copied, changed by a row, followed after a reload, and taken back', async () => {
    const { screen } = on;
    const own = () =>
      screen.page.getByRole('dialog', { name: t('kitchen.custom.title'), exact: true });
    await openDemo();
    await screen.openPart('methods');
    await screen.button('plan-page.methods.make-own-custom').click();
    await own().getByLabel(t('kitchen.custom.called')).fill('As at home');
    const copied = { custom: message('common.custom.ashkenazic') };
    await buttonIn(own(), t('kitchen.custom.copy', copied)).click();
    await own().getByRole('heading', { name: 'As at home' }).waitFor();
    const gas = own().locator('[data-row="burner-gas"]');
    await buttonIn(gas, t('kitchen.custom.change')).click();
    const row = screen.dialog().last();
    await row.getByLabel(t('kitchen.custom.way.minutes')).fill('15');
    await sayWho(row);
    await row
      .getByLabel(t('kitchen.custom.way.why'))
      .fill('Fifteen minutes is what we were taught.');
    await picture('5-own-row');
    await buttonIn(row, t('kitchen.custom.keep-row')).click();
    const way = message('kitchen.custom.timed-way', {
      method: message('common.method.glow'),
      minutes: 15,
      thenCover: false,
    });
    await gas.getByText(say(way)).waitFor();
    await picture('5-own-custom');
    await buttonIn(own(), t('kitchen.custom.done')).click();

    await on.load('plan');
    await kitchenIsThere();
    await screen.openPart('methods');
    expect(await whatIsDone('range-top')).toMatch(minutes(15));
    expect(await method('range-top').innerText()).toContain(t('plan-page.methods.own-custom'));

    await screen.button('plan-page.methods.own-custom').click();
    await buttonIn(own(), t('kitchen.custom.back-to-row')).click();
    await buttonIn(gas, t('kitchen.custom.back-to-row')).waitFor({ state: 'detached' });
    await buttonIn(own(), t('kitchen.custom.delete')).click();
    await buttonIn(own(), t('kitchen.custom.delete-sure', { name: 'As at home' })).click();
    await buttonIn(own(), t('kitchen.custom.back')).click();
    await expect.poll(() => whatIsDone('range-top')).toMatch(minutes(30));
  });
});
