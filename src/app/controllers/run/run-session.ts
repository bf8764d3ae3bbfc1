import {
  encodeEntries,
  openJournal,
  JournalStoreError,
  type StoredEntry,
  type StoredRun,
  type RunJournal,
} from '../../../core/journal/index.ts';
import type { Plan } from '../../../core/plan/index.ts';
import {
  createRun,
  perform,
  view,
  type Fact,
  type Observation,
  type Readings,
  type Request,
  type RunState,
} from '../../../core/run/index.ts';
import { message } from '../../../core/messages/index.ts';
import { sayPlain as say } from '../../context/language.ts';
import { reasonOf, ToldError } from '../failures/reason.ts';
import type { SessionDeps, SessionListener } from './session-ports.ts';
import { saveAgain } from './write-anew.ts';

const nothing = (): void => undefined;

/**
 * Keeps one open run: turns requests into facts, makes them durable, and only then shows their
 * effect. One queue for everything, so that facts are decided on the state they are applied to.
 */
export class RunSession {
  readonly entry: StoredRun;
  #deps: SessionDeps;
  #listener: SessionListener;
  #journal: RunJournal;
  #state: RunState;
  /** All records so far, stored or not: what storage loses can still leave as a file. */
  #records: StoredEntry[];
  /** Facts that happened but could not be stored yet; the run is suspended meanwhile. */
  #unsaved: StoredEntry[] = [];
  #readOnly = false;
  /** Why the store failed last. */
  #why: unknown;
  /** A turn of the clock that waits, and after which nobody pressed. */
  #turn: Promise<boolean> | undefined;
  /** What failed again and again is one line of the record. */
  #notedFaults = new Set<string>();
  #queue: Promise<void> = Promise.resolve();

