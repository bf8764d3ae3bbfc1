import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { RunSession } from '../../../src/app/controllers/run/run-session.ts';
import type { SessionListener } from '../../../src/app/controllers/run/session-ports.ts';
import type { Trouble } from '../../../src/app/controllers/run/trouble.ts';
import { decodeJournal } from '../../../src/core/journal/index.ts';
import type { Fact, RunView } from '../../../src/core/run/index.ts';
import { chooseLanguage } from '../../../src/app/context/language.ts';
import { inEnglish } from '../../support/english.ts';
import { smallPlan } from '../../core/run/support/fixtures.ts';
import { BUILT_MS, NEW_YEAR_MS } from '../../core/run/support/tablet.ts';
import { MemoryStore } from './memory-store.ts';

let store: MemoryStore;
let nowMs: number;
let session: string;
let views: RunView[];
let troubles: (Trouble | undefined)[];
let refusals: string[];

beforeEach(() => {
  store = new MemoryStore();
  nowMs = NEW_YEAR_MS;
  session = 'first';
  views = [];
  troubles = [];
  refusals = [];
});

beforeAll(() => chooseLanguage(['en']));

let ids = 0;
const deps = () => ({
  store,
  readClocks: () => ({ wallMs: nowMs, monoMs: nowMs - NEW_YEAR_MS, session }),
  newId: () => `id-${(ids += 1)}`,
  builtWallMs: BUILT_MS,
});
const listener: SessionListener = {
  onView: (view) => views.push(view),
  onTrouble: (trouble) => troubles.push(trouble),
  onRefusal: (refusal) => refusals.push(refusal.code),
};
const last = (): RunView => views.at(-1) ?? expect.fail('no view yet');

const factsOf = async ({ entry }: RunSession): Promise<readonly Fact[]> =>
  decodeJournal(await store.readAll(entry.id)).facts;

async function begun(): Promise<RunSession> {
  const run = await RunSession.draft(smallPlan, deps(), listener);
  await run.send({ kind: 'start-run' });
  return run;
}

