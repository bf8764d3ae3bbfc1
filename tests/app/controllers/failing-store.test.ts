import { createRoot } from 'solid-js';
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { chooseLanguage } from '../../../src/app/context/language.ts';
import { createRunController } from '../../../src/app/controllers/run/run-controller.ts';
import { RunSession } from '../../../src/app/controllers/run/run-session.ts';
import { JournalStoreError, type RunJournal } from '../../../src/core/journal/index.ts';
import type { RunView } from '../../../src/core/run/index.ts';
import { planOfDemo } from '../../core/plan/support/plans.ts';
import { smallPlan } from '../../core/run/support/fixtures.ts';
import { BUILT_MS, NEW_YEAR_MS } from '../../core/run/support/tablet.ts';
import { MemoryStore } from './memory-store.ts';

/** A store that can be made to answer late, or not to take the row of the list. */
class SlowStore extends MemoryStore {
  /** An append fails after this long, ms. */
  failsAfterMs = 0;
  describes = true;

  override async openRun(...of: Parameters<MemoryStore['openRun']>): Promise<RunJournal> {
    const journal = await super.openRun(...of);
    return {
      ...journal,
      append: async (records) => {
        if (this.failsAfterMs === 0) return journal.append(records);
        await new Promise((go) => setTimeout(go, this.failsAfterMs));
        throw new JournalStoreError('timeout', 'No answer.');
      },
      describe: async (entry) => {
        if (!this.describes) throw new JournalStoreError('full', 'No room.');
        await journal.describe(entry);
      },
    };
  }
}

let store: SlowStore;
let session: string;
let nowMs: number;
let views: RunView[];
let ids = 0;

beforeAll(() => chooseLanguage(['en']));
beforeEach(() => {
  [store, session, nowMs, views] = [new SlowStore(), 'first', NEW_YEAR_MS, []];
});
afterEach(() => {
  vi.useRealTimers();
});

const deps = () => ({
  store,
  readClocks: () => ({ wallMs: nowMs, monoMs: nowMs - NEW_YEAR_MS, session }),
  newId: () => `id-${(ids += 1)}`,
  builtWallMs: BUILT_MS,
});
const listener = {
  onView: (view: RunView) => void views.push(view),
  onTrouble: () => undefined,
  onRefusal: () => undefined,
};
const last = (): RunView => views.at(-1) ?? expect.fail('no view yet');

async function begun(): Promise<RunSession> {
  const run = await RunSession.draft(smallPlan, deps(), listener);
  await run.send({ kind: 'start-run' });
  return run;
}

const controller = () =>
  createRoot(() => createRunController({ ...deps(), mayWrite: () => true, tell: () => undefined }));

describe('a store that fails', () => {
  it('as a run is opened again is asked once more, until presses are taken', async () => {
    await (await begun()).leave();
    session = 'second';
    store.failing = 'full';
    const runs = controller();
    await runs.refresh();
    const open = runs.openRun() ?? expect.fail('no run');
    await runs.reopen(open);
    expect(runs.trouble()?.kind).toBe('unreadable');
    expect(await runs.send({ kind: 'stop-run', reason: 'Enough' })).toBe(false);
    store.failing = undefined;
    await runs.reopen(open);
    expect(runs.trouble()).toBeUndefined();
    expect(runs.view()?.status).toBe('reviewing');
    expect(await runs.send({ kind: 'stop-run', reason: 'Enough' })).toBe(true);
  });

  it('by not answering keeps no press waiting behind the turns of the clock', async () => {
    const run = await begun();
    vi.useFakeTimers();
    store.failsAfterMs = 5000;
    void run.send({ kind: 'note', text: 'First' });
    for (let s = 0; s < 60; s += 1) {
      void run.tick();
      await vi.advanceTimersByTimeAsync(1000);
    }
    const burned = run.send({ kind: 'report-fault', fault: 'burned' });
    await vi.advanceTimersByTimeAsync(5100);
    expect(await burned).toBe(true);
    expect(last().coolings).toHaveLength(1);
  });

  it('keeps at most one turn of the clock waiting, and loses no moment that comes while one is under way', async () => {
    const read: number[] = [];
    const clocks = deps();
    const readClocks = () => {
      read.push(nowMs);
      return clocks.readClocks();
    };
    const run = await RunSession.draft(smallPlan, { ...clocks, readClocks }, listener);
    await run.send({ kind: 'start-run' });
    const before = read.length;
    const first = run.tick();
    // It has begun, and read the clock.
    while (read.length === before) await Promise.resolve();
    nowMs += 60_000;
    const second = run.tick();
    expect(second).not.toBe(first);
    expect(run.tick()).toBe(second);
    await second;
    expect(read.at(-1)).toBe(nowMs);
  });

  it('while a run ends has it closed in the list once it answers', async () => {
    const run = await begun();
    store.failing = 'full';
    store.describes = false;
    await run.send({ kind: 'note', text: 'First' });
    await run.send({ kind: 'stop-run', reason: 'Enough' });
    for (const { step, status } of last().steps)
      if (status === 'unwinding') await run.send({ kind: 'confirm-safe', step: step.id });
    expect(last().status).toBe('closed');
    expect(await store.listRuns()).toMatchObject([{ closed: false }]);
    store.failing = undefined;
    store.describes = true;
    await run.tick();
    expect(await store.listRuns()).toMatchObject([{ closed: true }]);
  });
});

describe('the press that begins a run', () => {
  it('begins one, however often it is pressed', async () => {
    const runs = controller();
    const plan = planOfDemo('flat-coils');
    await Promise.all([runs.start(plan), runs.start(plan)]);
    await runs.start(plan);
    expect(await store.listRuns()).toHaveLength(1);
  });

  it('begins none beside one that is listed and not open yet', async () => {
    await (await begun()).leave();
    const runs = controller();
    await runs.refresh();
    await runs.start(planOfDemo('flat-coils'));
    expect(await store.listRuns()).toHaveLength(1);
  });
});
