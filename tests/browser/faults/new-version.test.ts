import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { BUILT, serve } from '../support/server.ts';
import {
  act,
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

let folder: string;
let tablet: Tablet;
let site: Awaited<ReturnType<typeof serve>>;
let sheet: Sheet;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'glowpour-version-'));
  cpSync(BUILT, folder, { recursive: true });
  site = await serve(folder);
  tablet = await startTablet();
  sheet = await openSheet(tablet, site.url);
  await waitFor(sheet, 'navigator.serviceWorker.controller', 'kept offline');
});
afterEach(async () => {
  await dispose(tablet);
  await site.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** Puts a newer app where the old one was: another page, and a worker that knows it. */
function release(): void {
  const page = join(folder, 'index.html');
  writeFileSync(page, readFileSync(page, 'utf8').replace('<head>', '<head><meta name="newer" />'));
  const worker = join(folder, 'service-worker.js');
  const before = readFileSync(worker, 'utf8');
  const after = before.replace(
    /("?revision"?:\s*["'`])([0-9a-f]+)(["'`],\s*"?url"?:\s*["'`]index\.html)|(["'`]?url["'`]?:\s*["'`]index\.html["'`],\s*["'`]?revision["'`]?:\s*["'`])([0-9a-f]+)/,
    (all: string, a?: string, _old?: string, c?: string, d?: string) =>
      a === undefined ? `${d ?? all}newer` : `${a}newer${c ?? ''}`,
  );
  expect(after, 'the revision of the page in the worker').not.toBe(before);
  writeFileSync(worker, after);
}

const isNewer = () => see<boolean>(sheet, "document.querySelector('meta[name=newer]') !== null");

it('waits while a run is open, without a word, and is offered and taken when it is closed', async () => {
  await beginRun(sheet);
  release();
  await see(sheet, 'globalThis.samePage = true');
  await see(
    sheet,
    'navigator.serviceWorker.getRegistration().then((one) => one.update()).then(() => undefined)',
  );
  await waitFor(
    sheet,
    'navigator.serviceWorker.getRegistration().then((one) => one.waiting !== null)',
    'a newer worker waits',
  );
  for (let n = 0; n < 4; n += 1) await act(sheet);
  expect((await look(sheet)).text).not.toMatch(/newer version/i);
  await press(sheet, '^Plan$');
  await waitFor(sheet, "!document.querySelector('.run-place')", 'the plan');
  expect((await look(sheet)).text).not.toMatch(/newer version/i);
  await picture(sheet, 'newer-waits-silently');
  await press(sheet, 'Back to the run');
  await until(sheet, 'the run', (seen) => seen.status === 'running');
  expect(await see(sheet, 'globalThis.samePage')).toBe(true);

  await press(sheet, 'Stop – make safe');
  await press(sheet, 'Stop the run now');
  for (let n = 0; n < 8 && (await look(sheet)).status !== 'closed'; n += 1)
    await see(sheet, "document.querySelector('.closing .button--ember')?.click()");
  await until(sheet, 'closed', (seen) => seen.status === 'closed');
  expect(await see(sheet, 'globalThis.samePage')).toBe(true);
  expect(await isNewer()).toBe(false);
  await press(sheet, '^Plan$');
  await until(sheet, 'offered', (seen) => /a newer version is ready/i.test(seen.text));
  await picture(sheet, 'newer-is-offered');
  await press(sheet, 'Use it now');
  await waitFor(sheet, "document.querySelector('meta[name=newer]')", 'the newer app');
  expect(await see(sheet, 'globalThis.samePage')).toBeUndefined();
});
