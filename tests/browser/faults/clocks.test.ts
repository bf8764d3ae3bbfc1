import { beforeEach, describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';
import type { Seen } from '../support/in-page/hands.ts';

const HOUR_MS = 3_600_000;
const on = onTablet('test');

/** A run that only rests: 24 h timers and nothing to do. `wallMs`: when it begins. */
async function resting(wallMs?: number, zone?: string): Promise<void> {
  await on.start(wallMs === undefined ? {} : { wallMs });
  await on.open('', async ({ cdp }) => {
    if (zone) await cdp.send('Emulation.setTimezoneOverride', { timezoneId: zone });
  });
  await on.screen.beginRun();
  await on.screen.actUntil({ isQuiet: true });
  await on.screen.until('nothing but rests', (seen) => hours(seen) > 20);
}

const hours = ({ wakeInS }: Seen): number => (wakeInS ?? Number.NaN) / 3600;

/** Hours the first rest still takes, as the screen says. */
const leftHours = async (): Promise<number> => hours(await on.screen.look());

const clockIsAsked = () => on.screen.until('the question', (seen) => seen.asksClock);

async function answerClock(): Promise<void> {
  await on.screen.press('clock-right');
  await on.screen.until('no question any more', (seen) => !seen.asksClock);
}

describe('the clock of the tablet', () => {
  describe('during a rest', () => {
    beforeEach(() => resting());

    it('set forward (or slept): asked once, and the rest counts the time only by a person’s word', async () => {
      await on.screen.shift({ wallMs: 3 * HOUR_MS });
      await clockIsAsked();
      expect(await leftHours()).toBeGreaterThan(23.5);
      await on.screen.picture('faults/clock-forward');
      await answerClock();
      expect(await leftHours()).toBeGreaterThan(20.5);
      expect(await leftHours()).toBeLessThan(21.1);
      await on.screen.jump(60_000);
      expect((await on.screen.look()).asksClock).toBe(false);
    });

    it('set back: asked once, and the rest is neither lost nor prolonged', async () => {
      await on.screen.jump(2 * HOUR_MS);
      await on.screen.shift({ wallMs: -5 * HOUR_MS });
      await clockIsAsked();
      await on.screen.picture('faults/clock-back');
      expect(await leftHours()).toBeGreaterThan(21.5);
      expect(await leftHours()).toBeLessThan(22.1);
      await answerClock();
      expect(await leftHours()).toBeLessThan(22.1);
      await on.screen.jump(60_000);
      expect((await on.screen.look()).asksClock).toBe(false);
    });
  });

  it('goes to summer time: no question, and the rest is 24 hours, not 23', async () => {
    // The night of 13 to 14 March 2027: 02:00 becomes 03:00 in New York (IANA time zone database, rule of the United States).
    await resting(Date.parse('2027-03-13T21:30:00-05:00'), 'America/New_York');
    const before = await leftHours();
    await on.screen.jump(12 * HOUR_MS);
    const seen = await on.screen.until('twelve hours less', (now) => hours(now) < 12.1);
    expect(before - hours(seen)).toBeCloseTo(12, 1);
    expect(seen.asksClock).toBe(false);
    // The end of the rest is told in the time the wall clock will then show: an hour later by the hand than 24 hours before.
    const label = await on.screen.page.locator('.stage--quiet .countdown').first().innerText();
    const ends = await on.screen.see<string>(
      `new Date(Date.now() + ${(seen.wakeInS ?? 0) * 1000}).toTimeString().slice(0, 5)`,
    );
    expect(label).toContain(ends);
    await on.screen.picture('faults/clock-summer-time');
  });

  it('moves to another time zone: nothing changes but what the hand shows', async () => {
    await resting();
    const before = await leftHours();
    await on.screen.cdp.send('Emulation.setTimezoneOverride', { timezoneId: 'America/New_York' });
    await on.screen.jump(HOUR_MS);
    const seen = await on.screen.until('an hour less', (now) => hours(now) < before - 0.9);
    expect(seen.asksClock).toBe(false);
    expect(before - hours(seen)).toBeCloseTo(1, 1);
  });
});