  private constructor(
    entry: StoredRun,
    journal: RunJournal,
    state: RunState,
    records: readonly StoredEntry[],
    deps: SessionDeps,
    listener: SessionListener,
  ) {
    [this.entry, this.#journal, this.#state] = [entry, journal, state];
    [this.#deps, this.#listener, this.#records] = [deps, listener, [...records]];
  }

  /** Drafts a new run of a plan; `kitchen`: its id, where it is kept here. @throws JournalStoreError when it cannot be stored */
  static async draft(
    plan: Plan,
    deps: SessionDeps,
    listener: SessionListener,
    kitchen?: string,
  ): Promise<RunSession> {
    const now = deps.readClocks();
    const entry: StoredRun = {
      id: deps.newId(),
      name: plan.kitchen.name,
      ...(kitchen !== undefined && { kitchen }),
      openedWallMs: now.wallMs,
      closed: false,
    };
    const { facts, state } = createRun(plan, now, deps.builtWallMs, undefined, deps.appVersion);
    const records = encodeEntries(facts);
    const journal = await deps.store.openRun(entry);
    await journal.append(records);
    const session = new RunSession(entry, journal, state, records, deps, listener);
    await session.heartbeat();
    session.#publish(now);
    return session;
  }

  /**
   * Opens a stored run. A torn last record is dropped and noted; anything
   * worse opens read-only, and nothing is ever reset.
   */
  static async reopen(
    entry: StoredRun,
    deps: SessionDeps,
    listener: SessionListener,
  ): Promise<RunSession> {
    const lastHeartbeat = await deps.store.readHeartbeat(entry.id);
    const journal = await deps.store.openRun(entry);
    const decoded = openJournal(await journal.readAll());
    const state = decoded.state;
    if (!state) throw new ToldError(decoded.problem?.message ?? message('engine.journal.empty'));
    // As they are stored: what goes on follows the sum of the last, whatever version wrote it.
    const session = new RunSession(entry, journal, state, decoded.entries, deps, listener);
    if (decoded.problem) {
      session.#readOnly = true;
      listener.onTrouble({ kind: 'read-only', message: decoded.problem.message });
    } else {
      if (decoded.torn > 0) await journal.dropFrom(decoded.facts.length + 1);
      const done = await session.send({
        kind: 'session-opened',
        ...(lastHeartbeat ? { lastHeartbeat } : {}),
        tornRecords: decoded.torn,
      });
      // A run that this page has not opened takes no press, not even a stop: it is opened anew.
      if (!done && session.#why !== undefined && !session.#readOnly) throw session.#why;
      await session.heartbeat();
    }
    // The last fact was written, the row of the list was not.
    if (state.status === 'closed' && !entry.closed) session.#describeClosed(state);
    session.#publish(deps.readClocks());
    return session;
  }

  /**
   * Decides, stores and applies one request or observation, after all before
   * it. False when it was refused or could not be stored: then nothing of it happened.
   */
  send(input: Request | Observation): Promise<boolean> {
    if (input.kind !== 'tick') this.#turn = undefined;
    const done = this.#queue.then(() => this.#handle(input));
    // Nothing that happens to one request may end the queue: what comes after it may be a stop.
    this.#queue = done.then(nothing, nothing);
    return done;
  }

  /** Once a second and at every wake-up; one waits at most, so that no press is behind many of a store that does not answer. */
  tick(): Promise<boolean> {
    return (this.#turn ??= this.send({ kind: 'tick' }));
  }

  /** Proof of life in its own store; its failure is told by the next append. */
  async heartbeat(): Promise<void> {
    if (this.#readOnly || this.#state.status === 'closed') return;
    // By this number a journal whose end was lost is noticed when it is opened again.
    const seq = (this.#records.at(-1)?.seq ?? 0) - this.#unsaved.length;
    const beat = { ...this.#deps.readClocks(), seq };
    await this.#journal.writeHeartbeat(beat).catch(nothing);
  }

  /** All that happened, for export, also what could not be stored; undefined: it was altered, and only the store has all. */
  records(): readonly StoredEntry[] | undefined {
    return this.#readOnly ? undefined : [...this.#records];
  }

  hasUnsaved(): boolean {
    return this.#unsaved.length > 0;
  }

  /** Leaves the run to be reopened later; what happened is stored already. */
  async leave(): Promise<void> {
    await this.#queue;
    await this.#journal.close();
  }

  async #handle(input: Request | Observation): Promise<boolean> {
    const now = this.#deps.readClocks();
    // No press waits for a store that failed: a turn tries again, unless a press came after it.
    const saves = input.kind === 'tick' && this.#turn !== undefined && this.#unsaved.length > 0;
    if (input.kind === 'tick') this.#turn = undefined;
    let done = false;
    try {
      if (saves && !this.#readOnly) await this.#trySaving(now);
      done = !this.#readOnly && (await this.#perform(input, now));
    } catch (error) {
      await this.#broke(error, now);
    }
    try {
      this.#publish(done ? this.#deps.readClocks() : now);
    } catch (error) {
      await this.#broke(error, now);
    }
    return done;
  }

  /** A mistake of the app: told on the screen and in the record, once for each; the run goes on. */
  async #broke(error: unknown, now: Readings): Promise<void> {
    const why = reasonOf(error);
    try {
      this.#listener.onTrouble({ kind: 'failed', message: why });
      await this.#noteFault(say(message('shell.failed.note', { why: say(why) })), now);
    } catch {
      // Telling failed too: the next turn of the clock finds the same and tells it again.
    }
  }

  async #noteFault(text: string, now: Readings): Promise<void> {
    if (this.#readOnly || this.#notedFaults.has(text)) return;
    this.#notedFaults.add(text);
    await this.#append({ kind: 'note', text }, now);
  }

  async #perform(input: Request | Observation, now: Readings): Promise<boolean> {
    const result = perform(this.#state, input, now);
    if ('refusal' in result) {
      // What the device tells a second time is no news for a person.
      if (!input.kind.startsWith('alarm-')) this.#listener.onRefusal(result.refusal);
      return false;
    }
    const { facts, state } = result;
    if (facts.length === 0 || (await this.#keep(facts, state, now))) return true;
    // A fault is taken whether or not there is room to write it: the clock of a burn waits for no disk.
    if (input.kind !== 'report-fault' || this.#unsaved.length === 0) return false;
    return this.#append(input, now);
  }

  async #keep(facts: readonly Fact[], next: RunState, now: Readings): Promise<boolean> {
    const records = encodeEntries(facts, this.#records.at(-1)?.sum);
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

  #advance(records: readonly StoredEntry[], next: RunState): void {
    const wasClosed = this.#state.status === 'closed';
    this.#state = next;
    this.#records.push(...records);
    if (next.status === 'closed' && !wasClosed) this.#describeClosed(next);
  }

  #describeClosed({ closedAs }: RunState): void {
    this.#journal
      .describe({ ...this.entry, closed: true, closedAs: closedAs ?? 'completed' })
      .catch((error: unknown) =>
        this.#listener.onTrouble({ kind: 'storage', message: reasonOf(error) }),
      );
  }

  #hold(records: readonly StoredEntry[], next: RunState): void {
    this.#unsaved.push(...records);
    this.#advance(records, next);
  }

  /** The fact that could not be stored never happened; that storing failed did, and suspends the run. */
  #failed(error: unknown, now: Readings): void {
    this.#tell(error);
    if (this.#readOnly) return;
    const failed = perform(
      this.#state,
      { kind: 'storage-failed', text: say(reasonOf(error)) },
      now,
    );
    if (!('refusal' in failed))
      this.#hold(encodeEntries(failed.facts, this.#records.at(-1)?.sum), failed.state);
  }

  /** A writer that was replaced gives up; any other trouble of the store may pass. */
  #tell(error: unknown): void {
    this.#why = error;
    if (error instanceof JournalStoreError && error.code === 'fenced') {
      this.#readOnly = true;
      this.#listener.onTrouble({ kind: 'taken-over', message: message('shell.taken-over') });
    } else this.#listener.onTrouble({ kind: 'storage', message: reasonOf(error) });
  }

  async #trySaving(now: Readings): Promise<void> {
    const before = this.#journal;
    try {
      const { store } = this.#deps;
      this.#journal = await saveAgain(store, this.entry, before, this.#unsaved, this.#records);
    } catch (error) {
      // Still down: why is on the screen, and the next turn tries again.
      return this.#tell(error);
    }
    this.#unsaved = [];
    this.#listener.onTrouble(undefined);
    if (this.#state.status === 'closed') this.#describeClosed(this.#state);
    await this.#append({ kind: 'storage-mended' }, now);
    if (this.#journal !== before)
      await this.#append({ kind: 'note', text: say(message('run.written-anew')) }, now);
  }

  async #append(input: Request | Observation, now: Readings): Promise<boolean> {
    const result = perform(this.#state, input, now);
    return !('refusal' in result) && this.#keep(result.facts, result.state, now);
  }

  #publish(now: Readings): void {
    this.#listener.onView(view(this.#state, now));
  }
}
