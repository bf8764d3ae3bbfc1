import { encodeEntries, openJournal } from '../../src/core/journal/index.ts';
import type { Plan } from '../../src/core/plan/index.ts';
import {
  createRun,
  fold,
  perform,
  view,
  type Fact,
  type Observation,
  type Readings,
  type Request,
  type RunState,
  type RunView,
} from '../../src/core/run/index.ts';
import { Truth } from './truth.ts';

/** What is asked; some words are not known to every build of the engine. */
export type Asked = Request | Observation | { readonly kind: 'withdraw-clock-answer' };

/** A minute of clock error that nobody minds, s. */
const MINUTE_S = 60;

export type Done = { readonly refusal: string | null; readonly facts: readonly Fact[] };

/**
 * The tablet in a world with a true clock that it does not see: its wall clock
 * may be set wrong, its monotonic clock stands still in sleep and begins anew
 * with each page, its page may die between any two facts.
 */
export class World {
  trueS = 0;
  facts: Fact[];
  state: RunState;
  readonly story: string[] = [];
  readonly truth: Truth;
  /** Called with each fact as it comes about, and after each look. */
  watch: (world: World, fact: Fact | null) => void = () => undefined;
  /** Called when the engine throws. */
  threw: (asked: Asked, error: unknown) => void = () => undefined;
  /** True time at which this page was opened, s. */
  pageSinceS = 0;
  private seen: { state: RunState; trueS: number; offsetS: number; view: RunView } | null = null;
  private monoS = 0;
  private deaths = 0;
  private page = 1;
  private heartbeat: Readings;

  constructor(
    readonly startMs: number,
    plan: Plan,
    /** Wall clock less true time, s. */
    public offsetS: number,
    builtMs: number,
  ) {
    const begun = createRun(plan, this.readings(), builtMs);
    this.facts = [...begun.facts];
    this.state = begun.state;
    this.truth = new Truth(plan, offsetS);
    this.heartbeat = this.readings();
  }

  readings(): Readings {
    return {
      wallMs: this.startMs + (this.trueS + this.offsetS) * 1000,
      monoMs: this.monoS * 1000,
      session: `page-${this.page}`,
    };
  }

  get trueMs(): number {
    return this.startMs + this.trueS * 1000;
  }

  /** What the screen shows now; worked out once for each state and moment. */
  get view(): RunView {
    const { state, trueS, offsetS } = this;
    const { seen } = this;
    if (seen?.state === state && seen.trueS === trueS && seen.offsetS === offsetS) return seen.view;
    const fresh = view(state, this.readings());
    this.seen = { state, trueS, offsetS, view: fresh };
    return fresh;
  }

  tells(line: string): void {
    const hours = Math.floor(this.trueS / 3600);
    const minutes = String(Math.floor((this.trueS % 3600) / 60)).padStart(2, '0');
    const seconds = String(Math.floor(this.trueS % 60)).padStart(2, '0');
    const off = Math.abs(this.offsetS) < 1 ? '' : ` (clock ${Math.round(this.offsetS)} s off)`;
    this.story.push(`${hours}:${minutes}:${seconds}${off} ${line}`);
  }

  /** Asks; facts become true one after the other before the eyes of the oracle. */
  asks(asked: Asked, dieAfter = Infinity): Done {
    let done: ReturnType<typeof perform>;
    try {
      done = perform(this.state, asked as Request, this.readings());
    } catch (error) {
      // A word that this build of the engine does not know is as good as refused.
      if (asked.kind !== 'withdraw-clock-answer') this.threw(asked, error);
      return { refusal: 'threw', facts: [] };
    }
    if ('refusal' in done) {
      if (asked.kind !== 'tick') this.tells(`${wordsOf(asked)} — refused: ${done.refusal.code}`);
      return { refusal: done.refusal.code, facts: [] };
    }
    const kept = done.facts.slice(0, dieAfter);
    if (asked.kind !== 'tick') this.tells(wordsOf(asked));
    const before = this.facts;
    this.facts = [...before, ...kept];
    if (kept.length === done.facts.length) this.state = done.state;
    for (const fact of kept) {
      this.tells(`    ${factWords(fact)}`);
      this.watch(this, fact);
    }
    if (kept.length < done.facts.length) this.dies(MINUTE_S / 2, 0, false);
    return { refusal: null, facts: kept };
  }

