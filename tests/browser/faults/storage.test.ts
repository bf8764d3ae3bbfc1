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
  powerCut,
  press,
  savedRun,
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
  sheet = await openSheet(tablet, site.url);
});
afterEach(async () => {
  await dispose(tablet);
  await site.stop();
});

/** The app's database deleted as the browser's settings or another program would. */
const deleteDatabase = () =>
  see<string>(
    sheet,
    `new Promise((resolve) => {
      const asked = indexedDB.deleteDatabase('glowpour');
      asked.onsuccess = () => resolve('deleted');
      asked.onerror = () => resolve('failed');
      asked.onblocked = () => resolve('blocked');
    })`,
  );

describe('storage that fails', () => {
  it('full: the run stops in plain words, the alarm still calls, and all is written when there is room again', async () => {
    await beginRun(sheet);
    await actUntil(sheet, 'switch it off, open it away');
    const { wakeInS } = await until(sheet, 'a clock', (seen) => (seen.wakeInS ?? 99) < 60);
    const begun = Date.now();
    const { origin } = new URL(site.url);
    await sheet.cdp.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    // This browser remembers for 30 s how much room there was (measured).
    await new Promise((resolve) => setTimeout(resolve, 31_000));
    const before = await storedRecords(sheet);
    await jump(sheet, (wakeInS ?? 0) * 1000 - (Date.now() - begun) + 1500);
    const dueMs = Date.now();
    const stopped = await until(sheet, 'it stops', (seen) => seen.status === 'suspended');
    expect(stopped.text).toMatch(/not saved/i);
    expect(stopped.text).toMatch(/no room left/i);
    const called = await until(sheet, 'the clock calls', (seen) => /\bnow\b/.test(seen.text));
    expect(called.sound).not.toBe('blocked');
    await waitFor(sheet, "document.querySelector('.flash')", 'the flash');
    await waitFor(
      sheet,
      `hands.begins.some((ms) => ms > ${dueMs - 2000} && ms < ${dueMs + 2500})`,
      'the sound of the alarm is begun',
    );
    await picture(sheet, 'storage-full');
    const file = await savedRun(sheet);
    expect(file.records.map(({ seq }) => seq)).toEqual(file.records.map((_, i) => i + 1));
    expect(file.records.length).toBeGreaterThan(before.length);
    expect(file.records.map(({ fact }) => fact.body.kind)).toContain('storage-failed');
    expect((await storedRecords(sheet)).length).toBe(before.length);

    await sheet.cdp.send('Storage.overrideQuotaForOrigin', { origin });
    await until(sheet, 'it is mended', (seen) => !/not saved/i.test(seen.text));
    const after = await storedRecords(sheet);
    expect(after.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['storage-failed', 'storage-mended', 'timer-due']),
    );
    expect(after.map(({ seq }) => seq)).toEqual(after.map((_, i) => i + 1));
    await see(sheet, "document.querySelector('.clock-row--due')?.click()");
    await press(sheet, 'Go on');
    await until(sheet, 'it goes on', (seen) => seen.status === 'running');
  });

  it('deleted from outside: said in plain words, offered as a file, and written down again whole', async () => {
    await beginRun(sheet);
    await actUntil(sheet, 'gather what the list names');
    const before = await storedRecords(sheet);
    expect(await deleteDatabase()).toBe('deleted');
    // The very next write finds it out.
    await see(
      sheet,
      "window.told = []; new MutationObserver(() => window.told.push(document.querySelector('.trouble')?.innerText ?? '')).observe(document.body, { subtree: true, childList: true, characterData: true }); undefined",
    );
    await act(sheet);
    await waitFor(sheet, 'window.told.some((text) => /gone/.test(text))', 'the plain message');
    await waitFor(sheet, "!document.querySelector('.trouble')", 'it is mended');
    await picture(sheet, 'storage-deleted');
    const after = await storedRecords(sheet);
    expect(after.slice(0, before.length)).toEqual(before);
    expect(after.map(({ kind }) => kind)).toContain('noted');
    expect((await look(sheet)).status).toBe('suspended');
    await press(sheet, 'Go on');
    await until(sheet, 'it goes on', (seen) => seen.status === 'running');
  });

  it('a version change from outside closes the connection; the next write opens another', async () => {
    await beginRun(sheet);
    const before = (await storedRecords(sheet)).length;
    const outcome = await see<string>(
      sheet,
      `new Promise((resolve) => {
        const asked = indexedDB.open('glowpour', 99);
        asked.onupgradeneeded = () => asked.transaction.abort();
        asked.onblocked = () => resolve('blocked');
        asked.onsuccess = () => resolve('opened');
        asked.onerror = () => resolve('undone');
      })`,
    );
    expect(outcome).toBe('undone');
    await act(sheet);
    await act(sheet);
    expect((await storedRecords(sheet)).length).toBeGreaterThan(before);
    expect((await look(sheet)).status).toBe('running');
  });

  it('emptied while the app was away: the run that was open is said to be gone', async () => {
    await beginRun(sheet);
    await act(sheet);
    await sheet.page.goto(`${site.url}/icon.svg`);
    expect(await deleteDatabase()).toBe('deleted');
    await sheet.page.goto(site.url);
    await until(sheet, 'it is said', ({ text }) => /“Flat with coils” of .* is gone/.test(text));
    await picture(sheet, 'storage-emptied');
    await press(sheet, 'I have read it');
    await until(sheet, 'it is read', ({ text }) => !/is gone/.test(text));
    await sheet.page.reload();
    await until(sheet, 'no second time', ({ text }) => /Flat with coils/.test(text));
    expect((await look(sheet)).text).not.toMatch(/is gone/);
  });

  it('unreadable at the start: said in every place, nothing taken for gone, and taken up when it can be read', async () => {
    await beginRun(sheet);
    await act(sheet);
    await powerCut(tablet);
    tablet = await startTablet({ profile: tablet.profile });
    sheet = await openSheet(tablet, undefined, async ({ page }) => {
      await page.evaluateOnNewDocument(() => {
        const open = indexedDB.open.bind(indexedDB);
        Object.assign(globalThis, { refuse: true });
        indexedDB.open = (name: string, version?: number) => {
          if ((globalThis as { refuse?: boolean }).refuse && version === 1)
            throw new DOMException('Internal error opening backing store.', 'UnknownError');
          return open(name, version);
        };
      });
    });
    await sheet.page.goto(site.url);
    await waitFor(sheet, "document.querySelector('.banner--trouble')", 'the message');
    const seen = await look(sheet);
    expect(seen.text).toMatch(/cannot be read now/i);
    expect(seen.text).toMatch(/nothing was deleted/i);
    await picture(sheet, 'storage-unreadable');
    await see(sheet, 'globalThis.refuse = false');
    await waitFor(
      sheet,
      "document.querySelector('.run-place') || [...document.querySelectorAll('.banner')].find((b) => /a run is open/i.test(b.innerText))",
      'the run is there again',
      20_000,
    );
    expect((await storedRecords(sheet)).map(({ kind }) => kind)).toContain('session-opened');
  });
});
