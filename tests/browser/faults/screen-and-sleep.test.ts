import { beforeEach, describe, expect, it } from 'vitest';
import { itCan } from '../support/browser/abilities.ts';
import { notMeasured } from '../support/browser/calm.ts';
import { t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';
import { pause, Screen } from '../support/screen.ts';
import { storedEntries } from '../support/stored-run.ts';

const on = onTablet('test');

/** Stands for the device's screen lock: counts what is asked, and gives or refuses as told. */
function standIn(): void {
  const device = { asked: 0, gives: true, held: [] as EventTarget[] };
  class Sentinel extends EventTarget {
    released = false;
    release(): Promise<void> {
      if (!this.released) {
        this.released = true;
        this.dispatchEvent(new Event('release'));
      }
      return Promise.resolve();
    }
  }
  Object.defineProperty(Navigator.prototype, 'wakeLock', {
    configurable: true,
    value: {
      request: () => {
        device.asked += 1;
        if (!device.gives)
          return Promise.reject(new DOMException('low battery', 'NotAllowedError'));
        const sentinel = new Sentinel();
        device.held.push(sentinel);
        return Promise.resolve(sentinel);
      },
    },
  });
  Object.assign(globalThis, { device });
}

/** Waits for what the light of the screen lock says. */
async function wakeLight(is: 'held' | 'lost' | 'not-supported'): Promise<void> {
  const light = on.screen.page.locator(`[data-wake="${is}"]`);
  await light.waitFor();
  expect(await light.innerText()).toContain(t(`run.light.wake.${is}`));
}

/** Another page of the tablet lies before it. */
async function hide(screen: Screen): Promise<void> {
  const other = await Screen.open(on.tablet, 'about:blank');
  await other.page.bringToFront();
  await screen.waitFor("document.visibilityState === 'hidden'", 'hidden');
}

describe('the screen lock', () => {
  /** A run on a tablet whose screen lock is the stand-in. */
  async function withStandIn(): Promise<Screen> {
    const screen = await on.open('', async ({ page }) => {
      await page.addInitScript(standIn);
    });
    await screen.beginRun();
    await wakeLight('held');
    return screen;
  }

  it('tells the truth when it is refused and taken away', async () => {
    const screen = await withStandIn();
    await screen.see('device.gives = false; device.held.at(-1).release(); undefined');
    await wakeLight('lost');
    await screen.picture('faults/screen-may-sleep');
    // It asks again by itself, and is refused.
    await screen.waitFor('device.asked >= 2', 'asked again');
    await wakeLight('lost');
  });

  itCan(['hide'], 'is asked for again on coming back, and told when it is given', async () => {
    const screen = await withStandIn();
    await screen.see('device.gives = false; device.held.at(-1).release(); undefined');
    await wakeLight('lost');
    await screen.see('device.gives = true');
    const asked = await screen.see<number>('device.asked');
    await hide(screen);
    await screen.page.bringToFront();
    await wakeLight('held');
    expect(await screen.see<number>('device.asked')).toBeGreaterThan(asked);
  });

  it('says what to set when the browser has none', async () => {
    const screen = await on.open('', async ({ page }) => {
      await page.addInitScript(() => {
        delete (Navigator.prototype as { wakeLock?: unknown }).wakeLock;
      });
    });
    await screen.beginRun();
    await wakeLight('not-supported');
    await screen.picture('faults/screen-lock-not-supported');
  });
});

describe('a page that sleeps', () => {
  beforeEach(async () => {
    const screen = await on.open();
    await screen.beginRun();
    await screen.actUntil({ kind: 'steam', stage: 'open' });
    await screen.until('a timer', (seen) => (seen.wakeInS ?? 99) < 60);
  });

  /** How late the timers call that came due while nobody could be told. */
  const late = () =>
    on.screen.see<string>(
      `[...document.querySelectorAll('[data-timer][data-state="late"] .clock-state')].map((one) => one.innerText).join(' ')`,
    );

  itCan(
    ['freeze'],
    'frozen past the moment of a timer: on waking it calls at once and says how late',
    async () => {
      const { screen } = on;
      await screen.cdp.send('Page.setWebLifecycleState', { state: 'frozen' });
      // The page is deaf now; its clocks go on as those of a tablet do, which no timer of the page sees.
      await screen.shift({ wallMs: 180_000, monoMs: 180_000 });
      await pause(1500);
      const begins = await screen.see<number>('hands.begins.length');
      const wokeMs = Date.now();
      await screen.cdp.send('Page.setWebLifecycleState', { state: 'active' });
      await expect.poll(late, { timeout: 5000 }).toMatch(/2:\d\d/);
      await screen.waitFor(`hands.begins.length > ${begins}`, 'the alarm sounds');
      if (notMeasured() === undefined) expect(Date.now() - wokeMs).toBeLessThan(3000);
      await screen.picture('faults/woken-late');
      expect((await storedEntries(screen)).map(({ kind }) => kind)).toContain('timer-due');
    },
  );

  itCan(
    ['hide'],
    'hidden for an hour: what came due meanwhile is written down, and told on coming back',
    async () => {
      const { screen } = on;
      await hide(screen);
      await screen.shift({ wallMs: 3_600_000, monoMs: 3_600_000 });
      await screen.page.bringToFront();
      await expect.poll(late, { timeout: 5000 }).toMatch(/59:\d\d|1 h/);
      await screen.waitForElement('.flash');
      await screen.picture('faults/hidden-an-hour');
      await screen.jump(1000);
      expect((await screen.look()).asksClock).toBe(false);
    },
  );
});
