import {
  followProblem,
  JournalStoreError,
  type StoredEntry,
  type StoredRun,
  type RunJournal,
} from '../../core/journal/index.ts';
import type { Heartbeat } from '../../core/run/index.ts';
import type { Database, Tables } from '../database/index.ts';
import { promisifyRequest } from 'idb-keyval';
import { checkEpoch, lastSeq, named, entriesOf } from './epoch-guard.ts';

/**
 * A journal open for writing. idb-keyval's functions see one table in one
 * transaction, and its `setMany` would overwrite; an append must read the
 * epoch and the last number, and add records, in one transaction over two
 * tables. So the journal uses the transaction itself.
 */
export function openRunJournal(database: Database, runId: string, epoch: number): RunJournal {
  let closed = false;
  /** First record of an append that gave no answer: it may be on disk although it was reported as failed. */
  let doubtFromSeq: number | undefined;

  const fenced = <T>(
    table: 'records' | 'heartbeats' | 'runs',
    work: (tables: Tables) => Promise<T>,
    durability: 'strict' | 'relaxed' = 'strict',
  ): Promise<T> => {
    if (closed) {
      return Promise.reject(
        new JournalStoreError(
          'fenced',
          `This page gave up writing run ${runId}. Open the run again.`,
        ),
      );
    }
    const transaction = database.transact(
      ['epochs', table],
      'readwrite',
      async (tables) => {
        await checkEpoch(tables, runId, epoch);
        return work(tables);
      },
      durability,
    );
    return named(transaction);
  };

  return {
    runId,
    epoch,
    readAll: () => readEntries(database, runId),
    async append(records) {
      const first = records[0];
      if (!first) return;
      checkContiguous(records);
      try {
        await fenced('records', (tables) => add(tables, runId, records, doubtFromSeq));
        doubtFromSeq = undefined;
      } catch (error) {
        if (error instanceof JournalStoreError && ['timeout', 'held'].includes(error.code)) {
          doubtFromSeq = Math.min(doubtFromSeq ?? first.seq, first.seq);
        }
        throw error;
      }
    },
    dropFrom: (fromSeq) =>
      fenced('records', async (tables) => {
        await promisifyRequest(tables('records').delete(entriesOf(runId, fromSeq)));
      }),
    writeHeartbeat: (heartbeat: Heartbeat) =>
      fenced(
        'heartbeats',
        async (tables) => {
          await promisifyRequest(tables('heartbeats').put(heartbeat, runId));
        },
        'relaxed',
      ),
    describe: (entry: StoredRun) =>
      fenced('runs', async (tables) => {
        await promisifyRequest(tables('runs').put(entry, runId));
      }),
    close() {
      closed = true;
      return Promise.resolve();
    },
  };
}

/** Records of a run by number, unchecked: all, or those from a number on. */
export function readEntries(
  database: Database,
  runId: string,
  fromSeq?: number,
): Promise<readonly unknown[]> {
  return named(
    database.transact(['records'], 'readonly', (tables) =>
      promisifyRequest<unknown[]>(tables('records').getAll(entriesOf(runId, fromSeq))),
    ),
  );
}

function outOfOrder(seq: number, expected: number): JournalStoreError {
  return new JournalStoreError(
    'out-of-order',
    // not shown: for developers; the code is told.
    `seq is ${seq}; allowed: ${expected}, the one after the last. Read the journal again.`,
  );
}

/** An entry that names another predecessor than the one that is there was made from another journal. */
function refuseUnlessFollows(before: unknown, record: StoredEntry): void {
  const wrong = followProblem(before, record);
  if (wrong !== undefined) throw new JournalStoreError('out-of-order', wrong);
}

function checkContiguous(records: readonly StoredEntry[]): void {
  for (const [index, record] of records.entries()) {
    const expected = (records[0]?.seq ?? 1) + index;
    if (record.seq !== expected) throw outOfOrder(record.seq, expected);
    if (index > 0) refuseUnlessFollows(records[index - 1], record);
  }
}

/**
 * Adds records after the last. Only what this same writer wrote in an append
 * that timed out may be replaced: it was reported as not having happened, and
 * the epoch proves that nobody built on it.
 */
async function add(
  tables: Tables,
  runId: string,
  records: readonly StoredEntry[],
  doubtFromSeq: number | undefined,
): Promise<void> {
  const store = tables('records');
  const firstSeq = records[0]?.seq ?? 1;
  let last = await lastSeq(tables, runId);
  if (doubtFromSeq !== undefined && last >= firstSeq && firstSeq >= doubtFromSeq) {
    await promisifyRequest(store.delete(entriesOf(runId, firstSeq)));
    last = await lastSeq(tables, runId);
  }
  if (firstSeq !== last + 1) throw outOfOrder(firstSeq, last + 1);
  const before = last > 0 ? await promisifyRequest<unknown>(store.get([runId, last])) : undefined;
  if (records[0]) refuseUnlessFollows(before, records[0]);
  await Promise.all(
    records.map((record) => promisifyRequest(store.add(record, [runId, record.seq]))),
  );
}
