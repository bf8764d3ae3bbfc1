import { get, promisifyRequest } from 'idb-keyval';
import type { JournalStore, StoredRun } from '../../core/journal/index.ts';
import type { Heartbeat } from '../../core/run/index.ts';
import { keyValues, type Database, type Tables } from '../database/index.ts';
import { epochOf, lastSeq, named } from './epoch-guard.ts';
import { openRunJournal, readEntries } from './run-journal.ts';

/** The journal store on the browser's database; see the port for what it promises. */
export function createJournalStore(database: Database): JournalStore {
  const heartbeats = keyValues(database, 'heartbeats');
  return {
    async listRuns() {
      const rows = await named(database.transact(['runs', 'records'], 'readonly', writtenRuns));
      return rows.toSorted((a, b) => b.openedWallMs - a.openedWallMs);
    },
    async openRun(entry) {
      const work = database.transact(['runs', 'epochs'], 'readwrite', (tables) =>
        raiseEpoch(tables, entry),
      );
      return openRunJournal(database, entry.id, await named(work));
    },
    readAll: (runId, fromSeq) => readEntries(database, runId, fromSeq),
    async readHeartbeat(runId) {
      return (await named(get<Heartbeat>(runId, heartbeats))) ?? null;
    },
  };
}

/** Rows with entries: a row comes to the disk first, and what was to follow may have found no room. */
async function writtenRuns(tables: Tables): Promise<StoredRun[]> {
  const rows = await promisifyRequest<StoredRun[]>(tables('runs').getAll());
  const last = await Promise.all(rows.map(({ id }) => lastSeq(tables, id)));
  return rows.filter((_, at) => last[at]);
}

/** Writes the row of a new run (a stored one is newer than the caller's), and gives the next writer's number. */
async function raiseEpoch(tables: Tables, entry: StoredRun): Promise<number> {
  const stored = await promisifyRequest<unknown>(tables('runs').get(entry.id));
  if (stored === undefined) await promisifyRequest(tables('runs').put(entry, entry.id));
  const epoch = (await epochOf(tables, entry.id)) + 1;
  await promisifyRequest(tables('epochs').put(epoch, entry.id));
  return epoch;
}
