import { openJournal, type JournalStore, type StoredRun } from '../../../core/journal/index.ts';
import type { Message } from '../../../core/messages/index.ts';
import {
  perform,
  view,
  type Readings,
  type RunState,
  type RunView,
} from '../../../core/run/index.ts';
import {
  leaderSilence,
  type LeaderSilence,
  type WatchedHeartbeat,
} from '../../../host/tab-lock/index.ts';
import { reasonOf } from '../failures/reason.ts';

export type WatchDeps = {
  readonly store: Pick<JournalStore, 'readAll' | 'readHeartbeat'>;
  readonly readClocks: () => Readings;
};

export type WatchListener = {
  readonly onView: (view: RunView) => void;
  readonly onSilence: (silence: LeaderSilence) => void;
  /** What was read last could not be read; undefined: it can again. */
  readonly onUnreadable: (why: Message | undefined) => void;
};

/**
 * Shows a run that another page writes. It reads the journal and the
 * heartbeat, writes nothing, and says whether the writer still lives. While
 * it does, only what is written down is shown; once it no longer beats, what
 * came due since is worked out here too, so that an alarm is not lost with it.
 */
export class RunWatch {
  readonly entry: StoredRun;
  #deps: WatchDeps;
  #listener: WatchListener;
  #state: RunState | undefined;
  /** Clocks of the writer when it was last proved alive by its facts. */
  #lastFactAt: Readings | undefined;
  #recordsRead = -1;
  #watched: WatchedHeartbeat | undefined;
  #looking = false;
  #stopped = false;

  constructor(entry: StoredRun, deps: WatchDeps, listener: WatchListener) {
    this.entry = entry;
    this.#deps = deps;
    this.#listener = listener;
  }

  /** Reads again what changed, and shows it. Never rejects; a second call while one reads does nothing. */
  async look(): Promise<void> {
    if (this.#looking || this.#stopped) return;
    this.#looking = true;
    try {
      await this.#read();
      if (!this.#stopped) this.#listener.onUnreadable(undefined);
    } catch (error) {
      if (!this.#stopped) this.#listener.onUnreadable(reasonOf(error));
    } finally {
      this.#looking = false;
      this.#publish();
    }
  }

  stop(): void {
    this.#stopped = true;
  }

  async #read(): Promise<void> {
    const { store, readClocks } = this.#deps;
    const heartbeat = await store.readHeartbeat(this.entry.id);
    const before = this.#watched?.heartbeat;
    const same =
      before !== undefined &&
      before?.session === heartbeat?.session &&
      before?.monoMs === heartbeat?.monoMs;
    if (!same) this.#watched = { heartbeat, firstSeenMonoMs: readClocks().monoMs };
    const records = await store.readAll(this.entry.id);
    if (records.length === this.#recordsRead) return;
    const { state, facts } = openJournal(records);
    if (!state) return;
    this.#recordsRead = records.length;
    this.#state = state;
    this.#lastFactAt = facts.at(-1)?.at;
  }

  #publish(): void {
    if (this.#stopped || !this.#state || !this.#watched) return;
    const silence = leaderSilence(this.#watched, this.#deps.readClocks());
    const now = this.#writersClocks();
    const ticked = silence === 'beating' ? undefined : perform(this.#state, { kind: 'tick' }, now);
    const state = ticked && 'state' in ticked ? ticked.state : this.#state;
    this.#listener.onSilence(silence);
    this.#listener.onView(view(state, now));
  }

  /** The clocks of the writer as they would stand now, from its last proof of life and the one wall clock of the tablet. */
  #writersClocks(): Readings {
    const { wallMs } = this.#deps.readClocks();
    const fact = this.#lastFactAt;
    const beat = this.#watched?.heartbeat;
    const last =
      fact && beat && beat.session === fact.session && beat.monoMs > fact.monoMs ? beat : fact;
    if (!last) return this.#deps.readClocks();
    const goneMs = Math.max(0, wallMs - last.wallMs);
    return { wallMs: last.wallMs + goneMs, monoMs: last.monoMs + goneMs, session: last.session };
  }
}
