import { JournalReader, type JournalStore, type StoredRun } from '../../../core/journal/index.ts';
import type { Message } from '../../../core/messages/index.ts';
import { perform, view, type Readings, type RunView } from '../../../core/run/index.ts';
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
  #reader = new JournalReader();
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
    if (this.#reader.read(await store.readAll(this.entry.id, this.#reader.fromSeq))) return;
    // Its end was dropped, or the writer wrote it down anew.
    const anew = new JournalReader();
    anew.read(await store.readAll(this.entry.id));
    if (anew.state) this.#reader = anew;
  }

  #publish(): void {
    const read = this.#reader.state;
    if (this.#stopped || !read || !this.#watched) return;
    const silence = leaderSilence(this.#watched, this.#deps.readClocks());
    const now = this.#writersClocks();
    const ticked = silence === 'beating' ? undefined : perform(read, { kind: 'tick' }, now);
    const state = ticked && 'state' in ticked ? ticked.state : read;
    this.#listener.onSilence(silence);
    this.#listener.onView(view(state, now));
  }

  /** The clocks of the writer as they would stand now, from its last proof of life and the one wall clock of the tablet. */
  #writersClocks(): Readings {
    const { wallMs } = this.#deps.readClocks();
    // Clocks of the writer when it was last proved alive by its facts.
    const fact = this.#reader.lastFact?.at;
    const beat = this.#watched?.heartbeat;
    const last =
      fact && beat && beat.session === fact.session && beat.monoMs > fact.monoMs ? beat : fact;
    if (!last) return this.#deps.readClocks();
    const goneMs = Math.max(0, wallMs - last.wallMs);
    return { wallMs: last.wallMs + goneMs, monoMs: last.monoMs + goneMs, session: last.session };
  }
}
