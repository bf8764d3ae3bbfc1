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
  powerCut,
  see,
  startTablet,
  storedRecords,
  until,
  waitFor,
  type Sheet,
  type Tablet,
} from '../support/tablet.ts';

let tablet: Tablet;
let site: Awaited<ReturnType<typeof serve>>;
let sheet: Sheet;

beforeEach(async () => {
  site = await serve();
  tablet = await startTablet();
});
afterEach(async () => {
  await dispose(tablet);
  await site.stop();
});

/** A run in which a clock must be answered within a minute, in a browser that was killed and opened again untouched. */
async function coldStart(): Promise<void> {
  sheet = await openSheet(tablet, site.url);
  await beginRun(sheet);
  await actUntil(sheet, 'switch it off, open it away');
  const { wallMs } = await see<{ wallMs: number }>(sheet, 'hands.shifted()');
  await powerCut(tablet);
  tablet = await startTablet({ profile: tablet.profile, wallMs: Date.now() + wallMs });
  sheet = await openSheet(tablet, site.url);
  await until(sheet, 'the run is back', (seen) => seen.status !== '');
}

describe('the light of the sound', () => {
  it('asks for a touch with the whole screen after a cold start, flashes meanwhile, writes down what failed, and is armed by the touch', async () => {
    await coldStart();
    const cold = await until(sheet, 'the whole screen asks', (seen) => seen.armScreen);
    expect(cold.sound).toBe('touch-to-arm');
    expect(cold.text).toContain('Touch to arm the sound');
    const box = await see<{ width: number; height: number }>(
      sheet,
      "(({ width, height }) => ({ width, height }))(document.querySelector('.arm-screen').getBoundingClientRect())",
    );
    expect(box).toEqual({ width: 1180, height: 820 });
    await jump(sheet, 60_000);
    await waitFor(sheet, "document.querySelector('.flash')", 'the flash');
    // The flash lies over the arming screen, in a colour that is seen on it.
    const looks = await see<{ over: boolean; same: boolean }>(
      sheet,
      `(() => {
        const [flash, arm] = ['.flash', '.arm-screen'].map((one) => getComputedStyle(document.querySelector(one)));
        return { over: Number(flash.zIndex) > Number(arm.zIndex), same: flash.borderTopColor === arm.backgroundColor };
      })()`,
    );
    expect(looks).toEqual({ over: true, same: false });
    await picture(sheet, 'touch-to-arm');
    expect(await see(sheet, 'hands.audio.map((one) => one.state).join()')).not.toContain('running');
    await until(sheet, 'it is written down', () => true);
    const kinds = async () => (await storedRecords(sheet)).map(({ kind }) => kind);
    await expect.poll(kinds, { timeout: 5000 }).toContain('alarm-failed');

    await sheet.page.mouse.click(590, 700);
    await until(sheet, 'armed', (seen) => seen.sound === 'armed' && !seen.armScreen);
    const touchedMs = Date.now();
    await waitFor(sheet, `hands.begins.some((ms) => ms > ${touchedMs - 4000})`, 'the alarm sounds');
    await expect.poll(kinds, { timeout: 5000 }).toContain('alarm-handed');
    await picture(sheet, 'armed');
  });

  it('says blocked when the device stops the audio and it cannot be mended, and armed when it can again', async () => {
    sheet = await openSheet(tablet, site.url);
    await beginRun(sheet);
    await until(sheet, 'armed', (seen) => seen.sound === 'armed');
    await see(
      sheet,
      `{
        const resume = AudioContext.prototype.resume;
        window.giveBack = () => (AudioContext.prototype.resume = resume);
        AudioContext.prototype.resume = () => new Promise(() => undefined);
        hands.audio.forEach((one) => one.suspend());
      }`,
    );
    const blocked = await until(sheet, 'blocked', (seen) => seen.sound === 'blocked');
    expect(blocked.text).toContain('Sound is blocked');
    await picture(sheet, 'sound-blocked');
    await see(sheet, 'window.giveBack(); undefined');
    // Mending is tried every 10 s.
    await until(sheet, 'armed again', (seen) => seen.sound === 'armed', 14_000);
  });

  it('says blocked when the sound files cannot be had', async () => {
    sheet = await openSheet(tablet, undefined, async ({ page }) => {
      await page.evaluateOnNewDocument(() => {
        const fetchIt = globalThis.fetch;
        globalThis.fetch = (input, init) =>
          String(input).endsWith('.wav')
            ? Promise.reject(new TypeError('cut off'))
            : fetchIt(input, init);
      });
    });
    await sheet.page.goto(site.url);
    await beginRun(sheet);
    await until(sheet, 'blocked', (seen) => seen.sound === 'blocked');
    await picture(sheet, 'sound-files-missing');
  });

  it('says unknown until it has measured', async () => {
    sheet = await openSheet(tablet, site.url);
    await beginRun(sheet);
    await until(sheet, 'armed', (seen) => seen.sound === 'armed');
    await see(
      sheet,
      "window.seen = []; new MutationObserver(() => window.seen.push(hands.look().sound)).observe(document.body, { subtree: true, attributes: true, attributeFilter: ['data-sound'] }); undefined",
    );
    // A wake-up throws away what was measured before.
    await jump(sheet, 1000);
    await until(sheet, 'armed again', (seen) => seen.sound === 'armed');
    await waitFor(sheet, "window.seen.includes('unknown')", 'unknown was said');
    expect((await see<string[]>(sheet, 'window.seen')).at(-1)).toBe('armed');
    expect((await look(sheet)).text).toContain('Sound ready');
  });
});
