import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { serve } from '../support/server.ts';
import {
  act,
  actUntil,
  beginRun,
  dispose,
  look,
  openSheet,
  picture,
  press,
  savedRun,
  see,
  startTablet,
  storedRecords,
  until,
  waitFor,
  type SavedRun,
  type Sheet,
  type StoredRecord,
  type Tablet,
} from '../support/tablet.ts';

let site: Awaited<ReturnType<typeof serve>>;
let here: Tablet;
let there: Tablet;
let folder: string;
let file: SavedRun;
let records: readonly StoredRecord[];
let other: Sheet;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'glowpour-carry-'));
  site = await serve();
  here = await startTablet();
  const sheet = await openSheet(here, site.url);
  await beginRun(sheet);
  await actUntil(sheet, 'clean: hood');
  await press(sheet, '^Record$');
  await until(sheet, 'the record', ({ text }) => /Save as text/.test(text));
  file = await savedRun(sheet);
  records = await storedRecords(sheet);
  const { wallMs } = await see<{ wallMs: number }>(sheet, 'hands.shifted()');
  there = await startTablet({ wallMs: Date.now() + wallMs + 600_000 });
  other = await openSheet(there, `${site.url}/#/record`);
});
afterEach(async () => {
  await dispose(here);
  await dispose(there);
  await site.stop();
  rmSync(folder, { recursive: true, force: true });
});

async function bringIn(run: SavedRun): Promise<void> {
  const path = join(folder, 'run.glowpour.json');
  writeFileSync(path, JSON.stringify(run));
  const [chooser] = await Promise.all([
    other.page.waitForFileChooser(),
    press(other, 'Bring in a run from a file'),
  ]);
  await chooser.accept([path]);
}

describe('a run carried to another tablet', () => {
  it('comes in record by record as it was, asks what happened meanwhile, and goes on there', async () => {
    await bringIn(file);
    await waitFor(other, "document.querySelector('.run-list')", 'the run in the list');
    await press(other, '^Run$');
    const seen = await until(other, 'it is asked', ({ status }) => status === 'reviewing');
    await picture(other, 'carried-run-asks');
    expect(seen.sentence).toBe('Here is where you were');
    const carried = await storedRecords(other);
    expect(carried.slice(0, records.length).map(({ sum }) => sum)).toEqual(
      records.map(({ sum }) => sum),
    );
    expect(carried[records.length]?.kind).toBe('session-opened');
    await actUntil(other, 'clean: wall cupboard');
    expect((await look(other)).text).toMatch(/Steps\s+5\/\d+/);
    await picture(other, 'carried-run-goes-on');
  });

  it('is refused by name when a record was changed on the way, and nothing comes in', async () => {
    const changed = structuredClone(file);
    const one = changed.records[3];
    if (one) one.fact.body = { ...one.fact.body, kind: 'paused' };
    await bringIn(changed);
    await until(other, 'refused', ({ text }) => /nothing was brought in.* record 4/i.test(text));
    await picture(other, 'carried-run-refused');
    expect(await storedRecords(other)).toEqual([]);
  });

  it('does not push out a run that is open there', async () => {
    await other.page.goto(`${site.url}/#/kitchen`);
    await beginRun(other, 'Hall kitchen');
    await act(other);
    const before = await storedRecords(other);
    await press(other, '^Record$');
    await until(other, 'the record', ({ text }) => /Bring in a run/.test(text));
    await bringIn(file);
    await until(other, 'refused', ({ text }) => /allowed: one open run/i.test(text));
    expect(await storedRecords(other)).toEqual(before);
  });
});
