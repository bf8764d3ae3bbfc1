import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, it } from 'vitest';
import {
  beginOldRun,
  builtFrom,
  findOldBuild,
  storedOldRun,
  workInOldRun,
} from '../support/old-build.ts';
import { BUILT, serve } from '../support/server.ts';
import {
  act,
  actUntil,
  dispose,
  look,
  openSheet,
  picture,
  powerCut,
  see,
  startTablet,
  storedRecords,
  until,
  waitFor,
  type Sheet,
  type Tablet,
} from '../support/tablet.ts';

const old = findOldBuild();
if ('missing' in old) console.warn(`Skipped: a run of the old build. Reason: ${old.missing}.`);

let tablet: Tablet | undefined;
let site: Awaited<ReturnType<typeof serve>> | undefined;
let folder = '';

afterEach(async () => {
  await dispose(tablet);
  await site?.stop();
  if (folder !== '') rmSync(folder, { recursive: true, force: true });
});

/** Puts what was built in place of what is served. */
function release(built: string): void {
  rmSync(folder, { recursive: true, force: true });
  cpSync(built, folder, { recursive: true });
}

/** The script that the page of a build begins with: another one in every build. */
function scriptOf(built: string): string {
  const page = readFileSync(join(built, 'index.html'), 'utf8');
  return /<script type="module"[^>]* src="([^"]+)"/.exec(page)?.[1] ?? 'none';
}

const runsScript = (sheet: Sheet): Promise<string> =>
  see(sheet, "new URL(document.querySelector('script[type=module]').src).pathname");

const newWorkerWaits = (sheet: Sheet): Promise<unknown> =>
  waitFor(
    sheet,
    'navigator.serviceWorker.getRegistration().then((one) => one.update().then(() => one.waiting !== null))',
    'the new app waits behind the old one',
  );

const title =
  'missing' in old
    ? `a run begun in the old build goes on in this one (not here: ${old.missing})`
    : 'a run begun in the old build is taken up in this one, asked about, finished, and has a record';

it.skipIf('missing' in old)(title, async () => {
  if ('missing' in old) return;
  const oldBuilt = builtFrom(old.commit);
  expect(scriptOf(oldBuilt), 'two different builds').not.toBe(scriptOf(BUILT));
  folder = mkdtempSync(join(tmpdir(), 'glowpour-two-builds-'));
  release(oldBuilt);
  site = await serve(folder);
  tablet = await startTablet();
  let sheet = await openSheet(tablet, site.url);
  await waitFor(sheet, 'navigator.serviceWorker.controller', 'kept offline');
  expect(await runsScript(sheet)).toBe(scriptOf(oldBuilt));

  await beginOldRun(sheet);
  await workInOldRun(sheet, /rolling boil/i);
  const { records: before, fixtureNames } = await storedOldRun(sheet);
  expect(before.at(0)?.kind).toBe('drafted');
  expect(before.length).toBeGreaterThan(50);

  // The new app comes while the run is open: it waits, and the run stays in the old one.
  release(BUILT);
  await newWorkerWaits(sheet);
  expect(await runsScript(sheet)).toBe(scriptOf(oldBuilt));
  const { wallMs } = await see<{ wallMs: number }>(sheet, 'hands.shifted()');
  await picture(sheet, 'old-build-boils');
  await powerCut(tablet);

  // With the browser gone it takes over, and finds a run that it did not begin.
  tablet = await startTablet({ profile: tablet.profile, wallMs: Date.now() + wallMs + 5 * 60_000 });
  sheet = await openSheet(tablet, site.url);
  const seen = await until(sheet, 'the run of the old build', ({ status }) => status !== '');
  expect(await runsScript(sheet)).toBe(scriptOf(BUILT));
  expect(seen.status).toBe('reviewing');
  if (seen.armScreen) await act(sheet);
  await picture(sheet, 'old-run-in-new-build');
  for (let n = 0; n < 10 && (await look(sheet)).status === 'reviewing'; n += 1) await act(sheet);
  await until(sheet, 'the run goes on', ({ status }) => status === 'running');

  const taken = await storedRecords(sheet);
  expect(taken.map(({ seq }) => seq)).toEqual(taken.map((_, at) => at + 1));
  expect(taken.slice(0, before.length).map(({ kind }) => kind)).toEqual(
    before.map(({ kind }) => kind),
  );
  const since = taken.slice(before.length).map(({ kind }) => kind);
  expect(since).toContain('session-opened');
  expect(since).toContain('review-answered');

  expect((await actUntil(sheet, '^closed$', 1500)).status).toBe('closed');
  await see(sheet, 'document.querySelector(\'a[href*="#/record"]\').click()');
  const record = await waitFor<string>(
    sheet,
    "document.querySelector('main article')?.innerText",
    'the record',
  );
  expect(fixtureNames.length).toBeGreaterThan(5);
  for (const name of fixtureNames) expect(record.toLowerCase()).toContain(name.toLowerCase());
  await picture(sheet, 'record-across-builds');
});
