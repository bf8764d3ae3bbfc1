import {
  decodeJournal,
  encodeRecords,
  openJournal,
  JournalStoreError,
  type JournalRecord,
  type JournalStore,
  type RunEntry,
  type RunJournal,
} from '../../core/journal/index.ts';
import type { Plan } from '../../core/plan/index.ts';
import {
  draft,
  perform,
  view,
  type Fact,
  type Observation,
  type Readings,
  type Refusal,
  type Request,
  type RunState,
  type RunView,
} from '../../core/run/index.ts';

/** What the session needs of the device; the tests pass their own. */
export type SessionDeps = {
  readonly store: JournalStore;
  readonly readClocks: () => Readings;
  readonly newId: () => string;
  /** Build date of this app: no honest clock shows less. */
  readonly builtWallMs: number;
};

/** Why the run cannot be written by this page; shown in words, never swallowed. */
export type Trouble =
  | { readonly kind: 'storage'; readonly message: string }
  | { readonly kind: 'read-only'; readonly message: string };

export type SessionListener = {
  readonly onView: (view: RunView) => void;
  readonly onTrouble: (trouble: Trouble | undefined) => void;
  readonly onRefusal: (refusal: Refusal) => void;
};

/**
 * Keeps one open run: turns requests into facts, makes them durable, and only
 * then shows their effect. Everything goes through one queue, so that facts
 * are decided on the state they are applied to.
 */
export class RunSession {
  readonly entry: RunEntry;
  #deps: SessionDeps;
  #listener: SessionListener;
  #journal: RunJournal;
  #state: RunState;
  #lastSum: string | undefined;
  /** Facts that happened but could not be stored yet; the run is suspended meanwhile. */
  #unsaved: JournalRecord[] = [];
  #readOnly = false;
  #queue: Promise<void> = Promise.resolve();

  private constructor(
    entry: RunEntry,
    journal: RunJournal,
    state: RunState,
    lastSum: string | undefined,
    deps: SessionDeps,
    listener: SessionListener,
  ) {
    this.entry = entry;
    this.#journal = journal;
    this.#state = state;
    this.#lastSum = lastSum;
    this.#deps = deps;
    this.#listener = listener;
  }

  /** Drafts a new run of a plan. @throws JournalStoreError when it cannot be stored */
  static async draft(
    plan: Plan,
    deps: SessionDeps,
    listener: SessionListener,
  ): Promise<RunSession> {
    const now = deps.readClocks();
    const entry: RunEntry = {
      id: deps.newId(),
      name: plan.kitchen.name,
      openedWallMs: now.wallMs,
      closed: false,
    };
    const { facts, state } = draft(plan, now, deps.builtWallMs);
    const records = encodeRecords(facts);
    const journal = await deps.store.openRun(entry);
    await journal.append(records);
    const session = new RunSession(entry, journal, state, records.at(-1)?.sum, deps, listener);
    session.#publish(now);
    return session;
  }

  /**
   * Opens a stored run. A torn last record is dropped and noted; anything
   * worse opens read-only, and nothing is ever reset.
   */
  static async reopen(
    entry: RunEntry,
    deps: SessionDeps,
    listener: SessionListener,
  ): Promise<RunSession> {
    const lastHeartbeat = await deps.store.readHeartbeat(entry.id);
    const journal = await deps.store.openRun(entry);
    const decoded = openJournal(await journal.readAll());
    const state = decoded.state;
    if (!state)
      throw new JournalStoreError('unknown', decoded.problem?.message ?? 'The journal is empty.');
    const session = new RunSession(entry, journal, state, decoded.lastSum, deps, listener);
    if (decoded.problem) {
      session.#readOnly = true;
      listener.onTrouble({ kind: 'read-only', message: decoded.problem.message });
    } else {
      if (decoded.torn > 0) await journal.dropFrom(decoded.facts.length + 1);
      await session.send({
        kind: 'session-opened',
        ...(lastHeartbeat ? { lastHeartbeat } : {}),
        tornRecords: decoded.torn,
      });
    }
    session.#publish(deps.readClocks());
    return session;
  }