describe('a run kept by its page', () => {
  it('keeps in the list of runs which kitchen it is of, also when it is closed', async () => {
    const run = await RunSession.draft(smallPlan, deps(), listener, 'k-1');
    await run.send({ kind: 'start-run' });
    await run.send({ kind: 'stop-run', reason: 'Enough' });
    for (const { id, status } of last().steps.map(({ step, status }) => ({ id: step.id, status })))
      if (status === 'unwinding') await run.send({ kind: 'confirm-safe', step: id });
    expect(last().status).toBe('closed');
    expect(await store.listRuns()).toMatchObject([
      { kitchen: 'k-1', name: smallPlan.kitchen.name, closed: true },
    ]);
    expect((await begun()).entry).not.toHaveProperty('kitchen');
  });

  it('stores every fact before its effect is shown. Verifies: I-03', async () => {
    const run = await begun();
    expect(last().status).toBe('running');
    const stored = store.records.get(run.entry.id)?.map((record) => record.fact.body.kind);
    expect(stored).toEqual(expect.arrayContaining(['drafted', 'run-started']));
    const first = last().currentSteps[0]?.step.id ?? '';
    const statusOfFirst = () => last().steps.find((s) => s.step.id === first)?.status;
    store.failing = 'full';
    expect(await run.send({ kind: 'start-step', step: first })).toBe(false);
    expect(statusOfFirst()).not.toBe('active');
    // The same request, once it can be stored: it is what would have been shown.
    store.failing = undefined;
    await run.tick();
    await run.send({ kind: 'resume' });
    expect(await run.send({ kind: 'start-step', step: first })).toBe(true);
    expect(statusOfFirst()).toBe('active');
  });

  it('suspends when nothing can be stored, says so, and goes on writing without a gap when it can', async () => {
    const run = await begun();
    store.failing = 'full';
    await run.send({ kind: 'note', text: 'lost?' });
    expect(troubles.at(-1)).toMatchObject({ kind: 'storage' });
    expect(last().status).toBe('suspended');
    expect(last().storageDown).toBe(true);
    store.failing = undefined;
    await run.tick();
    expect(troubles.at(-1)).toBeUndefined();
    expect(last().storageDown).toBe(false);
    const seqs = store.records.get(run.entry.id)?.map((record) => record.seq) ?? [];
    expect(seqs).toEqual(seqs.map((_, i) => i + 1));
    await run.send({ kind: 'resume' });
    expect(last().status).toBe('running');
  });

  it('starts the clock of a burn though its word cannot be stored, and writes it when it can. Verifies: I-30', async () => {
    const run = await begun();
    store.failing = 'full';
    expect(await run.send({ kind: 'report-fault', fault: 'burned' })).toBe(true);
    expect(troubles.at(-1)).toMatchObject({ kind: 'storage' });
    expect(last().coolings).toMatchObject([{ leftS: 1200 }]);
    nowMs += 60_000;
    await run.tick();
    expect(last().coolings[0]?.leftS).toBeLessThan(1141);
    store.failing = undefined;
    await run.tick();
    const kept = (await factsOf(run)).map(({ body }) => body.kind);
    expect(kept).toEqual(expect.arrayContaining(['storage-failed', 'fault-raised']));
    expect(last().coolings).toHaveLength(1);
  });

  it('takes up where it was after a kill, and asks what happened', async () => {
    const run = await begun();
    const before = last();
    await run.heartbeat();
    nowMs += 14 * 60_000;
    session = 'second';
    const again = await RunSession.reopen(run.entry, deps(), listener);
    expect(again.entry.id).toBe(run.entry.id);
    expect(last().doneSteps).toBe(before.doneSteps);
    expect(last().status).toBe('reviewing');
    const facts = await factsOf(again);
    expect(facts.at(-1)?.body.kind).toBe('session-opened');
  });

  it('drops a torn last record, and writes on behind it', async () => {
    const run = await begun();
    const list = store.records.get(run.entry.id) ?? [];
    const whole = list.length;
    list.push({ v: 1, seq: whole + 1 } as never);
    session = 'second';
    const again = await RunSession.reopen(run.entry, deps(), listener);
    const opened = (await factsOf(again)).findLast((fact) => fact.body.kind === 'session-opened');
    expect(opened?.seq).toBe(whole + 1);
    expect(opened?.body).toMatchObject({ tornRecords: 1 });
  });

  it('only shows a journal that was altered', async () => {
    const run = await begun();
    const list = store.records.get(run.entry.id) ?? [];
    const second = list[1];
    if (second) list[1] = { ...second, sum: '00000000' };
    const records = list.length;
    const again = await RunSession.reopen(run.entry, deps(), listener);
    expect(troubles.at(-1)).toMatchObject({ kind: 'read-only' });
    await again.send({ kind: 'stop-run', reason: 'x' });
    expect(store.records.get(run.entry.id)).toHaveLength(records);
  });

  it('writes nothing once another page took the run over', async () => {
    const run = await begun();
    await RunSession.reopen(run.entry, deps(), listener);
    const records = store.records.get(run.entry.id)?.length;
    await run.send({ kind: 'note', text: 'late' });
    expect(troubles.at(-1)).toMatchObject({ kind: 'taken-over' });
    expect(store.records.get(run.entry.id)).toHaveLength(records ?? -1);
  });

  it('tells a refusal by its name and changes nothing', async () => {
    const run = await begun();
    const records = store.records.get(run.entry.id)?.length;
    expect(await run.send({ kind: 'resume' })).toBe(false);
    expect(await run.send({ kind: 'pause' })).toBe(true);
    await run.send({ kind: 'resume' });
    expect(refusals).toHaveLength(1);
    expect(store.records.get(run.entry.id)).toHaveLength((records ?? -1) + 2);
  });
});

