import { describe, expect, it } from 'vitest';
import { notMeasured } from '../support/browser/calm.ts';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';
import type { Screen } from '../support/screen.ts';

/**
 * Plans are worked out beside the page, which goes on meanwhile: no task of it
 * takes as long as a person notices (Chromium's own list of long tasks).
 */
const MOST_TASK_MS = 50;
const SUNDAY = Date.parse('2027-04-18T13:00:00Z');

/** Runs in the page: long tasks, and when each line that tells of work came and went. */
function watchTasks(): void {
  const seen = { tasks: [] as { fromMs: number; lengthMs: number }[], doneMs: [] as number[] };
  Object.assign(globalThis, { seen });
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries())
      seen.tasks.push({ fromMs: startTime, lengthMs: duration });
  }).observe({ type: 'longtask' });
  let isWorking = false;
  new MutationObserver(() => {
    const now = document.querySelector('[data-working]') !== null;
    if (isWorking && !now) seen.doneMs.push(performance.now());
    isWorking = now;
  }).observe(document, { childList: true, subtree: true });
}

type Watched = { readonly longestMs: number; readonly drawingMs: number; readonly done: number };

/** The longest task since it was asked last; that which drew an answer apart from what came before it. */
async function longest(screen: Screen): Promise<Watched> {
  // The browser hands in its list a moment later.
  await screen.page.waitForTimeout(500);
  return screen.see<Watched>(`(() => {
    const draws = (task) => seen.doneMs.some((at) => task.fromMs <= at && at <= task.fromMs + task.lengthMs + 1);
    const most = (tasks) => Math.max(0, ...tasks.map((task) => task.lengthMs));
    const told = {
      longestMs: most(seen.tasks.filter((task) => !draws(task))),
      drawingMs: most(seen.tasks.filter(draws)),
      done: seen.doneMs.length,
    };
    seen.tasks.length = seen.doneMs.length = 0;
    return told;
  })()`);
}

const on = onTablet('test', async (at) => {
  await at.start({ wallMs: SUNDAY });
});
const locate = (selector: string) => on.screen.page.locator(selector);
const whole = () => locate('.plan-facts dd').first().innerText();
const beginAt = (local: string) => locate('.begin-when input').fill(local);
const openHall = async (before?: () => void) => {
  await on.open('', async (screen) => {
    await screen.page.addInitScript(watchTasks);
    if (before) await screen.page.addInitScript(before);
  });
  await on.screen.openDemo('hall');
  await locate('[data-sure] p').first().waitFor();
};
const lookFor = () => locate('[data-action="what-would-help"]').click();

describe('a plan that is worked out beside the page', () => {
  it('leaves the page free while the hall is planned, and while what would help is tried', async ({
    skip,
  }) => {
    await openHall();
    await longest(on.screen);
    const before = await whole();
    await beginAt('2027-04-18T19:00');
    await locate('[data-working="beside"]').waitFor({ state: 'attached' });
    await expect.poll(whole, { timeout: 60_000 }).not.toBe(before);
    const plan = await longest(on.screen);
    expect(plan.done).toBe(1);
    await lookFor();
    await locate('.advice-list').first().waitFor({ timeout: 120_000 });
    const advice = await longest(on.screen);
    console.log(
      `longest task: ${plan.longestMs.toFixed(0)} ms while planned, ${plan.drawingMs.toFixed(0)} ms when drawn; ${advice.longestMs.toFixed(0)} ms while advice is tried`,
    );
    const why = notMeasured();
    if (why) skip(why);
    expect(plan.longestMs).toBeLessThan(MOST_TASK_MS);
    expect(advice.longestMs).toBeLessThan(MOST_TASK_MS);
  });

  it('shows how far advice is, stops at a press, and begins anew at another', async () => {
    await openHall();
    await lookFor();
    const trying = locate('.advice [role="status"]');
    await expect.poll(() => trying.innerText(), { timeout: 30_000 }).toMatch(/[3-9] .* \d\d/);
    await on.screen.picture('screens/5-advice-trying');
    await locate('[data-action="stop-advice"]').click();
    await locate('[data-action="what-would-help"]').waitFor();
    expect(await locate('.advice-list').count()).toBe(0);
    await lookFor();
    await locate('.advice-list').first().waitFor({ timeout: 120_000 });
  });

  it('shows the plan that was asked for last', async () => {
    await openHall();
    await beginAt('2027-04-18T19:00');
    await beginAt('2027-04-19T08:00');
    await locate('[data-working]').waitFor({ state: 'detached', timeout: 60_000 });
    expect(await locate('.begin-when input').inputValue()).toBe('2027-04-19T08:00');
    const last = await whole();
    await beginAt('2027-04-18T19:00');
    await expect.poll(whole, { timeout: 60_000 }).not.toBe(last);
    await beginAt('2027-04-19T08:00');
    await expect.poll(whole, { timeout: 60_000 }).toBe(last);
  });

  it('is kept for when there is no network', async () => {
    await openHall();
    const kept = `(async () => {
      const caches_ = await Promise.all((await caches.keys()).map(async (name) => (await caches.open(name)).keys()));
      return caches_.flat().some(({ url }) => url.includes('planner-worker'));
    })()`;
    await expect.poll(() => on.screen.see<boolean>(kept), { timeout: 30_000 }).toBe(true);
  });
});

describe('a plan where the page has no other thread', () => {
  const isHere = () => locate('[data-working="here"]').waitFor({ state: 'attached' });
  const goesOn = async () => {
    const before = await whole();
    await beginAt('2027-04-18T19:00');
    await isHere();
    expect(await locate('[data-working]').innerText()).toContain(t('shell.working.here'));
    await expect.poll(whole, { timeout: 60_000 }).not.toBe(before);
    await lookFor();
    await locate('.advice-list').first().waitFor({ timeout: 120_000 });
  };

  it('is worked out on the page of a browser without workers', async () => {
    await openHall(() => Object.assign(globalThis, { Worker: undefined }));
    await goesOn();
  });

  it('is worked out on the page when the worker cannot be loaded', async () => {
    await openHall(() => {
      class NeverLoaded extends EventTarget {
        constructor() {
          super();
          setTimeout(() => this.dispatchEvent(new Event('error', { cancelable: true })));
        }
        postMessage(): void {}
        terminate(): void {}
      }
      Object.assign(globalThis, { Worker: NeverLoaded });
    });
    await goesOn();
  });
});
