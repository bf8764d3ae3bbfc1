import { describe, expect, it } from 'vitest';
import { axeFindsNothing } from '../support/axe.ts';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';

/** Ten in the morning where the flat of the demo is (New York, winter time: UTC−5). */
const MONDAY_MORNING = Date.parse('2027-03-01T15:00:00Z');
/** On its wall, 14 hours before. */
const SUNDAY_EVENING = '2027-02-28T20:00';

const on = onTablet('test', async (at) => {
  await at.start({ wallMs: MONDAY_MORNING });
  await at.open();
});

describe('a last hot use', () => {
  // Verifies: I-17
  it('is told in the survey, asked again in the run, and the rest counts from it', async () => {
    const { screen } = on;
    await screen.openDemo('flat-coils');
    await screen.goTo('kitchen');
    await screen.button('kitchen.change').click();
    await screen.page.getByRole('link', { name: t('survey.chapter.people') }).click();
    const field = screen.field('survey.last-hot.all');
    await field.fill(SUNDAY_EVENING);
    await field.blur();
    await screen.picture('screens/5-survey-last-hot');
    await axeFindsNothing(screen, 'the last hot use in the survey');
    await screen.goTo('plan');
    await screen.waitForElement('.plan-place');
    await screen.button('plan-page.start-run').click();
    await screen.waitForElement('.start-screen');
    await screen.passHearingCheck();
    await screen.press('start-run');
    await screen.until('the run begins', ({ status }) => status === 'running');

    const asked = screen.page.locator('.last-hot-question');
    for (let acts = 0; acts < 80 && (await asked.count()) === 0; acts += 1) await screen.act();
    expect(await asked.innerText()).toContain('Sunday 28 February 20:00');
    await axeFindsNothing(screen, 'the question of the last hot use');
    await screen.picture('screens/3-run-last-hot');
    const rest = screen.page.locator('[data-list="timers"] [data-timer^="rest-"]').first();
    expect(await rest.innerText()).toMatch(/2[34] h/);
    await screen.press('last-hot-yes');
    await screen.page.waitForFunction(
      () => !/2[34] h/.test(document.querySelector('[data-timer^="rest-"]')?.textContent ?? '24 h'),
    );
    expect(await rest.innerText()).toMatch(/\b(9 h 5\d|10 h 00) min/);
  });
});
