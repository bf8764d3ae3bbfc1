import { createRoot } from 'solid-js';
import { beforeEach, describe, expect, it } from 'vitest';
import { importRun } from '../../../src/app/controllers/run/import-run.ts';
import { createRunController } from '../../../src/app/controllers/run/run-controller.ts';
import { RunSession } from '../../../src/app/controllers/run/run-session.ts';
import { exportJournal } from '../../../src/core/journal/index.ts';
import { planOfDemo } from '../../core/plan/support/plans.ts';
import { BUILT_MS, NEW_YEAR_MS } from '../../core/run/support/tablet.ts';
import { MemoryStore } from './memory-store.ts';

const plan = planOfDemo('flat-coils');
const now = { wallMs: NEW_YEAR_MS, monoMs: 0, session: 'first' };
const quiet = { onView: () => undefined, onTrouble: () => undefined, onRefusal: () => undefined };

let store: MemoryStore;
let ids = 0;
const deps = () => ({
  store,
  readClocks: () => now,
  newId: () => `id-${(ids += 1)}`,
  builtWallMs: BUILT_MS,
});
const draft = () => RunSession.draft(plan, deps(), quiet);

/** A run of another tablet, which goes on here. */
async function fromElsewhere(): Promise<string> {
  const other = new MemoryStore();
  const { entry } = await RunSession.draft(plan, { ...deps(), store: other }, quiet);
  return exportJournal(await other.readAll(entry.id));
}

beforeEach(() => {
  store = new MemoryStore();
});

describe('a run of which nothing could be written', () => {
  it('is not open after a begin that found no room', async () => {
    store.failing = 'full';
    await expect(draft()).rejects.toMatchObject({ code: 'full' });
    expect(await store.listRuns()).toEqual([]);
  });

  it('is not open after an import that found no room', async () => {
    const text = await fromElsewhere();
    store.failing = 'full';
    await expect(importRun(store, text, 'came', now)).rejects.toMatchObject({ code: 'full' });
    expect(await store.listRuns()).toEqual([]);
  });

  it('bars neither an import nor a new run, where a page died before the first entries', async () => {
    await store.openRun({ id: 'died', name: 'Ours', openedWallMs: 1, closed: false });
    await importRun(store, await fromElsewhere(), 'came', now);
    expect(await store.listRuns()).toMatchObject([{ id: 'came', closed: false }]);
    const { entry } = await draft();
    expect((await store.listRuns()).map(({ id }) => id)).toEqual(['came', entry.id]);
  });

  it('says why it could not begin, and what says so is not taken away by the next reading', async () => {
    const told: string[] = [];
    const runs = createRoot(() =>
      createRunController({
        ...deps(),
        mayWrite: () => true,
        tell: ({ key }) => void told.push(key),
      }),
    );
    store.failing = 'full';
    await runs.start(plan);
    await runs.tick();
    expect(told).toEqual(['shell.storage.full']);
    expect(runs.isOpen()).toBe(false);
    expect(runs.openRun()).toBeUndefined();
    store.failing = undefined;
    await runs.start(plan);
    expect(runs.openRun()).toMatchObject({ closed: false });
  });
});
