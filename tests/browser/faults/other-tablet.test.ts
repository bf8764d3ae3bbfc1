import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { format, t } from '../support/language.ts';
import { onTablet } from '../support/on-tablet.ts';
import { addressOf, Screen } from '../support/screen.ts';
import { savedRun, storedEntries, type SavedRun, type StoredEntry } from '../support/stored-run.ts';
import { dispose, startTablet, type Tablet } from '../support/tablet.ts';

let there: Tablet | undefined;
let other: Screen;
let folder: string;
let file: SavedRun;
let entries: readonly StoredEntry[];

const on = onTablet('test', async (here) => {
  const screen = await here.open();
  await screen.beginRun();
  await screen.actUntil({ step: 'clean-hood' });
  await screen.goTo('record');
  file = await savedRun(screen, () => screen.button('record-page.save-run').click());
  entries = await storedEntries(screen);
});
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'glowpour-moved-'));
  const { wallMs } = await on.screen.shifted();
  there = await startTablet({ wallMs: Date.now() + wallMs + 600_000 });
  other = await Screen.open(there, addressOf(on.site.url, 'record'));
});
afterEach(async () => {
  await dispose(there);
  rmSync(folder, { recursive: true, force: true });
});

async function bringIn(run: SavedRun): Promise<void> {
  const path = join(folder, 'run.glowpour.json');
  writeFileSync(path, JSON.stringify(run));
  const [chooser] = await Promise.all([
    other.page.waitForEvent('filechooser'),
    other.button('record-page.import').click(),
  ]);
  await chooser.setFiles(path);
}

/** What the app tells of a file that it refuses. */
async function isTold(key: string): Promise<string> {
  const notice = other.page.locator(`[role="status"][data-key="${key}"]`);
  await notice.waitFor();
  return notice.innerText();
}

describe('a run carried to another tablet', () => {
  it('comes in entry by entry as it was, asks what happened meanwhile, and goes on there', async () => {
    await bringIn(file);
    await other.waitForElement('.run-list');
    await other.goTo('run');
    await other.waitForElement('.review');
    expect((await other.look()).status).toBe('reviewing');
    await other.picture('faults/moved-run-asks');
    expect((await other.look()).sentence).toBe(t('run.review.title'));
    const moved = await storedEntries(other);
    expect(moved.slice(0, entries.length).map(({ sum }) => sum)).toEqual(
      entries.map(({ sum }) => sum),
    );
    expect(moved[entries.length]?.kind).toBe('session-opened');
    const steps = other.page.locator('[data-action="steps"]');
    const over = async () => Number(/(\d+)\//u.exec(await steps.innerText())?.[1]);
    await other.actUntil({ step: 'clean-hood' });
    const before = await over();
    expect(before).toBeGreaterThan(4);
    await other.actUntil({ step: 'clean-wall-cupboard' });
    expect(await over()).toBe(before + 1);
    await other.picture('faults/moved-run-goes-on');
  });

  it('is refused by name when an entry was changed on the way, and nothing comes in', async () => {
    const changed = structuredClone(file);
    const one = changed.entries[3];
    if (one) one.fact.body = { ...one.fact.body, kind: 'paused' };
    await bringIn(changed);
    expect(await isTold('shell.import.not-whole')).toContain(format.number(4));
    await other.picture('faults/moved-run-refused');
    expect(await storedEntries(other)).toEqual([]);
  });

  it('does not push out a run that is open there', async () => {
    await other.goTo('kitchen');
    await other.beginRun('hall');
    await other.act();
    const before = await storedEntries(other);
    await other.goTo('record');
    await other.button('record-page.import').waitFor();
    await bringIn(file);
    await isTold('shell.import.open-run');
    expect(await storedEntries(other)).toEqual(before);
  });
});
