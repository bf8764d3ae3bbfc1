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
import { OnTablet } from '../support/on-tablet.ts';
import { BUILT } from '../support/server.ts';
import type { Screen } from '../support/screen.ts';
import { storedEntries } from '../support/stored-run.ts';

const old = findOldBuild();
const on = new OnTablet();
let folder = '';

afterEach(async () => {
  await on.end();
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
  return /<script type="module"[^>]* src="([^"]+)"/.exec(page)?.[1]?.replace(/^\.?/u, '') ?? 'none';
}

const runsScript = (screen: Screen): Promise<string> =>
  screen.see("new URL(document.querySelector('script[type=module]').src).pathname");

const newWorkerWaits = (screen: Screen): Promise<unknown> =>
  screen.waitFor(
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
  await on.serve(folder);
  let screen = await on.open();
  await screen.keptOffline();
  expect(await runsScript(screen)).toBe(scriptOf(oldBuilt));

  await beginOldRun(screen);
  await workInOldRun(screen, /rolling boil/i);
  const { records: before, fixtureNames } = await storedOldRun(screen);
  expect(before.at(0)?.kind).toBe('drafted');
  expect(before.length).toBeGreaterThan(50);

  // The new app comes while the run is open: it waits, and the run stays in the old one.
  release(BUILT);
  await newWorkerWaits(screen);
  expect(await runsScript(screen)).toBe(scriptOf(oldBuilt));
  await screen.picture('faults/old-build-boils');
  await on.cutPower(5 * 60_000);

  // With the browser gone it takes over, and finds a run that it did not begin.
  screen = await on.open();
  const seen = await screen.until('the run of the old build', ({ status }) => status !== '');
  expect(await runsScript(screen)).toBe(scriptOf(BUILT));
  expect(seen.status).toBe('reviewing');
  if (seen.armScreen) await screen.act();
  await screen.picture('faults/old-run-in-new-build');
  for (let n = 0; n < 10 && (await screen.look()).status === 'reviewing'; n += 1)
    await screen.act();
  await screen.until('the run goes on', ({ status }) => status === 'running');

  const taken = await storedEntries(screen);
  expect(taken.map(({ seq }) => seq)).toEqual(taken.map((_, at) => at + 1));
  expect(taken.slice(0, before.length).map(({ kind }) => kind)).toEqual(
    before.map(({ kind }) => kind),
  );
  const since = taken.slice(before.length).map(({ kind }) => kind);
  expect(since).toContain('session-opened');
  expect(since).toContain('review-answered');

  expect((await screen.actUntil({ status: 'closed' }, 1500)).status).toBe('closed');
  await screen.press('record');
  const report = await screen.waitFor<string>(
    "document.querySelector('main article')?.innerText",
    'the record',
  );
  expect(fixtureNames.length).toBeGreaterThan(5);
  for (const name of fixtureNames) expect(report.toLowerCase()).toContain(name.toLowerCase());
  await screen.picture('faults/record-across-builds');
});