  /** Awake: looks at every wake-up on the way, as a page does. */
  passes(seconds: number): void {
    const endS = this.trueS + seconds;
    for (let looks = 0; looks < 40; looks += 1) {
      const wakeS = this.view.wakeInS ?? Infinity;
      const nextS = looks === 39 ? endS : Math.min(endS, this.trueS + Math.max(0, wakeS) + 0.001);
      this.monoS += nextS - this.trueS;
      this.trueS = nextS;
      this.asks({ kind: 'tick' });
      this.watch(this, null);
      if (nextS >= endS) break;
    }
    this.heartbeat = this.readings();
  }

  /** Asleep: the monotonic clock stands. */
  sleeps(seconds: number): void {
    this.tells(`the tablet sleeps ${Math.round(seconds)} s`);
    this.trueS += seconds;
    this.truth.slept(seconds);
    this.asks({ kind: 'tick' });
    this.watch(this, null);
  }

  setsClock(toOffsetS: number, how: string): void {
    const byS = toOffsetS - this.offsetS;
    this.offsetS = toOffsetS;
    this.truth.clockMoved(byS);
    this.tells(how);
    this.asks({ kind: 'tick' });
    this.watch(this, null);
  }

  /**
   * The page dies and is opened again `seconds` later, perhaps with the clock
   * moved meanwhile, perhaps with a record torn in the middle.
   */
  dies(seconds: number, clockBy: number, torn: boolean): void {
    this.tells(`the page dies; ${Math.round(seconds)} s later it is opened again`);
    const tornRecords = this.reads(torn);
    this.trueS += seconds;
    this.offsetS += clockBy;
    this.truth.died(seconds, clockBy);
    this.page += 1;
    this.monoS = 0;
    this.pageSinceS = this.trueS;
    this.asks({
      kind: 'session-opened',
      lastHeartbeat: this.heartbeat,
      tornRecords,
    });
    this.heartbeat = this.readings();
    this.watch(this, null);
  }

  /** Takes the run up from what is on the disk; the first deaths of a run go through the journal. */
  private reads(torn: boolean): number {
    this.deaths += 1;
    if (this.deaths > 1 && !torn) {
      this.state = fold(this.facts);
      return 0;
    }
    const records: unknown[] = encodeEntries(this.facts).map((one) => JSON.stringify(one));
    if (torn) records.push(String(records.at(-1)).slice(0, 40));
    const opened = openJournal(records);
    if (opened.problem || !opened.state) throw new Error(`journal: ${opened.problem?.message}`);
    this.state = opened.state;
    return opened.torn;
  }

  /** Another page of the same run speaks up; it was overtaken, and nothing it asks may count. */
  overtakenPageSpeaks(): boolean {
    if (this.page === 1) return true;
    const old: Readings = { ...this.readings(), session: `page-${this.page - 1}` };
    const done = perform(this.state, { kind: 'pause' }, old);
    return 'refusal' in done;
  }
}

function wordsOf(asked: Asked): string {
  const { kind, ...rest } = asked;
  const more = JSON.stringify(rest, (key, value: unknown) =>
    key === 'steps' || key === 'startS' ? '…' : value,
  );
  return `asks ${kind} ${more === '{}' ? '' : more}`;
}

function factWords({ body }: Fact): string {
  const { kind, ...rest } = body as unknown as Record<string, unknown>;
  const told = Object.entries(rest)
    .filter(([key]) => !['plan', 'steps', 'startS', 'lastHeartbeat'].includes(key))
    .map(
      ([key, value]) =>
        `${key}=${typeof value === 'object' ? JSON.stringify(value) : String(value)}`,
    );
  return `· ${String(kind)} ${told.join(' ')}`;
}
