import type { StoredEntry, StoredRun } from '../../../core/journal/index.ts';
import type { Plan } from '../../../core/plan/index.ts';
import type { Refusal, RunView } from '../../../core/run/index.ts';
import type { LeaderSilence } from '../../../host/tab-lock/index.ts';
import { RunSession } from './run-session.ts';
import type { SessionDeps, SessionListener } from './session-ports.ts';
import type { Trouble } from './trouble.ts';
import { RunWatch } from './run-watch.ts';

export type OpenRunListener = {
  readonly onView: (view: RunView) => void;
  readonly onTrouble: (trouble: Trouble | undefined) => void;
  readonly onRefusal: (refusal: Refusal) => void;
  /** How the page that leads the run is; undefined: this page leads. */
  readonly onOtherLead: (silence: LeaderSilence | undefined) => void;
};

/** The run that is open in this page: led here by a session, or only shown by a watch; never both. */
export class OpenRun {
  #deps: SessionDeps;
  #listener: OpenRunListener;
  #session: RunSession | undefined;
  #shown: RunWatch | undefined;
  #opening: string | undefined;
  /** Settles when a run that is being opened is open, or could not be. */
  #change: Promise<void> = Promise.resolve();

  constructor(deps: SessionDeps, listener: OpenRunListener) {
    this.#deps = deps;
    this.#listener = listener;
  }

  /** The session that leads the run here; undefined: no run is open, or another page leads it. */
  get session(): RunSession | undefined {
    return this.#session;
  }

  get onlyShown(): boolean {
    return this.#shown !== undefined;
  }

  /** Begins a run of a plan. @throws JournalStoreError when it cannot be stored */
  async draft(plan: Plan, kitchen?: string): Promise<void> {
    await this.leave();
    this.#session = await RunSession.draft(plan, this.#deps, this.#forSession(), kitchen);
  }

  /** Opens a stored run as the one writer of it; asking twice opens once. @throws JournalStoreError */
  async reopen(entry: StoredRun): Promise<void> {
    if (this.#session?.entry.id === entry.id || this.#opening === entry.id) return;
    this.#opening = entry.id;
    const change = this.#take(entry);
    this.#change = change.catch(() => undefined);
    await change;
  }

  async #take(entry: StoredRun): Promise<void> {
    try {
      await this.leave();
      this.#session = await RunSession.reopen(entry, this.#deps, this.#forSession());
    } finally {
      this.#opening = undefined;
    }
  }

  /** The session that leads the run here, once it is open: a press in the moment of taking it over waits, and is not lost. */
  async led(): Promise<RunSession | undefined> {
    await this.#change;
    return this.#session;
  }

  /** Only shows a run that another page writes; asking twice is asking once. */
  async watch(entry: StoredRun): Promise<void> {
    if (this.#shown?.entry.id === entry.id) return;
    const left = this.#session;
    this.#session = undefined;
    this.#shown?.stop();
    this.#shown = new RunWatch(entry, this.#deps, {
      onView: this.#listener.onView,
      onSilence: this.#listener.onOtherLead,
      onUnreadable: (why) => this.#listener.onTrouble(why && { kind: 'unreadable', message: why }),
    });
    this.#listener.onOtherLead('unsure');
    void left?.leave();
    await this.#shown.look();
  }

  /** Another page is to lead: true when all that happened is on disk and this page has let go. */
  async handOver(): Promise<boolean> {
    await this.#session?.tick();
    if (this.#session?.hasUnsaved()) return false;
    await this.#session?.leave();
    return true;
  }

  async tick(): Promise<void> {
    if (this.#shown) await this.#shown.look();
    else await this.#session?.tick();
  }

  async heartbeat(): Promise<void> {
    await this.#session?.heartbeat();
  }

  /** All records of a run that is led here; undefined: only the store has them. */
  recordsOf(runId: string): readonly StoredEntry[] | undefined {
    return this.#session?.entry.id === runId ? this.#session.records() : undefined;
  }

  /** No run is open here any more. */
  async leave(): Promise<void> {
    const left = this.#session;
    this.#session = undefined;
    await left?.leave();
    this.#shown?.stop();
    this.#shown = undefined;
    this.#listener.onOtherLead(undefined);
  }

  #forSession(): SessionListener {
    return {
      onView: (view) => {
        if (!this.#shown) this.#listener.onView(view);
      },
      onTrouble: (trouble) => {
        this.#listener.onTrouble(trouble);
        if (trouble?.kind === 'taken-over' && this.#session) void this.watch(this.#session.entry);
      },
      onRefusal: this.#listener.onRefusal,
    };
  }
}
