import { describe, expect, it } from 'vitest';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';
import type { Screen } from '../support/screen.ts';
import { storedEntries } from '../support/stored-run.ts';

const on = onTablet('test');

/** What the light of the sound is, when it is so; and that it says so. */
async function light(
  screen: Screen,
  is: 'armed' | 'blocked' | 'touch-to-arm',
  limitMs?: number,
): Promise<void> {
  const seen = await screen.until(is, ({ sound }) => sound === is, limitMs);
  expect(seen.text).toContain(t(`run.light.sound.${is}`));
}

/** A run in which a timer must be answered within a minute, in a browser that was killed and opened again untouched. */
async function coldStart(): Promise<Screen> {
  const before = await on.open();
  await before.beginRun();
  await before.actUntil({ kind: 'steam', stage: 'open' });
  await on.cutPower(0);
  const screen = await on.open();
  await screen.until('the run is back', (seen) => seen.status !== '');
  return screen;
}

describe('the light of the sound', () => {
  it('asks for a touch with the whole screen after a cold start, flashes meanwhile, writes down what failed, and is armed by the touch', async () => {
    const screen = await coldStart();
    await screen.until('the whole screen asks', (seen) => seen.armScreen);
    await light(screen, 'touch-to-arm');
    const box = await screen.see<{ width: number; height: number }>(
      "(({ width, height }) => ({ width, height }))(document.querySelector('.arm-screen').getBoundingClientRect())",
    );
    expect(box).toEqual({ width: 1180, height: 820 });
    await screen.jump(60_000);
    await screen.waitForElement('.flash');
    // The flash lies over the arming screen, in a colour that is seen on it.
    const looks = await screen.see<{ over: boolean; same: boolean }>(
      `(() => {
        const [flash, arm] = ['.flash', '.arm-screen'].map((one) => getComputedStyle(document.querySelector(one)));
        return { over: Number(flash.zIndex) > Number(arm.zIndex), same: flash.borderTopColor === arm.backgroundColor };
      })()`,
    );
    expect(looks).toEqual({ over: true, same: false });
    await screen.picture('faults/touch-to-arm');
    expect(await screen.see('hands.audio.map((one) => one.state).join()')).not.toContain('running');
    const kinds = async () => (await storedEntries(screen)).map(({ kind }) => kind);
    await expect.poll(kinds, { timeout: 5000 }).toContain('alarm-failed');

    await screen.page.mouse.click(590, 700);
    await screen.until('armed', (seen) => seen.sound === 'armed' && !seen.armScreen);
    const touchedMs = Date.now();
    await screen.waitFor(`hands.begins.some((ms) => ms > ${touchedMs - 4000})`, 'the alarm sounds');
    await expect.poll(kinds, { timeout: 5000 }).toContain('alarm-handed');
    await screen.picture('faults/armed');
  });

  it('says blocked when the device stops the audio and it cannot be mended, and armed when it can again', async () => {
    const screen = await on.open();
    await screen.beginRun();
    await light(screen, 'armed');
    await screen.see(
      `{
        const resume = AudioContext.prototype.resume;
        window.giveBack = () => (AudioContext.prototype.resume = resume);
        AudioContext.prototype.resume = () => new Promise(() => undefined);
        hands.audio.forEach((one) => one.suspend());
      }`,
    );
    await light(screen, 'blocked');
    await screen.picture('faults/sound-blocked');
    await screen.see('window.giveBack(); undefined');
    // Mending is tried every 10 s.
    await light(screen, 'armed', 14_000);
  });

  it('says blocked when the sound files cannot be had', async () => {
    const screen = await on.open('', async ({ page }) => {
      await page.addInitScript(() => {
        const fetchIt = globalThis.fetch;
        globalThis.fetch = (input, init) =>
          String(input).endsWith('.wav')
            ? Promise.reject(new TypeError('cut off'))
            : fetchIt(input, init);
      });
    });
    await screen.beginRun();
    await light(screen, 'blocked');
    await screen.picture('faults/sound-files-missing');
  });

  it('says unknown until it has measured', async () => {
    const screen = await on.open();
    await screen.beginRun();
    await light(screen, 'armed');
    await screen.see(
      "window.seen = []; new MutationObserver(() => window.seen.push(hands.look().sound)).observe(document.body, { subtree: true, attributes: true, attributeFilter: ['data-sound'] }); undefined",
    );
    // A wake-up throws away what was measured before.
    await screen.jump(1000);
    await light(screen, 'armed');
    await screen.waitFor("window.seen.includes('unknown')", 'unknown was said');
    expect((await screen.see<string[]>('window.seen')).at(-1)).toBe('armed');
  });
});
