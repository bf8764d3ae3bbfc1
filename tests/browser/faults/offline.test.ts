import { afterEach, beforeEach, expect, it } from 'vitest';
import { serve } from '../support/server.ts';
import {
  actUntil,
  beginRun,
  dispose,
  look,
  openSheet,
  picture,
  press,
  see,
  startTablet,
  until,
  waitFor,
  type Sheet,
  type Tablet,
} from '../support/tablet.ts';

let tablet: Tablet;
let sheet: Sheet;

beforeEach(async () => {
  const site = await serve();
  tablet = await startTablet();
  sheet = await openSheet(tablet, site.url);
  await waitFor(sheet, 'navigator.serviceWorker.controller', 'kept offline');
  // Not an emulation: there is nothing any more at that address.
  await site.stop();
});
afterEach(() => dispose(tablet));

it('begins a run, finishes steps and is heard with nothing at the other end, from the second load on', async () => {
  await sheet.page.reload();
  expect(await see(sheet, "fetch('/not-kept').then(() => 'answered', () => 'gone')")).toBe('gone');
  await beginRun(sheet);
  await actUntil(sheet, 'clean: hood');
  const seen = await until(sheet, 'the sounds are decoded', ({ sound }) => sound === 'armed');
  expect(seen.text).toMatch(/Steps\s+4\/\d+/);
  await press(sheet, 'Steps');
  await waitFor(sheet, "document.querySelector('[role=dialog], dialog')", 'a sheet that came late');
  await see(
    sheet,
    "document.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }))",
  );
  await sheet.page.goto(`${new URL(sheet.page.url()).origin}/#/record`);
  await until(sheet, 'the record', ({ text }) => /Save as text/.test(text));
  await picture(sheet, 'offline-record');
  const fonts = await see<number>(
    sheet,
    "document.fonts.ready.then(() => [...document.fonts].filter((f) => f.status === 'loaded').length)",
  );
  expect(fonts).toBeGreaterThan(1);
  expect((await look(sheet)).text).toContain('Flat with coils');
});