describe('a journal that is lost under an open run', () => {
  it('is written down again whole, and the record says so', async () => {
    const run = await begun();
    const before = [...(store.records.get(run.entry.id) ?? [])];
    store.losing = true;
    expect(await run.send({ kind: 'note', text: 'lost?' })).toBe(false);
    expect(troubles.at(-1)).toMatchObject({ kind: 'storage' });
    expect(run.records()?.length).toBeGreaterThan(before.length);
    store.losing = false;
    await run.tick();
    const noted = (await factsOf(run)).find(({ body }) => body.kind === 'noted');
    expect(noted?.body).toMatchObject({ text: inEnglish.t('run.written-anew') });
    const after = store.records.get(run.entry.id) ?? [];
    expect(after.slice(0, before.length)).toEqual(before);
    expect(after.map((record) => record.seq)).toEqual(after.map((_, i) => i + 1));
    expect(after.map((record) => record.fact.body.kind)).toEqual(
      expect.arrayContaining(['storage-failed', 'storage-mended', 'noted']),
    );
    expect(troubles.at(-1)).toBeUndefined();
  });

  it('leaves as a file with what could not be stored', async () => {
    const run = await begun();
    store.failing = 'full';
    await run.send({ kind: 'note', text: 'x' });
    expect(run.hasUnsaved()).toBe(true);
    expect(run.records()?.at(-1)?.fact.body.kind).toBe('storage-failed');
  });

  it('goes on after a mistake of the app, and says that it failed', async () => {
    const run = await begun();
    const bad = { kind: 'no such request' } as unknown as Parameters<RunSession['send']>[0];
    expect(await run.send(bad)).toBe(false);
    expect(troubles.at(-1)).toMatchObject({ kind: 'failed' });
    expect(await run.send({ kind: 'pause' })).toBe(true);
  });

  it('has a mistake of the app in its record, once however often it is made', async () => {
    const run = await begun();
    const bad = { kind: 'no such request' } as unknown as Parameters<RunSession['send']>[0];
    for (let n = 0; n < 3; n += 1) await run.send(bad);
    const notes = (await factsOf(run)).filter(({ body }) => body.kind === 'noted');
    expect(notes).toHaveLength(1);
  });

  it('goes on when what it shows cannot be drawn: every later press, tick and stop is heard', async () => {
    const run = await begun();
    const draw = listener.onView;
    const broken: SessionListener = Object.assign(listener, {
      onView: () => {
        throw new Error('cannot be drawn');
      },
    });
    try {
      // What was asked has happened, drawn or not.
      expect(await run.send({ kind: 'pause' })).toBe(true);
      expect(troubles.at(-1)).toMatchObject({ kind: 'failed' });
    } finally {
      Object.assign(broken, { onView: draw });
    }
    expect(await run.send({ kind: 'resume' })).toBe(true);
    expect(await run.send({ kind: 'stop-run', reason: 'x' })).toBe(true);
    expect(last().status).toBe('closed');
    const notes = (await factsOf(run)).filter(({ body }) => body.kind === 'noted');
    expect(notes.map(({ body }) => JSON.stringify(body))).toEqual([
      expect.stringContaining('cannot be drawn'),
    ]);
  });

  it('goes on when even telling of a mistake fails', async () => {
    const run = await begun();
    const tell = listener.onTrouble;
    Object.assign(listener, {
      onTrouble: () => {
        throw new Error('cannot be told');
      },
    });
    const bad = { kind: 'no such request' } as unknown as Parameters<RunSession['send']>[0];
    try {
      expect(await run.send(bad)).toBe(false);
      expect(await run.send({ kind: 'pause' })).toBe(true);
    } finally {
      Object.assign(listener, { onTrouble: tell });
    }
    expect(await run.send({ kind: 'stop-run', reason: 'x' })).toBe(true);
  });

  it('does not tell a person what the device told twice', async () => {
    const run = await begun();
    await run.send({ kind: 'alarm-handed', timer: 'no such clock', cause: 1 });
    expect(refusals).toEqual([]);
  });
});
