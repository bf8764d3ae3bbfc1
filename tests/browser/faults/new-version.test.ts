import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { OnTablet } from '../support/on-tablet.ts';
import { BUILT } from '../support/server.ts';

const on = new OnTablet();
let folder: string;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'glowpour-version-'));
  cpSync(BUILT, folder, { recursive: true });
  await on.serve(folder);
  const screen = await on.open();
  await screen.keptOffline();
});
afterEach(async () => {
  await on.end();
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

const OFFER = '[data-banner="update"]';
const isOffered = () => on.screen.see<boolean>(`document.querySelector('${OFFER}') !== null`);
const isNewer = () => on.screen.see<boolean>("document.querySelector('meta[name=newer]') !== null");

it('waits while a run is open, without a word, and is offered and taken when it is closed', async () => {
  const { screen } = on;
  await screen.beginRun();
  release();
  await screen.see('globalThis.samePage = true');
  await screen.see(
    'navigator.serviceWorker.getRegistration().then((one) => one.update()).then(() => undefined)',
  );
  await screen.waitFor(
    'navigator.serviceWorker.getRegistration().then((one) => one.waiting !== null)',
    'a newer worker waits',
  );
  for (let n = 0; n < 4; n += 1) await screen.act();
  expect(await isOffered()).toBe(false);
  await screen.goTo('plan');
  await screen.waitForElement('.run-place', 'gone');
  expect(await isOffered()).toBe(false);
  await screen.picture('faults/newer-waits-silently');
  await screen.press('back-to-run');
  await screen.until('the run', (seen) => seen.status === 'running');
  expect(await screen.see('globalThis.samePage')).toBe(true);

  await screen.press('stop');
  await screen.press('stop-run');
  await screen.actUntil({ status: 'closed' }, 12);
  expect(await screen.see('globalThis.samePage')).toBe(true);
  expect(await isNewer()).toBe(false);
  await screen.goTo('plan');
  await screen.waitForElement(OFFER);
  await screen.picture('faults/newer-is-offered');
  await screen.press('take-update');
  await screen.waitForElement('meta[name=newer]');
  expect(await screen.see('globalThis.samePage')).toBeUndefined();
});
