import { describe, expect, it } from 'vitest';
import {
  createPlanning,
  nextQuarter,
  readLeftOut,
} from '../../../../src/app/controllers/kitchen/planning.ts';
import { encodeEntries, type StoredRun } from '../../../../src/core/journal/index.ts';
import type { Message } from '../../../../src/core/messages/index.ts';
import { buildPlan } from '../../../../src/core/plan/index.ts';
import { simulateRun } from '../../../../src/core/run/index.ts';
import { kitchenOf } from '../../../core/plan/support/plans.ts';
import { MemoryStore } from '../memory-store.ts';

const NOW_MS = Date.parse('2027-03-01T17:31:00Z');
const QUARTER_MS = 15 * 60_000;
const flat = kitchenOf('flat-coils');

function planningOf(entries: readonly StoredRun[], stored: Readonly<Record<string, unknown>> = {}) {
  const journals = new MemoryStore();
  const { facts } = simulateRun(buildPlan(flat));
  for (const entry of entries) {
    journals.entries.set(entry.id, entry);
    journals.records.set(entry.id, [...encodeEntries(facts)]);
  }
  const written: [string, unknown][] = [];
  const settings = {
    readAll: () => Promise.resolve(stored),
    write: (name: string, value: unknown) => {
      written.push([name, value]);
      return Promise.resolve();
    },
  };
  const told: Message[] = [];
  const tell = (message: Message): void => void told.push(message);
  const planning = createPlanning({ journals, settings, nowMs: () => NOW_MS, tell });
  return { planning, journals, written, told };
}

const run = (id: string, closed: boolean, name = flat.name): StoredRun => ({
  id,
  name,
  openedWallMs: NOW_MS - QUARTER_MS,
  closed,
});

describe('what a plan is made with besides the kitchen', () => {
  it('begins at the next full quarter, or when it was chosen; never in the past', () => {
    expect(nextQuarter(NOW_MS)).toBe(Date.parse('2027-03-01T17:45:00Z'));
    expect(nextQuarter(nextQuarter(NOW_MS))).toBe(nextQuarter(NOW_MS));
    const { planning } = planningOf([]);
    planning.beginAt(NOW_MS + 24 * QUARTER_MS);
    expect(planning.startWallMs()).toBe(nextQuarter(NOW_MS + 24 * QUARTER_MS));
    planning.beginAt(NOW_MS - 24 * QUARTER_MS);
    expect(planning.startWallMs()).toBe(nextQuarter(NOW_MS));
    planning.beginAt(null);
    expect(planning.startWallMs()).toBe(nextQuarter(NOW_MS));
  });

  it('keeps the chosen beginning over a reload, and forgets it when the run begins', async () => {
    const chosenMs = nextQuarter(NOW_MS + 24 * QUARTER_MS);
    const { planning, written } = planningOf([]);
    planning.beginAt(chosenMs);
    const reloaded = planningOf([], Object.fromEntries(written)).planning;
    expect((await reloaded.optionsOf(flat)).startWallMs).toBe(chosenMs);
    reloaded.beginAt(null);
    expect((await reloaded.optionsOf(flat)).startWallMs).toBe(nextQuarter(NOW_MS));
    planning.beginAt(null);
    const begun = planningOf([], Object.fromEntries(written)).planning;
    expect((await begun.optionsOf(flat)).startWallMs).toBe(nextQuarter(NOW_MS));
  });

  it.each([1e16, 253_402_300_800_000, -1, Number.NaN])(
    'takes no stored beginning that no date can be: %d ms',
    async (begins) => {
      const { planning } = planningOf([], { begins });
      expect((await planning.optionsOf(flat)).startWallMs).toBe(nextQuarter(NOW_MS));
    },
  );

  it('learns from closed runs of this kitchen only', async () => {
    const taught = await planningOf([run('a', true)]).planning.optionsOf(flat);
    expect(Object.keys(taught.calibration?.boil ?? {})).toEqual(flat.vessels.map(({ id }) => id));
    for (const other of [run('b', false), run('c', true, 'Another')]) {
      const options = await planningOf([other]).planning.optionsOf(flat);
      expect(options).toEqual({ startWallMs: nextQuarter(NOW_MS) });
    }
  });

  it('knows a kitchen by its id under a new name, and by its name where either has no id', async () => {
    const isTaught = async (entry: StoredRun, keptId?: string) =>
      'calibration' in (await planningOf([entry]).planning.optionsOf(flat, keptId));
    const renamed = { ...run('a', true, 'Before it was renamed'), kitchen: 'k-1' };
    expect(await isTaught(renamed, 'k-1')).toBe(true);
    expect(await isTaught(renamed)).toBe(false);
    const other = { ...run('b', true), kitchen: 'k-2' };
    expect(await isTaught(other, 'k-1')).toBe(false);
    expect(await isTaught(other)).toBe(true);
    expect(await isTaught(run('c', true), 'k-1')).toBe(true);
  });

  it('plans without calibration when the store does not answer, and says so', async () => {
    const { planning, journals, told } = planningOf([run('a', true)]);
    journals.listRuns = () => Promise.reject(new Error('gone'));
    expect(await planning.optionsOf(flat)).toEqual({ startWallMs: nextQuarter(NOW_MS) });
    expect(told).toMatchObject([{ key: 'shell.calibration-not-read' }]);
  });

  it('keeps what was left out, and takes nothing else for it', async () => {
    const { planning, written } = planningOf([], { 'left-out:a': '{"boil kettle":[2]}' });
    await planning.optionsOf(flat);
    expect(planning.leftOutOf('a')).toEqual({ 'boil kettle': [2] });
    planning.leaveOut('b', { pour: [0] });
    expect(planning.leftOutOf('b')).toEqual({ pour: [0] });
    expect(written).toEqual([['left-out:b', '{"pour":[0]}']]);
    const early = planningOf([], { 'left-out:a': '{"boil":[2]}', 'left-out:b': '{"boil":[3]}' });
    early.planning.leaveOut('b', { pour: [0] });
    await early.planning.optionsOf(flat);
    expect(['a', 'b'].map(early.planning.leftOutOf)).toEqual([{ boil: [2] }, { pour: [0] }]);
    for (const bad of ['{', '7', 'null', '{"boil":"2"}', '{"boil":[1.5]}', 12])
      expect(readLeftOut(bad)).toEqual({});
  });
});
