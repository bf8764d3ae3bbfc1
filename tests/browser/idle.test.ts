import type { CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { dropProfile, launch, newProfile, powerCut, type Running } from './support/browser.ts';
import { serve } from './support/server.ts';

/**
 * A run that only waits, over a real minute: the clock of the page goes as the
 * machine's, nothing is pressed. Numbers by Chromium's own counters
 * (DevTools protocol, Performance.getMetrics).
 */
const WATCHED_S = 60;
/** Share of one core the page may take while it waits. */
const MOST_BUSY = 0.02;
/** A clock that shows seconds changes once a second; a heartbeat and a rounding come on top. */
const MOST_LAYOUTS_PER_S = 4;

let site: Awaited<ReturnType<typeof serve>>;
let profile: string;
let running: Running;
let page: Page;
let cdp: CDPSession;

beforeAll(async () => {
  site = await serve();
  profile = newProfile();
  running = await launch(profile);
  page = await running.context.newPage();
  await page.addInitScript(workday);
  await page.setViewportSize({ width: 1180, height: 820 });
  cdp = await page.context().newCDPSession(page);
});
afterAll(async () => {
  await powerCut(running);
  dropProfile(profile);
  await site.stop();
});

/** Only the date is another one, a working day: on a Sabbath the run would rightly not begin. */
function workday(): void {
  const shiftMs = Date.parse('2027-03-01T17:30:00Z') - Date.now();
  const RealDate = Date;
  globalThis.Date = class extends RealDate {
    constructor(...args: [] | [number]) {
      super(args.length === 0 ? RealDate.now() + shiftMs : args[0]);
    }
    static override now(): number {
      return RealDate.now() + shiftMs;
    }
  } as DateConstructor;
}

async function metrics(): Promise<Readonly<Record<string, number>>> {
  const { metrics: rows } = await cdp.send('Performance.getMetrics');
  return Object.fromEntries(rows.map(({ name, value }) => [name, value]));
}

/** Cleans everything, until nothing is left but the rests and their clocks. */
async function toTheRests(): Promise<void> {
  await page.goto(`${site.url}/#/kitchen`);
  await page.getByRole('button', { name: 'Flat with coils' }).click();
  await page.getByRole('button', { name: 'Start the run' }).click();
  await page.getByRole('button', { name: 'Play the alarm' }).click();
  const heard = page.getByRole('button', { name: 'I heard it' });
  const deaf = page.getByLabel(/I cannot hear it/);
  await heard.or(deaf).first().waitFor();
  if (await heard.isVisible()) await heard.click();
  else await deaf.check();
  await page.locator('.start-screen .main-action').click();
  const quiet = page.locator('.stage--quiet');
  for (let n = 0; n < 300 && !(await quiet.isVisible()); n += 1) {
    const rest = page.locator('.checklist-rest');
    if (await rest.isVisible()) await rest.click();
    // Past the guard against bounces.
    await page.waitForTimeout(360);
    const main = page.locator('.main-action');
    if (await main.isVisible()) await main.click();
  }
  await quiet.waitFor();
}

describe('a run that waits', () => {
  it('takes under 2 % of one core and lays out about once a second', async () => {
    await toTheRests();
    await page.waitForTimeout(2000);
    await cdp.send('Performance.enable');
    const before = await metrics();
    await page.waitForTimeout(WATCHED_S * 1000);
    const after = await metrics();
    const grown = (name: string): number => (after[name] ?? NaN) - (before[name] ?? NaN);
    // Time on the processor, not time until done: others may share the machine.
    const busy = grown('ThreadTime') / grown('Timestamp');
    const task = grown('TaskDuration') / grown('Timestamp');
    const layoutsPerS = grown('LayoutCount') / grown('Timestamp');
    const stylesPerS = grown('RecalcStyleCount') / grown('Timestamp');
    console.log(
      `idle: ${(busy * 100).toFixed(2)} % of a core (tasks took ${(task * 100).toFixed(2)} % of the time), ${layoutsPerS.toFixed(2)} layouts and ${stylesPerS.toFixed(2)} style passes a second`,
    );
    expect(grown('Timestamp')).toBeGreaterThan(WATCHED_S * 0.95);
    expect(busy).toBeLessThan(MOST_BUSY);
    expect(layoutsPerS).toBeLessThan(MOST_LAYOUTS_PER_S);
    expect(stylesPerS).toBeLessThan(MOST_LAYOUTS_PER_S);
  });

  it('runs no animation, and tells no screen reader anything by itself', async () => {
    expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
    const spoken = await page.evaluate(async () => {
      const changes: string[] = [];
      const live = document.querySelectorAll(
        '[aria-live]:not([aria-live="off"]), [role="status"], [role="alert"]',
      );
      const watch = new MutationObserver((records) => {
        for (const { target } of records) changes.push(target.textContent ?? '');
      });
      for (const one of live)
        watch.observe(one, { childList: true, characterData: true, subtree: true });
      await new Promise((resolve) => setTimeout(resolve, 5000));
      return { regions: live.length, changes };
    });
    expect(spoken.regions).toBeGreaterThan(0);
    expect(spoken.changes).toEqual([]);
  });
});
