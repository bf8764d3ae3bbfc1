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

describe('the screen lock', () => {
  it('tells the truth when it is refused, taken away, and given again on coming back', async () => {
    sheet = await openSheet(tablet, undefined, async ({ page }) => {
      await page.evaluateOnNewDocument(standIn);
    });
    await sheet.page.goto(site.url);
    await beginRun(sheet);
    await until(sheet, 'held', (seen) => seen.text.includes('Screen stays on'));
    await see(sheet, 'device.gives = false; device.held.at(-1).release(); undefined');
    await until(sheet, 'lost', (seen) => seen.text.includes('Screen may sleep'));
    await picture(sheet, 'screen-may-sleep');
    // It asks again by itself, and is refused.
    await waitFor(sheet, 'device.asked >= 2', 'asked again');
    expect((await look(sheet)).text).toContain('Screen may sleep');
    await see(sheet, 'device.gives = true');
    const asked = await see<number>(sheet, 'device.asked');
    const other = await openSheet(tablet, 'about:blank');
    await other.page.bringToFront();
    await waitFor(sheet, "document.visibilityState === 'hidden'", 'hidden');
    await sheet.page.bringToFront();
    await until(sheet, 'held again', (seen) => seen.text.includes('Screen stays on'));
    expect(await see<number>(sheet, 'device.asked')).toBeGreaterThan(asked);
  });

  it('says what to set when the browser has none', async () => {
    sheet = await openSheet(tablet, undefined, async ({ page }) => {
      await page.evaluateOnNewDocument(() => {
        delete (Navigator.prototype as { wakeLock?: unknown }).wakeLock;
      });
    });
    await sheet.page.goto(site.url);
    await beginRun(sheet);
    await until(sheet, 'not supported', (seen) => seen.text.includes('Set Auto-Lock to Never'));
    await picture(sheet, 'screen-lock-not-supported');
  });
});

describe('a page that sleeps', () => {
  beforeEach(async () => {
    sheet = await openSheet(tablet, site.url);
    await beginRun(sheet);
    await actUntil(sheet, 'switch it off, open it away');
    await until(sheet, 'a clock', (seen) => (seen.wakeInS ?? 99) < 60);
  });

  it('frozen past the moment of a clock: on waking it calls at once and says how late', async () => {
    await sheet.cdp.send('Page.setWebLifecycleState', { state: 'frozen' });
    // The page is deaf now; its clocks go on as those of a tablet do, which no timer of the page sees.
    await see(sheet, 'hands.shift({ wallMs: 180_000, monoMs: 180_000 })');
    await new Promise((resolve) => setTimeout(resolve, 1500));
    const begins = await see<number>(sheet, 'hands.begins.length');
    const wokeMs = Date.now();
    await sheet.cdp.send('Page.setWebLifecycleState', { state: 'active' });
    const seen = await until(
      sheet,
      'how late',
      ({ text }) => /came due 2:\d\d ago/.test(text),
      5000,
    );
    expect(seen.text).toMatch(/while nobody could be told/);
    await waitFor(sheet, `hands.begins.length > ${begins}`, 'the alarm sounds', 3000);
    expect(Date.now() - wokeMs).toBeLessThan(3000);
    await picture(sheet, 'woken-late');
    expect((await storedRecords(sheet)).map(({ kind }) => kind)).toContain('timer-due');
  });

  it('hidden for an hour: what came due meanwhile is written down, and told on coming back', async () => {
    const other = await openSheet(tablet, 'about:blank');
    await other.page.bringToFront();
    await waitFor(sheet, "document.visibilityState === 'hidden'", 'hidden');
    await see(sheet, 'hands.shift({ wallMs: 3_600_000, monoMs: 3_600_000 })');
    await sheet.page.bringToFront();
    const seen = await until(sheet, 'how late', ({ text }) => /came due (59|1 h)/.test(text), 5000);
    expect(seen.text).toMatch(/while nobody could be told/);
    await waitFor(sheet, "document.querySelector('.flash')", 'the flash');
    await picture(sheet, 'hidden-an-hour');
    await jump(sheet, 1000);
    expect((await look(sheet)).text).not.toMatch(/is .* the right time now/i);
  });
});
