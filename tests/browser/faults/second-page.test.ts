import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { serve } from '../support/server.ts';
import {
  act,
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
  storedRecords,
  until,
  waitFor,
  type Sheet,
  type Tablet,
} from '../support/tablet.ts';

let tablet: Tablet;
let site: Awaited<ReturnType<typeof serve>>;
let first: Sheet;
let second: Sheet;

beforeEach(async () => {
  site = await serve();
  tablet = await startTablet();
  first = await openSheet(tablet, site.url);
  await beginRun(first);
  await actUntil(first, 'gather what the list names');
  tablet.wallShiftMs = (await see<{ wallMs: number }>(first, 'hands.shifted()')).wallMs;
  second = await openSheet(tablet, `${site.url}/#/run`);
});
afterEach(async () => {
  await dispose(tablet);
  await site.stop();
});

const lead = (sheet: Sheet) =>
  see<string | null>(sheet, "document.querySelector('.watch-band')?.dataset.lead ?? null");
const sessionsOf = async (sheet: Sheet) =>
  (await storedRecords(sheet)).map(({ session }) => session);

describe('two pages of one tablet', () => {
  it('the second shows the run as it goes on, with everything in it switched off', async () => {
    await waitFor(second, "document.querySelector('.watch-band')", 'the band');
    expect((await look(second)).sentence).toMatch(/gather/i);
    const usable = await see<number>(
      second,
      "document.querySelectorAll('.run-place button:not(:disabled)').length",
    );
    expect(usable).toBe(0);
    await picture(second, 'second-page-only-shows');
    await second.page.setViewport({ width: 820, height: 1180 });
    await see(second, "document.documentElement.dataset.theme = 'night'");
    await picture(second, 'second-page-only-shows-portrait-night');
    const widthPx = await see<number>(second, 'document.documentElement.scrollWidth');
    expect(widthPx).toBeLessThanOrEqual(820);
    const before = await storedRecords(second);
    await see(second, "document.querySelector('.main-action').click()");
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(await storedRecords(second)).toEqual(before);

    await first.page.bringToFront();
    await actUntil(first, 'smoke alarm');
    // One tablet has one clock: what the first page's hands took is gone for the second too.
    const aheadMs = (await see<{ wallMs: number }>(first, 'hands.shifted()')).wallMs;
    await second.page.bringToFront();
    await jump(second, aheadMs - (await see<{ wallMs: number }>(second, 'hands.shifted()')).wallMs);
    await until(second, 'it follows', (seen) => /smoke alarm/i.test(seen.sentence));
    await until(second, 'the light', (seen) => seen.sound === 'elsewhere');
    expect((await look(second)).text).toContain('Sound comes from the other page');
  });

  it('a page that lives hands the run over when it is asked, and only shows it from then on', async () => {
    await waitFor(second, "document.querySelector('.watch-band')", 'the band');
    await press(second, 'Lead it from here');
    await waitFor(second, "!document.querySelector('.watch-band')", 'it leads');
    await waitFor(first, "document.querySelector('.watch-band')", 'the first only shows');
    await until(second, 'it leads', (seen) => seen.status !== '');
    const old = (await sessionsOf(second))[0];
    await act(second);
    await act(second);
    const sessions = await sessionsOf(second);
    const handed = sessions.findIndex((session) => session !== old);
    expect(handed).toBeGreaterThan(0);
    expect(sessions.slice(handed)).not.toContain(old);
  });

  it('a frozen page is replaced by a person’s word; what it writes when it thaws is refused', async () => {
    await waitFor(second, "document.querySelector('.watch-band')", 'the band');
    // A write under way when the page froze would be the late one: it is asked for as the first thing after the thaw.
    await see(
      first,
      `document.addEventListener('resume', () => document.querySelector('.main-action')?.click())`,
    );
    const firstSession = (await sessionsOf(first)).at(-1);
    await first.cdp.send('Page.setWebLifecycleState', { state: 'frozen' });
    await second.page.bringToFront();
    await jump(second, 40_000);
    await waitFor(
      second,
      "document.querySelector('.watch-band')?.dataset.lead === 'unsure'",
      'unsure of the frozen page',
    );
    await jump(second, 60_000);
    await waitFor(
      second,
      "document.querySelector('.watch-band')?.dataset.lead === 'silent'",
      'silence of the frozen page',
    );
    await picture(second, 'second-page-may-take-over');
    await press(second, 'Lead it from here');
    await waitFor(second, "!document.querySelector('.watch-band')", 'it leads');
    await until(second, 'it leads', (seen) => ['reviewing', 'running'].includes(seen.status));
    await act(second);
    const before = await storedRecords(second);

    await first.page.bringToFront();
    await first.cdp.send('Page.setWebLifecycleState', { state: 'active' });
    await waitFor(
      first,
      "document.querySelector('.watch-band')?.innerText.includes('Another page took this run over')",
      'the thawed page says so',
    );
    await picture(first, 'thawed-page-was-replaced');
    const after = await storedRecords(first);
    expect(after.slice(0, before.length)).toEqual(before);
    expect(after.slice(before.length).filter(({ session }) => session === firstSession)).toEqual(
      [],
    );
    expect(await lead(second)).toBeNull();
    await second.page.bringToFront();
    await act(second);
    expect((await storedRecords(second)).at(-1)?.session).not.toBe(firstSession);
  });
});
