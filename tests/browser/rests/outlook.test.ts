import { describe, expect, it } from 'vitest';
import { onTablet } from '../support/on-tablet.ts';

/** When a run ends by what really happened, where the rests are looked at and in the Plan. */
const on = onTablet('file', async (at) => {
  await at.open();
});

const SIZES = [
  [1280, 800],
  [800, 1280],
  [390, 844],
] as const;
const LINE =
  /^(As planned,|You are [\d\shmin]+ (ahead of|behind) the plan;) the work ends \S+day .*\d\d:\d\d\.$/;
const behindMin = (line: string): number => {
  const [, h = '0'] = /(\d+) h/.exec(line) ?? [];
  const [, min = '0'] = /(\d+) min/.exec(line) ?? [];
  const isLate = line.includes('behind');
  return (isLate ? 1 : -1) * (Number(h) * 60 + Number(min));
};

/** The end that was planned, by what a line says of the end now, ms on a clock of 2027. */
const plannedMs = (line: string): number => {
  const [, day, month, clock] = /(\d+) (\w+) (\d\d:\d\d)\.$/.exec(line) ?? [];
  return Date.parse(`${day} ${month} 2027 ${clock} UTC`) - behindMin(line) * 60_000;
};

describe('the end of a run', () => {
  it('is told anew from what happened, on the screen of the rests and in the Plan', async () => {
    const { screen } = on;
    const line = () => screen.page.locator('.outlook p').first();
    await screen.beginRun();
    await screen.press('until-when');
    await line().waitFor({ timeout: 30_000 });
    expect(await line().innerText()).toMatch(LINE);
    await screen.closeDialog();
    await screen.actUntil({ isQuiet: true });
    await line().waitFor({ timeout: 30_000 });
    const early = await line().innerText();
    expect(early).toMatch(LINE);
    for (const [width, height] of SIZES) {
      await screen.resize(width, height);
      await screen.picture(`outlook/rests-${width}`);
      expect(await screen.widthPx()).toBeLessThanOrEqual(width);
    }
    await screen.resize(1280, 800);

    // All rests are over, and hands come hours later than they might.
    await screen.jump(40 * 3_600_000);
    await screen.until('something can be done', ({ isQuiet }) => !isQuiet);
    await screen.page.evaluate(() => (location.hash = '#/plan'));
    await screen.waitForElement('.plan-place .outlook');
    await expect.poll(() => line().innerText(), { timeout: 30_000 }).toMatch(/behind/);
    const late = await line().innerText();
    expect(late).toMatch(LINE);
    expect(behindMin(late)).toBeGreaterThan(behindMin(early));
    // Both are held against the same plan, on the same clock: the kitchen's.
    expect(Math.abs(plannedMs(late) - plannedMs(early))).toBeLessThanOrEqual(2 * 60_000);
    for (const [width, height] of SIZES) {
      await screen.resize(width, height);
      await screen.picture(`outlook/plan-${width}`);
      expect(await screen.widthPx()).toBeLessThanOrEqual(width);
    }
  });
});
