import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { serve } from '../support/server.ts';
import {
  actUntil,
  beginRun,
  dispose,
  jump,
  look,
  openSheet,
  picture,
  press,
  see,
  startTablet,
  until,
  type Sheet,
  type Tablet,
} from '../support/tablet.ts';

const HOUR_MS = 3_600_000;

let tablet: Tablet;
let site: Awaited<ReturnType<typeof serve>>;
let sheet: Sheet;

/** A run that only rests: 24 h clocks and nothing to do. `wallMs`: when it begins. */
async function resting(wallMs?: number, zone?: string): Promise<void> {
  site = await serve();
  tablet = await startTablet(wallMs === undefined ? {} : { wallMs });
  sheet = await openSheet(tablet, undefined, async ({ page }) => {
    if (zone) await page.emulateTimezone(zone);
  });
  await sheet.page.goto(site.url);
  await beginRun(sheet);
  await actUntil(sheet, 'nothing to do just now');
}

/** Hours the first rest still takes, as the screen says. */
async function leftHours(): Promise<number> {
  const seen = await look(sheet);
  return (seen.wakeInS ?? Number.NaN) / 3600;
}

const asks = (text: string): boolean => /is .* the right time now/i.test(text);

afterEach(async () => {
  await dispose(tablet);
  await site.stop();
});

describe('the clock of the tablet', () => {
  describe('during a rest', () => {
    beforeEach(() => resting());

    it('set forward (or slept): asked once, and the rest counts the time only by a person’s word', async () => {
      await see(sheet, `hands.shift({ wallMs: ${3 * HOUR_MS} })`);
      await until(sheet, 'the question', (seen) => asks(seen.text));
      expect(await leftHours()).toBeGreaterThan(23.5);
      await picture(sheet, 'clock-forward');
      await press(sheet, 'Yes, it is');
      await until(sheet, 'no question any more', (seen) => !asks(seen.text));
      expect(await leftHours()).toBeGreaterThan(20.5);
      expect(await leftHours()).toBeLessThan(21.1);
      await jump(sheet, 60_000);
      expect(asks((await look(sheet)).text)).toBe(false);
    });

    it('set back: asked once, and the rest is neither lost nor prolonged', async () => {
      await jump(sheet, 2 * HOUR_MS);
      await see(sheet, `hands.shift({ wallMs: ${-5 * HOUR_MS} })`);
      await until(sheet, 'the question', (seen) => asks(seen.text));
      await picture(sheet, 'clock-back');
      expect(await leftHours()).toBeGreaterThan(21.5);
      expect(await leftHours()).toBeLessThan(22.1);
      await press(sheet, 'Yes, it is');
      await until(sheet, 'no question any more', (seen) => !asks(seen.text));
      expect(await leftHours()).toBeLessThan(22.1);
      await jump(sheet, 60_000);
      expect(asks((await look(sheet)).text)).toBe(false);
    });
  });

  it('goes to summer time: no question, and the rest is 24 hours, not 23', async () => {
    // The night of 13 to 14 March 2027: 02:00 becomes 03:00 in New York (IANA time zone database, rule of the United States).
    await resting(Date.parse('2027-03-13T21:30:00-05:00'), 'America/New_York');
    const before = await leftHours();
    await jump(sheet, 12 * HOUR_MS);
    await until(sheet, 'twelve hours less', (seen) => (seen.wakeInS ?? 0) < 12.1 * 3600);
    expect(before - (await leftHours())).toBeCloseTo(12, 1);
    const seen = await look(sheet);
    expect(asks(seen.text)).toBe(false);
    // The end of the rest is told in the time the wall clock will then show: an hour later by the hand than 24 hours before.
    const over = /over .*?(\d\d):(\d\d)/.exec(seen.text);
    const begun = await see<string>(
      sheet,
      `new Date(Date.now() + ${(seen.wakeInS ?? 0) * 1000}).toTimeString().slice(0, 5)`,
    );
    expect(`${over?.[1]}:${over?.[2]}`).toBe(begun);
    await picture(sheet, 'clock-summer-time');
  });

  it('moves to another time zone: nothing changes but what the hand shows', async () => {
    await resting();
    const before = await leftHours();
    await sheet.page.emulateTimezone('America/New_York');
    await jump(sheet, HOUR_MS);
    await until(sheet, 'an hour less', (seen) => (seen.wakeInS ?? 0) / 3600 < before - 0.9);
    expect(asks((await look(sheet)).text)).toBe(false);
    expect(before - (await leftHours())).toBeCloseTo(1, 1);
  });
});
