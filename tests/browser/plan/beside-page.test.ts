import { describe, expect, it } from 'vitest';
import { tasksDuring, type PageTask } from '../support/browser/page-tasks.ts';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';

/**
 * Plans are worked out beside the page, which goes on meanwhile: no task of it takes as long as a
 * person notices. In processor time of the page's thread, so that a busy machine is no excuse.
 */
const MOST_TASK_MS = 50;
/** The task that shows a new plan of a hall: what is out of sight is drawn in later ones. */
const MOST_DRAWING_MS = 120;
const SUNDAY = Date.parse('2027-04-18T13:00:00Z');
const DRAWN = 'a plan is drawn';

/** Runs in the page: marks when the line that tells of work goes. */
function markDrawn(name: string): void {
  let isWorking = false;
  new MutationObserver(() => {
    const now = document.querySelector('[data-working]') !== null;
    if (isWorking && !now) performance.mark(name);
    isWorking = now;
  }).observe(document, { childList: true, subtree: true });
}

const isDrawing = ({ marks }: PageTask) => marks.includes(DRAWN);
const longestMs = (tasks: readonly PageTask[]) => Math.max(0, ...tasks.map(({ cpuMs }) => cpuMs));

const on = onTablet('test', async (at) => {
  await at.start({ wallMs: SUNDAY });
});
const locate = (selector: string) => on.screen.page.locator(selector);
const whole = () => locate('.plan-facts dd').first().innerText();
const beginAt = (local: string) => locate('.begin-when input').fill(local);
const openHall = async (before?: () => void) => {
  await on.open('', async (screen) => {
    await screen.page.addInitScript(markDrawn, DRAWN);
    if (before) await screen.page.addInitScript(before);
  });
  await on.screen.openDemo('hall');
  await locate('[data-sure] p').first().waitFor();
};
const lookFor = () => locate('[data-action="what-would-help"]').click();

describe('a plan that is worked out beside the page', () => {
  it('leaves the page free while the hall is planned, and while what would help is tried', async () => {
    await openHall();
    const { page } = on.screen;
    const before = await whole();
    const plan = await tasksDuring(page, async () => {
      await beginAt('2027-04-18T19:00');
      await locate('[data-working="beside"]').waitFor({ state: 'attached' });
      await expect.poll(whole, { timeout: 60_000 }).not.toBe(before);
      // What is out of sight is drawn in the moment after.
      await page.waitForTimeout(1000);
    });
    const advice = await tasksDuring(page, async () => {
      await lookFor();
      await locate('.advice-list').first().waitFor({ timeout: 120_000 });
    });
    const drawing = plan.filter(isDrawing);
    const besideMs = longestMs(plan.filter((task) => !isDrawing(task)));
    const drawingMs = longestMs(drawing);
    const adviceMs = longestMs(advice);
    console.log(
      `longest task: ${besideMs.toFixed(0)} ms while planned, ${drawingMs.toFixed(0)} ms when drawn; ${adviceMs.toFixed(0)} ms while advice is tried`,
    );
    expect(drawing.length).toBeGreaterThan(0);
    expect(besideMs).toBeLessThan(MOST_TASK_MS);
    expect(drawingMs).toBeLessThan(MOST_DRAWING_MS);
    expect(adviceMs).toBeLessThan(MOST_TASK_MS);
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
  const goesOn = async () => {
    const before = await whole();
    await beginAt('2027-04-18T19:00');
    // Read in one look: it stands for as long as the plan takes.
    expect(await locate('[data-working="here"]').innerText()).toContain(t('shell.working.here'));
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
