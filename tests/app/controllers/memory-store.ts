import {
  JournalStoreError,
  type StoredEntry,
  type JournalStore,
  type StoredRun,
  type RunJournal,
} from '../../../src/core/journal/index.ts';
import type { Readings } from '../../../src/core/run/index.ts';

/** A journal store in memory that keeps the promises of the port and can be made to fail. */
export class MemoryStore implements JournalStore {
  readonly records = new Map<string, StoredEntry[]>();
  readonly entries = new Map<string, StoredRun>();
  readonly heartbeats = new Map<string, Readings>();
  readonly epochs = new Map<string, number>();
  /** The next appends fail with this. */
  failing: 'full' | 'unknown' | undefined;
  /** Everything stored is gone, and every writer is told so. */
  losing = false;

  listRuns(): Promise<readonly StoredRun[]> {
    const rows = [...this.entries.values()];
    return Promise.resolve(rows.filter(({ id }) => this.records.get(id)?.length));
  }
  readAll(runId: string, fromSeq = 1): Promise<readonly unknown[]> {
    return Promise.resolve((this.records.get(runId) ?? []).slice(fromSeq - 1));
  }
  readHeartbeat(runId: string): Promise<Readings | null> {
    return Promise.resolve(this.heartbeats.get(runId) ?? null);
  }
  openRun(entry: StoredRun): Promise<RunJournal> {
    if (this.losing) return Promise.reject(new JournalStoreError('lost', 'Not yet.'));
    if (!this.entries.has(entry.id)) this.entries.set(entry.id, entry);
    const epoch = (this.epochs.get(entry.id) ?? 0) + 1;
    this.epochs.set(entry.id, epoch);
    return Promise.resolve(this.#journal(entry.id, epoch));
  }

  #journal(runId: string, epoch: number): RunJournal {
    const own = (): StoredEntry[] => {
      const list = this.records.get(runId) ?? [];
      this.records.set(runId, list);
      return list;
    };
    return {
      runId,
      epoch,
      readAll: () => this.readAll(runId),
      append: (records) => {
        if (this.losing) {
          this.records.clear();
          this.epochs.clear();
        }
        if (!this.epochs.has(runId))
          return Promise.reject(new JournalStoreError('gone', 'The stored run is gone.'));
        if (this.epochs.get(runId) !== epoch)
          return Promise.reject(new JournalStoreError('fenced', 'A newer writer has the run.'));
        if (this.failing)
          return Promise.reject(new JournalStoreError(this.failing, 'No room on the device.'));
        const list = own();
        if (records.some((record, i) => record.seq !== list.length + 1 + i))
          return Promise.reject(new JournalStoreError('out-of-order', 'A record does not follow.'));
        list.push(...records);
        return Promise.resolve();
      },
      dropFrom: (fromSeq) => {
        own().splice(fromSeq - 1);
        return Promise.resolve();
      },
      writeHeartbeat: (readings) => {
        this.heartbeats.set(runId, readings);
        return Promise.resolve();
      },
      describe: (entry) => {
        this.entries.set(runId, entry);
        return Promise.resolve();
      },
      close: () => Promise.resolve(),
    };
  }
}
