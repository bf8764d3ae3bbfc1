import { beforeEach, describe, expect, it } from 'vitest';
import { RunSession } from '../../../src/app/controllers/run/run-session.ts';
import { RunWatch } from '../../../src/app/controllers/run/run-watch.ts';
import type { Message } from '../../../src/core/messages/index.ts';
import { encodeEntries, type StoredEntry } from '../../../src/core/journal/index.ts';
import type { Fact, RunView } from '../../../src/core/run/index.ts';
import { smallPlan } from '../../core/run/support/fixtures.ts';
import { BUILT_MS, NEW_YEAR_MS } from '../../core/run/support/tablet.ts';
import { MemoryStore } from './memory-store.ts';

let store: MemoryStore;
let nowMs: number;
let leader: RunSession;
let watch: RunWatch;
let views: RunView[];
let silences: string[];
let unreadable: (Message | undefined)[];

/** Both pages stand on one tablet: one wall clock, a monotonic clock and a session each. */
const clocksOf = (session: string, startedMs: number) => () => ({
  wallMs: nowMs,
  monoMs: nowMs - startedMs,
  session,
});

beforeEach(async () => {
  store = new MemoryStore();
  nowMs = NEW_YEAR_MS;
  [views, silences, unreadable] = [[], [], []];
  leader = await RunSession.draft(
    smallPlan,
    {
      store,
      readClocks: clocksOf('leader', NEW_YEAR_MS),
      newId: () => 'run',
      builtWallMs: BUILT_MS,
    },
    { onView: () => undefined, onTrouble: () => undefined, onRefusal: () => undefined },
  );
  nowMs += 5000;
  watch = new RunWatch(
    leader.entry,
    { store, readClocks: clocksOf('follower', nowMs) },
    {
      onView: (view) => views.push(view),
      onSilence: (silence) => silences.push(silence),
      onUnreadable: (message) => unreadable.push(message),
    },
  );
});

describe('a page that only shows', () => {
  it('follows what the leader writes, and writes nothing itself', async () => {
    await watch.look();
    expect(views.at(-1)?.status).toBe('drafting');
    await leader.send({ kind: 'start-run' });
    const records = store.records.get('run')?.length;
    await watch.look();
    expect(views.at(-1)?.status).toBe('running');
    expect(store.records.get('run')).toHaveLength(records ?? -1);
    expect(store.epochs.get('run')).toBe(1);
  });

  it('tells beating, unsure, silent by the heartbeat it watches', async () => {
    await leader.heartbeat();
    await watch.look();
    expect(silences.at(-1)).toBe('beating');
    nowMs += 50_000;
    await watch.look();
    expect(silences.at(-1)).toBe('unsure');
    nowMs += 50_000;
    await watch.look();
    expect(silences.at(-1)).toBe('silent');
    await leader.heartbeat();
    await watch.look();
    expect(silences.at(-1)).toBe('beating');
  });

  it('shows the leader’s clocks, though the monotonic clock of this page is another', async () => {
    await leader.send({ kind: 'start-run' });
    const ready = views.length;
    await watch.look();
    const step = views[ready]?.currentSteps.find((one) => one.status === 'ready')?.step.id ?? '';
    await leader.send({ kind: 'start-step', step });
    nowMs += 20_000;
    await leader.heartbeat();
    nowMs += 5000;
    await watch.look();
    const shown = views.at(-1);
    for (const clock of shown?.timers ?? []) {
      expect(clock.status).not.toBe('unproved');
      expect(clock.atLeastS).toBeLessThanOrEqual(25.1);
    }
    expect(shown?.askClock).toBe(false);
  });

  it('tells that it cannot read, and goes on when it can', async () => {
    await watch.look();
    store.readAll = () => Promise.reject(new Error('no answer'));
    await watch.look();
    expect(unreadable.at(-1)).toEqual({ key: 'shell.failed', params: { why: 'no answer' } });
    expect(views.length).toBe(2);
    store.readAll = MemoryStore.prototype.readAll.bind(store);
    await watch.look();
    expect(unreadable.at(-1)).toBeUndefined();
  });

  it('reads of a long journal only what is new', async () => {
    await leader.send({ kind: 'start-run' });
    for (let i = 0; i < 50; i += 1) await leader.send({ kind: 'note', text: `Note ${i}.` });
    await watch.look();
    const read: number[] = [];
    store.readAll = async (runId, fromSeq) => {
      const found = await MemoryStore.prototype.readAll.call(store, runId, fromSeq);
      read.push(found.length);
      return found;
    };
    await watch.look();
    await leader.send({ kind: 'pause' });
    await watch.look();
    await watch.look();
    expect(views.at(-1)?.status).toBe('held');
    // The last one known is read again, to see that it is the same journal.
    expect(read).toEqual([1, 2, 1]);
  });

  it('begins anew when what it read was replaced, as a short journal or another of the same length', async () => {
    await leader.send({ kind: 'start-run' });
    await leader.send({ kind: 'note', text: 'One.' });
    await watch.look();
    const kept = store.records.get('run') ?? [];
    store.records.set('run', kept.slice(0, 1));
    await watch.look();
    expect(views.at(-1)?.status).toBe('drafting');
    store.records.set('run', kept.slice(0, 2));
    await watch.look();
    expect(views.at(-1)?.status).toBe('running');
    const [first] = kept;
    if (!first) throw new Error('no journal');
    const other = encodeEntries([
      first.fact as Fact,
      { seq: 2, id: 'other', at: first.fact.at, body: { kind: 'noted', text: 'Written anew.' } },
    ]);
    store.records.set('run', [...other]);
    await watch.look();
    expect(views.at(-1)?.status).toBe('drafting');
  });

  it('leaves out a last record that is torn, and reads it once it is whole', async () => {
    await leader.send({ kind: 'start-run' });
    await watch.look();
    await leader.send({ kind: 'pause' });
    const whole = [...(store.records.get('run') ?? [])];
    const torn = JSON.stringify(whole.at(-1)).slice(0, 30) as unknown as StoredEntry;
    store.records.set('run', [...whole.slice(0, -1), torn]);
    await watch.look();
    expect(views.at(-1)?.status).toBe('running');
    store.records.set('run', whole);
    await watch.look();
    expect(views.at(-1)?.status).toBe('held');
  });

  it('shows nothing any more once it is stopped', async () => {
    await watch.look();
    watch.stop();
    await leader.send({ kind: 'start-run' });
    await watch.look();
    expect(views).toHaveLength(1);
  });
});
