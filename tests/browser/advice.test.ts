import { describe, expect, it } from 'vitest';
import { t } from './support/language.ts';
import { onTablet } from './support/on-tablet.ts';

/** A Sunday at nine in the flat with coils: one hour earlier ends half a day sooner. */
const SUNDAY = Date.parse('2027-04-18T13:00:00Z');

const on = onTablet('file', async (at) => {
  await at.start({ wallMs: SUNDAY });
  await at.open();
});
const locate = (selector: string) => on.screen.page.locator(selector);
const advice = (kind: string) => locate(`.advice-list [data-change="${kind}"]`).first();
const begins = () => locate('.begin-when input').inputValue();
const whole = () => locate('.plan-facts dd').first().innerText();
const lookFor = async () => {
  await locate('[data-action="what-would-help"]').click();
  await locate('.advice-list').first().waitFor({ timeout: 120_000 });
  // The best three stand there, the others behind one press.
  await locate('.advice summary').click();
};
const take = (kind: string) => advice(kind).locator('[data-action="take-advice"]').click();

describe('what would help', () => {
  it('stands beside the plan with how sure its end is, is taken by one press and put back by another', async () => {
    const { screen } = on;
    await screen.openDemo('flat-coils');
    await locate('[data-sure] p').first().waitFor();
    expect(await locate('[data-sure]').innerText()).toMatch(/nine times in ten by .*\d\d:\d\d/);
    const before = await whole();

    await lookFor();
    await screen.picture('screens/5-advice');
    expect(await screen.widthPx()).toBeLessThanOrEqual(1180);
    const rows = await locate('.advice-list > li').allInnerTexts();
    expect(rows.length).toBeGreaterThan(3);
    for (const row of rows) expect(row).toMatch(/sooner|shorter|fewer|less/);

    // The household's word: rests count from the last hot use.
    await take('last-hot');
    await expect.poll(whole, { timeout: 60_000 }).not.toBe(before);
    await screen.picture('screens/5-advice-taken');
    await locate('[data-action="undo-advice"]').click();
    await expect.poll(whole, { timeout: 60_000 }).toBe(before);

    // What a rabbi decides is not taken by a press: it is asked who decided.
    await lookFor();
    await take('cover');
    await screen.dialog().getByLabel(t('kitchen.custom.way.said-by')).waitFor();
    await screen.picture('screens/5-advice-said');
    await screen.closeDialog();
    expect(await whole()).toBe(before);

    // Whoever would begin in the evening is told of the hours before it; and back.
    await locate('.begin-when input').fill('2027-04-18T19:00');
    await expect.poll(whole, { timeout: 60_000 }).not.toBe(before);
    const begin = await begins();
    await lookFor();
    await take('start');
    await expect.poll(begins, { timeout: 60_000 }).not.toBe(begin);
    await locate('[data-action="undo-advice"]').click();
    await expect.poll(begins, { timeout: 60_000 }).toBe(begin);
  });
});
