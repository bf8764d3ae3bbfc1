import { beforeEach, describe, expect, it, vi } from 'vitest';
import { encodeEntries, type StoredRun } from '../../../src/core/journal/index.ts';
import { createRun } from '../../../src/core/run/index.ts';
import type { Database } from '../../../src/host/database/index.ts';
import { createJournalStore } from '../../../src/host/journal/index.ts';
import { smallPlan } from '../../core/run/support/fixtures.ts';
import { BUILT_MS, NEW_YEAR_MS } from '../../core/run/support/tablet.ts';

type Key = string | readonly [string, number];
type Range = { readonly runId: string; readonly fromSeq: number };

/** As much of a table as the journal asks of it: a request is answered at once. */
class FakeTable {
  readonly rows = new Map<string, { readonly key: Key; readonly value: unknown }>();

  #within({ runId, fromSeq }: Range) {
    return [...this.rows.values()].filter(
      ({ key }) => key[0] === runId && (key[1] as number) >= fromSeq,
    );
  }
  get = (key: Key) => answer(this.rows.get(String(key))?.value);
  put = (value: unknown, key: Key) => answer(this.rows.set(String(key), { key, value }));
  add = this.put;
  getAll = (range?: Range) =>
    answer((range ? this.#within(range) : [...this.rows.values()]).map(({ value }) => value));
  openKeyCursor = (range: Range) => answer(this.#within(range).at(-1) ?? null);
}

function answer(result: unknown) {
  const request: { result: unknown; onsuccess?: () => void } = { result };
  queueMicrotask(() => request.onsuccess?.());
  return request;
}

let tables: Map<string, FakeTable>;
let isFull: boolean;

const database: Database = {
  // What is undone when a transaction fails is not needed here: what is full refuses the first entry of it.
  async transact(names, mode, work) {
    if (isFull && names.includes('records') && mode === 'readwrite')
      throw new Error('No room left.');
    return work((name) => {
      if (!names.includes(name)) throw new Error(`${name} is not in this transaction.`);
      const table = tables.get(name) ?? new FakeTable();
      tables.set(name, table);
      return table as unknown as IDBObjectStore;
    });
  },
  close: () => undefined,
};

const row = (id: string, openedWallMs: number): StoredRun => ({
  id,
  name: 'Ours',
  openedWallMs,
  closed: false,
});
const entries = () => {
  const at = { wallMs: NEW_YEAR_MS, monoMs: 0, session: 'first' };
  return encodeEntries(createRun(smallPlan, at, BUILT_MS).facts);
};

beforeEach(() => {
  tables = new Map();
  isFull = false;
  vi.stubGlobal('IDBKeyRange', {
    bound: ([runId, fromSeq]: [string, number?]): Range => ({ runId, fromSeq: fromSeq ?? 1 }),
  });
});

describe('the list of runs', () => {
  it('has runs with entries, the latest first', async () => {
    const store = createJournalStore(database);
    for (const [id, ms] of [
      ['a', 1],
      ['b', 2],
    ] as const)
      await (await store.openRun(row(id, ms))).append(entries());
    expect((await store.listRuns()).map(({ id }) => id)).toEqual(['b', 'a']);
  });

  it('leaves out a row whose first entries never came to the disk, and has it once they are there', async () => {
    const store = createJournalStore(database);
    const journal = await store.openRun(row('a', 1));
    isFull = true;
    await expect(journal.append(entries())).rejects.toThrow('No room left.');
    expect(await store.listRuns()).toEqual([]);
    isFull = false;
    await journal.append(entries());
    expect(await store.listRuns()).toEqual([row('a', 1)]);
  });
});
