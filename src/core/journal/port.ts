import type { Heartbeat } from '../run/index.ts';
import type { StoredEntry } from './entry.ts';

/**
 * The port behind which a journal is kept. The core never sees a database: it
 * hands entries over and is told by name what became of them.
 *
 * Promises of a store:
 * - `append` resolves only when every entry of the call is on the disk (strict
 *   durability), and writes all of them or none.
 * - Entries of a run are contiguous from seq 1, each with the sum of the one
 *   before; an entry that does not follow the last one stored (`followProblem`)
 *   is refused with `out-of-order`.
 * - Every append carries the epoch of its writer, and the comparison with the
 *   stored epoch happens in the same transaction as the write. A writer with
 *   an older epoch is refused with `fenced` and writes nothing.
 */
export type JournalStore = {
  /**
   * Runs known to the store, the latest opened first. A run whose first entries
   * did not come to the disk is none: nothing of it began.
   */
  listRuns(): Promise<readonly StoredRun[]>;
  /**
   * Opens the journal of a run for writing, or makes it, to be listed with its
   * first entries: raises its stored epoch by one and gives a handle holding the
   * new epoch. Every older handle is fenced from then on.
   */
  openRun(entry: StoredRun): Promise<RunJournal>;
  /**
   * Reads the entries of a run as stored, by seq, unchecked; for `decodeJournal`.
   * Writes nothing.
   * @param fromSeq number of the first entry wanted, from 1; default: all
   */
  readAll(runId: string, fromSeq?: number): Promise<readonly unknown[]>;
  /**
   * The last heartbeat of a run, null when there was none. The heartbeat store
   * is apart from the entries, so that proof of life neither grows the journal
   * nor waits for it.
   */
  readHeartbeat(runId: string): Promise<Heartbeat | null>;
};

/** A journal open for writing. */
export type RunJournal = {
  readonly runId: string;
  /** Writer's number, 1 or more; grows by one at each `openRun`. */
  readonly epoch: number;
  /** All entries so far, by seq, unchecked. */
  readAll(): Promise<readonly unknown[]>;
  /** Appends contiguous entries; all or none; durable when resolved. */
  append(entries: readonly StoredEntry[]): Promise<void>;
  /** Drops a torn last entry (seq ≥ `fromSeq`) so that writing can go on after it. Checked against the epoch. */
  dropFrom(fromSeq: number): Promise<void>;
  /** Overwrites the heartbeat; may be relaxed in durability. Refused with `fenced` like an append. */
  writeHeartbeat(heartbeat: Heartbeat): Promise<void>;
  /** Updates the entry in the list of runs (name, closed). */
  describe(entry: StoredRun): Promise<void>;
  /** Gives up writing; the handle refuses everything after it. */
  close(): Promise<void>;
};

/** A row of the list of runs. */
export type StoredRun = {
  readonly id: string;
  /** Of the kitchen, when the run was drafted. */
  readonly name: string;
  /** Id of the kitchen as it is kept on this tablet; absent: a demo, from another tablet, or from before it was kept here. */
  readonly kitchen?: string;
  /** Wall time at which the run was drafted, ms. */
  readonly openedWallMs: number;
  readonly closed: boolean;
  readonly closedAs?: 'completed' | 'failed' | 'stopped';
};

/**
 * Named outcomes of a store that could not do as asked:
 * - `fenced`: another writer took over (second tab, or a person's word);
 * - `full`: the device has no room left;
 * - `refused`: the browser denied storage altogether;
 * - `blocked`: another tab holds an older database open;
 * - `held`: another page stands still in the midst of writing, and bars all others; as `timeout`
 *   otherwise, since a slow disk may look so;
 * - `out-of-order`: the entries do not follow the last one stored;
 * - `timeout`: no answer within the host's limit; the write may or may not be on disk;
 * - `lost`: the connection was closed under us and could not be made again;
 * - `gone`: what was stored of the run was deleted from outside;
 * - `unknown`: anything else, with the platform's own words in `message`.
 */
export type JournalStoreCode =
  | 'fenced'
  | 'full'
  | 'refused'
  | 'blocked'
  | 'held'
  | 'out-of-order'
  | 'timeout'
  | 'lost'
  | 'gone'
  | 'unknown';

/** Every promise of the port rejects with this and nothing else. */
export class JournalStoreError extends Error {
  readonly code: JournalStoreCode;
  constructor(code: JournalStoreCode, message: string) {
    super(message);
    this.name = 'JournalStoreError';
    this.code = code;
  }
}