  /**
   * Decides, stores and applies one request or observation, after all before
   * it. False when it was refused or could not be stored: then nothing of it happened.
   */
  send(input: Request | Observation): Promise<boolean> {
    const done = this.#queue.then(() => this.#handle(input));
    this.#queue = done.then(() => undefined);
    return done;
  }

  /** Once a second and at every wake-up. */
  tick(): Promise<boolean> {
    return this.send({ kind: 'tick' });
  }

  /** Proof of life in its own store; its failure is told by the next append. */
  async heartbeat(): Promise<void> {
    if (this.#readOnly || this.#state.status === 'closed') return;
    await this.#journal.writeHeartbeat(this.#deps.readClocks()).catch(() => undefined);
  }

  /** The facts so far, from the store, for the record and for export. */
  async facts(): Promise<readonly Fact[]> {
    return decodeJournal(await this.#journal.readAll()).facts;
  }

  /** Leaves the run to be reopened later; what happened is stored already. */
  async leave(): Promise<void> {
    await this.#queue;
    await this.#journal.close().catch(() => undefined);
  }

  async #handle(input: Request | Observation): Promise<boolean> {
    const now = this.#deps.readClocks();
    const done = !this.#readOnly && (await this.#perform(input, now));
    this.#publish(done ? this.#deps.readClocks() : now);
    return done;
  }

  async #perform(input: Request | Observation, now: Readings): Promise<boolean> {
    if (this.#unsaved.length > 0) await this.#trySaving(now);
    const result = perform(this.#state, input, now);
    if ('refusal' in result) {
      this.#listener.onRefusal(result.refusal);
      return false;
    }
    return result.facts.length === 0 || this.#keep(result.facts, result.state, now);
  }

  async #keep(facts: readonly Fact[], next: RunState, now: Readings): Promise<boolean> {
    const records = encodeRecords(facts, this.#lastSum);
    if (this.#unsaved.length > 0) {
      this.#hold(records, next);
      return true;
    }
    try {
      await this.#journal.append(records);
      this.#advance(records, next);
      return true;
    } catch (error) {
      this.#failed(error, now);
      return false;
    }
  }

  #advance(records: readonly JournalRecord[], next: RunState): void {
    const wasClosed = this.#state.status === 'closed';
    this.#state = next;
    this.#lastSum = records.at(-1)?.sum ?? this.#lastSum;
    if (next.status === 'closed' && !wasClosed)
      void this.#journal
        .describe({ ...this.entry, closed: true, closedAs: next.closedAs ?? 'completed' })
        .catch(() => undefined);
  }

  #hold(records: readonly JournalRecord[], next: RunState): void {
    this.#unsaved.push(...records);
    this.#advance(records, next);
  }

  /** The fact that could not be stored never happened; that storing failed did, and suspends the run. */
  #failed(error: unknown, now: Readings): void {
    const code = error instanceof JournalStoreError ? error.code : 'unknown';
    const message = error instanceof Error ? error.message : String(error);
    if (code === 'fenced') {
      this.#readOnly = true;
      this.#listener.onTrouble({
        kind: 'read-only',
        message: 'Another page took this run over. This one only shows it.',
      });
      return;
    }
    this.#listener.onTrouble({ kind: 'storage', message });
    const failed = perform(
      this.#state,
      { kind: 'storage-failed', text: `${code}: ${message}` },
      now,
    );
    if (!('refusal' in failed))
      this.#hold(encodeRecords(failed.facts, this.#lastSum), failed.state);
  }

  async #trySaving(now: Readings): Promise<void> {
    try {
      await this.#journal.append(this.#unsaved);
      this.#unsaved = [];
      this.#listener.onTrouble(undefined);
      const mended = perform(this.#state, { kind: 'storage-mended' }, now);
      if (!('refusal' in mended)) await this.#keep(mended.facts, mended.state, now);
    } catch {
      // Still down: the trouble is on the screen, and the next turn tries again.
    }
  }

  #publish(now: Readings): void {
    this.#listener.onView(view(this.#state, now));
  }
}
