import { beforeAll, describe, expect, it } from 'vitest';
import { notMeasured } from './support/browser/calm.ts';
import { onTablet } from './support/on-tablet.ts';
import { pause } from './support/screen.ts';

/**
 * A run that only waits, over a real minute: the clock of the page goes as the
 * machine's, nothing is pressed. Numbers by Chromium's own counters
 * (DevTools protocol, Performance.getMetrics).
 */
const WATCHED_S = 60;
/** Share of one core the page may take while it waits. */
const MOST_BUSY = 0.02;
/** A timer that shows seconds changes once a second; a heartbeat and a rounding come on top. */
const MOST_LAYOUTS_PER_S = 4;

const on = onTablet('file', async (at) => {
  await at.open();
});

// Everything is cleaned, until nothing is left but the rests and their timers.
beforeAll(async () => {
  await on.screen.beginRun();
  await on.screen.actUntil({ isQuiet: true });
});

async function metrics(): Promise<Readonly<Record<string, number>>> {
  const { metrics: rows } = await on.screen.cdp.send('Performance.getMetrics');
  return Object.fromEntries(rows.map(({ name, value }) => [name, value]));
}

describe('a run that waits', () => {
  it('takes under 2 % of one core and lays out about once a second', async ({ skip }) => {
    await pause(2000);
    await on.screen.cdp.send('Performance.enable');
    const before = await metrics();
    await pause(WATCHED_S * 1000);
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
    const why = notMeasured();
    if (why) skip(why);
    expect(grown('Timestamp')).toBeGreaterThan(WATCHED_S * 0.95);
    expect(busy).toBeLessThan(MOST_BUSY);
    expect(layoutsPerS).toBeLessThan(MOST_LAYOUTS_PER_S);
    expect(stylesPerS).toBeLessThan(MOST_LAYOUTS_PER_S);
  });

  it('runs no animation, and tells no screen reader anything by itself', async () => {
    expect(await on.screen.page.evaluate(() => document.getAnimations().length)).toBe(0);
    const spoken = await on.screen.page.evaluate(async () => {
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
