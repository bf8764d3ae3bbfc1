import { createRoot } from 'solid-js';
import { beforeEach, describe, expect, it } from 'vitest';
import { putAside } from '../../../src/app/controllers/failures/put-aside.ts';
import { createRunController } from '../../../src/app/controllers/run/run-controller.ts';
import type { StoredEntry, StoredRun } from '../../../src/core/journal/index.ts';
import { smallPlan } from '../../core/run/support/fixtures.ts';
import { BUILT_MS, NEW_YEAR_MS } from '../../core/run/support/tablet.ts';
import { MemoryStore } from './memory-store.ts';

let store: MemoryStore;
let told: string[];
let ids = 0;
const controller = (session: string) =>
  createRoot(() =>
    createRunController({
      store,
      readClocks: () => ({ wallMs: NEW_YEAR_MS, monoMs: 0, session }),
      newId: () => `id-${(ids += 1)}`,
      builtWallMs: BUILT_MS,
      mayWrite: () => true,
      tell: ({ key }) => void told.push(key),
    }),
  );

/** A run that is open, and of which one entry was altered while no page had it. */
async function damaged(at: number): Promise<StoredRun> {
  const runs = controller('first');
  await runs.start(smallPlan, 'k-1');
  await runs.send({ kind: 'start-run' });
  const entry = runs.openRun() ?? expect.fail('no run');
  const list = store.records.get(entry.id) ?? [];
  list[at] = { ...(list[at] as StoredEntry), sum: '00000000' };
  return entry;
}

beforeEach(() => {
  store = new MemoryStore();
  told = [];
});

describe('a run whose journal is damaged', () => {
  it.each([0, 1])('is put aside by a word, its entries as they are; damaged at %i', async (at) => {
    const entry = await damaged(at);
    const before = structuredClone(store.records.get(entry.id));
    const runs = controller('second');
    await runs.refresh();
    await runs.reopen(entry);
    expect(runs.trouble()).toMatchObject({ kind: 'read-only' });
    const epoch = store.epochs.get(entry.id);
    // What is damaged does not mend itself: nothing is opened again each second, and what says so stays.
    await runs.tick();
    expect(runs.trouble()).toMatchObject({ kind: 'read-only' });
    expect(store.epochs.get(entry.id)).toBe(epoch);
    // A press is answered with the reason why it is not taken; what the device tells is none.
    expect(await runs.send({ kind: 'stop-run', reason: 'Enough' })).toBe(false);
    await runs.send({ kind: 'alarm-failed', timer: 'x', cause: 1, text: 'blocked' });
    expect(told).toEqual([runs.trouble()?.message.key]);

    await putAside(store, entry);
    await runs.letGo();
    expect(runs.isOpen()).toBe(false);
    expect(runs.trouble()).toBeUndefined();
    expect(runs.openRun()).toBeUndefined();
    expect(await store.listRuns()).toEqual([{ ...entry, closed: true, closedAs: 'failed' }]);
    expect(store.records.get(entry.id)).toEqual(before);
    await runs.tick();
    expect(runs.view()).toBeUndefined();

    await runs.start(smallPlan);
    expect(runs.isOpen()).toBe(true);
    expect(runs.openRun()?.id).not.toBe(entry.id);
    expect(store.records.get(entry.id)).toEqual(before);
  });
});
