import {
  createRun,
  fold,
  perform,
  view,
  type TimerView,
  type Fact,
  type Observation,
  type Readings,
  type Request,
  type RunState,
  type RunView,
  type StepView,
} from '../../../../src/core/run/index.ts';
import type { Plan } from '../../../../src/core/plan/index.ts';

/** 2026-01-01T00:00:00Z, ms. */
export const NEW_YEAR_MS = 1_767_225_600_000;

/** When the app of these tests was built. */
export const BUILT_MS = NEW_YEAR_MS - 30 * 86_400_000;

/**
 * A tablet with a true clock nobody sees. Its wall clock can be set wrong, its
 * monotonic clock stands still in sleep and begins anew with each page.
 */
export class Tablet {
  trueS = 0;
  facts: Fact[];
  state: RunState;
  private wallOffsetS = 0;
  private monoS = 0;
  private page = 1;
  private heartbeat: Readings;

  constructor(plan: Plan) {
    const begun = createRun(plan, this.readings(), BUILT_MS);
    this.facts = [...begun.facts];
    this.state = begun.state;
    this.heartbeat = this.readings();
  }

  readings(): Readings {
    return {
      wallMs: NEW_YEAR_MS + (this.trueS + this.wallOffsetS) * 1000,
      monoMs: this.monoS * 1000,
      session: `page-${this.page}`,
    };
  }

  get view(): RunView {
    return view(this.state, this.readings());
  }

  /** Asks; the name of the refusal, or null. */
  tries(asked: Request | Observation): string | null {
    const done = perform(this.state, asked, this.readings());
    if ('refusal' in done) return done.refusal.code;
    this.state = done.state;
    this.facts.push(...done.facts);
    return null;
  }

  /** Asks, and expects it to be accepted. */
  does(...asked: readonly (Request | Observation)[]): void {
    for (const one of asked) {
      const refusal = this.tries(one);
      if (refusal !== null) throw new Error(`${one.kind} was refused: ${refusal}`);
    }
  }

  /** Awake: looks at every wake-up on the way, as a page does. */
  passes(seconds: number): void {
    const endS = this.trueS + seconds;
    for (let looks = 0; looks < 1000; looks += 1) {
      const wakeS = this.view.wakeInS;
      const nextS = Math.min(endS, this.trueS + (wakeS === null ? Infinity : wakeS + 0.001));
      this.advance(nextS - this.trueS, true);
      this.tries({ kind: 'tick' });
      if (nextS >= endS) break;
    }
    this.heartbeat = this.readings();
  }

  /** Awake, but nobody looks: a lost wake-up. */
  unseen(seconds: number): void {
    this.advance(seconds, true);
  }

  /** Asleep: the monotonic clock stands. */
  sleeps(seconds: number, look = true): void {
    this.advance(seconds, false);
    if (look) this.tries({ kind: 'tick' });
  }

  /** Somebody or the network sets the wall clock. */
  setsClock(byS: number, look = true): void {
    this.wallOffsetS += byS;
    if (look) this.tries({ kind: 'tick' });
  }

  /** The page dies now and is opened `seconds` later; records after `keep` are lost. */
  restarts(seconds: number, keep = this.facts.length, torn = 0): void {
    this.facts = this.facts.slice(0, keep);
    this.state = fold(this.facts);
    this.trueS += seconds;
    this.page += 1;
    this.monoS = 0;
    this.tries({ kind: 'session-opened', lastHeartbeat: this.heartbeat, tornRecords: torn });
    this.heartbeat = this.readings();
  }

  private advance(seconds: number, awake: boolean): void {
    this.trueS += seconds;
    if (awake) this.monoS += seconds;
  }

  step(id: string): StepView {
    const found = this.view.steps.find(({ step }) => step.id === id);
    if (!found) throw new Error(`no step ${id}`);
    return found;
  }

  clock(part: string): TimerView {
    const found = this.view.timers.find(({ id }) => id.includes(part));
    if (!found)
      throw new Error(`no clock ${part} among ${this.view.timers.map(({ id }) => id).join()}`);
    return found;
  }

  hasClock(part: string): boolean {
    return this.view.timers.some(({ id }) => id.includes(part));
  }

  says(step: string): void {
    const { step: plan, stage } = this.step(step);
    this.does({ kind: 'confirm', step, stage: plan.stages[stage]?.id ?? '' });
  }

  opens(gate: string, scopeKey = 'run'): void {
    this.does({ kind: 'answer-gate', gate, scopeKey, answer: 'yes' });
  }

  kinds(): string[] {
    return this.facts.map(({ body }) => body.kind);
  }
}

/** A run of the small plan in which the sink is cleaned and rests; begun with a word that the clock is right, or without. */
export function resting(plan: Plan, clockRight = true): Tablet {
  const tablet = new Tablet(plan);
  tablet.does({ kind: 'start-run', clockRight }, { kind: 'start-step', step: 'clean-sink' });
  tablet.passes(600);
  tablet.says('clean-sink');
  return tablet;
}

/** A run of the purge alone in which the burner is lit and glows. */
export function glowing(plan: Plan): Tablet {
  const tablet = new Tablet(plan);
  tablet.does({ kind: 'start-run', clockRight: true });
  tablet.opens('burner-clear', 'glow#1');
  tablet.opens('air');
  tablet.does({ kind: 'start-step', step: 'glow' });
  tablet.says('glow');
  tablet.passes(200);
  tablet.says('glow');
  return tablet;
}
