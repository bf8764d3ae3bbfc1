import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import type { Screen } from '../support/screen.ts';

/** Thursday 09:00 in New York, where the flat is; the tablet is set to UTC, five hours on. */
const THURSDAY = Date.parse('2027-03-04T14:00:00Z');

let screen: Screen;
const on = onTablet('file', async (at) => {
  await at.start({ wallMs: THURSDAY, env: { TZ: 'UTC' } });
  screen = await at.open();
});

const clocks = (text: string): readonly string[] => text.match(/\d\d:\d\d/g) ?? [];

describe('the hours of a kitchen on a tablet of another zone', () => {
  it('are the same on plan, run and record, and the difference is said once', async () => {
    expect(await screen.see('new Date().getTimezoneOffset()')).toBe(0);
    await screen.openDemo('flat-coils');
    const sabbath = clocks(await screen.page.locator('.begin-rests li').first().innerText());
    expect(sabbath).toHaveLength(2);
    expect(sabbath.every((clock) => clock > '17:00' && clock < '19:30')).toBe(true);
    expect(await screen.page.locator('.begin-when input').inputValue()).toBe('2027-03-04T09:15');

    await screen.button('plan-page.start-run').click();
    await screen.waitForElement('.start-screen');
    expect(await screen.page.locator('.days-zone').count()).toBe(1);
    expect(await screen.page.locator('.days-zone').innerText()).toContain('14:0');
    await screen.passHearingCheck();
    await screen.press('start-run');
    await screen.until('the run begins', ({ status }) => status === 'running');
    await screen.press('until-when');
    const days = screen.page.locator('dialog[open] .days');
    const said = await days.innerText();
    for (const clock of sabbath) expect(said).toContain(clock);
    expect(await days.locator('.days-zone').count()).toBe(1);
    await screen.picture('zones/until-when');
    await screen.closeDialog();

    await screen.goTo('record');
    await screen.page.locator('main article').waitFor();
    const record = await screen.page.locator('main article').innerText();
    expect(record).toContain('09:0');
    expect(record).not.toContain('14:0');
    await screen.picture('zones/record');
  });
});

describe('the chosen beginning', () => {
  it('is there after a reload, and its hours with it', async () => {
    const other = await on.open('kitchen');
    await other.openDemo('flat-glass-230');
    const field = other.page.locator('.begin-when input');
    await field.fill('2027-03-10T07:30');
    await field.blur();
    const told = other.page.locator('.begin-days');
    await expect.poll(() => field.inputValue()).toBe('2027-03-10T07:30');
    await expect.poll(() => told.locator('li').first().innerText()).toContain('12 March');
    const before = await told.innerText();
    await on.load('plan');
    await other.waitForElement('.plan-place');
    expect(await field.inputValue()).toBe('2027-03-10T07:30');
    await expect.poll(() => told.innerText()).toBe(before);
  });
});
