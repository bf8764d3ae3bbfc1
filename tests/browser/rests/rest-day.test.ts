import { describe, expect, it } from 'vitest';
import { axeFindsNothing } from '../support/axe.ts';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';

/** Ten in the morning where the flat of the demo is (New York, winter time: UTC−5). */
const THURSDAY_MORNING = Date.parse('2027-03-04T15:00:00Z');
/** Candles there are lit at 17:33, and on Saturday it is night at 18:33 (npm run reckon -- rest-days). */
const FRIDAY_NIGHT = Date.parse('2027-03-06T00:00:00Z');
const SATURDAY_NIGHT = Date.parse('2027-03-07T00:15:00Z');

const on = onTablet('test', async (at) => {
  await at.start({ wallMs: THURSDAY_MORNING });
  await at.open('', async ({ cdp }) => {
    // The kitchen's time is told, wherever the tablet thinks it is.
    await cdp.send('Emulation.setTimezoneOverride', { timezoneId: 'UTC' });
  });
});

describe('a Sabbath in the middle of a run', () => {
  // Verifies: I-19
  it('shows a still page that asks nothing, and tells afterwards what came due', async () => {
    const { screen } = on;
    const jumpTo = async (wallMs: number) =>
      screen.jump(wallMs - (await screen.see<number>('Date.now()')));
    await screen.beginRun();
    await screen.actUntil({ isQuiet: true });
    await screen.press('until-when');
    await screen.waitForElement('.days-zone');
    expect(await screen.dialog().innerText()).toMatch(/17:33[^]*18:33/);
    await screen.picture('screens/3-run-other-zone');
    await screen.closeDialog();
    await jumpTo(FRIDAY_NIGHT);
    const restDay = screen.page.locator('.rest-day');
    await restDay.waitFor();
    const told = await restDay.innerText();
    expect(told).toContain(t('calendar.day.sabbath'));
    expect(told).toContain('18:33');
    expect(await screen.look()).toMatchObject({ action: '', armScreen: false });
    expect(await screen.page.locator('.flash').count()).toBe(0);
    await axeFindsNothing(screen, 'the rest day');
    await screen.picture('screens/3-run-rest-day');

    await jumpTo(SATURDAY_NIGHT);
    await restDay.waitFor({ state: 'detached' });
    await screen.picture('screens/3-run-after-rest-day');
    expect((await screen.actUntil({ status: 'closed' }, 1500)).status).toBe('closed');
  });
});
