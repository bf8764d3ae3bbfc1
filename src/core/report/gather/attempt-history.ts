import { asWritten, message, type Message } from '../../messages/index.ts';
import type { Step } from '../../plan/index.ts';
import { NO_REASON, type Fact, type RunState } from '../../run/index.ts';
import { workerName } from './worker-name.ts';
import { holdsOf, noteWord, type Said } from './holds.ts';
import type { AttemptReport, HoldReport, StageReport, StepReport } from '../model/report.ts';

type Loose<T> = { -readonly [K in keyof T]: T[K] };
type Attempt = Omit<Loose<AttemptReport>, 'stages' | 'by'> & {
  stages: Loose<StageReport>[];
  /** Numbers in the household. */
  by: readonly number[];
};
type StepState = RunState['steps'][string];

/**
 * Every attempt at every step, gathered while the facts are folded. It looks
 * at what each fact changed and not only at what it says: a doubt restarts a
 * rest without a fact of its own for that rest.
 */
export class AttemptHistory {
  #attempts = new Map<string, Attempt[]>();
  /** As they were before the last word that something was used. */
  #beforeDoubt = new Map<string, Attempt[]>();
  readonly #said: Said = new Map();

  follow(before: RunState | null, after: RunState, fact: Fact): void {
    if (fact.body.kind === 'recheck-reported') this.#beforeDoubt = copied(this.#attempts);
    if (fact.body.kind === 'recheck-withdrawn') {
      // What it began never was; the word itself stays among what happened.
      this.#attempts = this.#beforeDoubt;
      return;
    }
    if (before) noteWord(this.#said, before, after, fact);
    for (const step of after.plan.steps) {
      const was = before?.steps[step.id];
      const is = after.steps[step.id];
      if (is && was !== is) this.#followStep(before, step, was, is, fact);
    }
  }

  #followStep(
    before: RunState | null,
    step: Step,
    was: StepState | undefined,
    is: StepState,
    fact: Fact,
  ): void {
    const attempts = this.#attempts.get(step.id) ?? [];
    this.#attempts.set(step.id, attempts);
    const last = attempts.at(-1);
    if (last === undefined || last.number !== is.attempt) {
      if (last) this.#replace(before, step, last, fact);
      attempts.push(freshAttempt(is.attempt));
    }
    const attempt = attempts.at(-1);
    if (!attempt) return;
    const same = was?.attempt === is.attempt ? was : undefined;
    if ('person' in fact.body && fact.body.step === step.id)
      attempt.by = [...new Set([...attempt.by, fact.body.person])];
    const left = same && (same.stage !== is.stage || same.round !== is.round);
    if (left || is.status !== 'active') this.#endStage(before, step, attempt, fact, is.reason);
    if (is.status === 'active') enter(step, attempt, is, fact);
    attempt.madeSafe = is.safe;
    if (is.status === 'settled' && attempt.outcome !== is.outcome) {
      attempt.outcome = is.outcome ?? 'not-run';
      attempt.reason = is.reason;
      attempt.endedWallMs = fact.at.wallMs;
    }
  }

  #replace(before: RunState | null, step: Step, attempt: Attempt, fact: Fact): void {
    const because = reasonIn(fact);
    this.#endStage(before, step, attempt, fact, because);
    attempt.replacedBecause = because;
    if (attempt.outcome !== 'open' && attempt.outcome !== 'waiting') return;
    attempt.outcome = 'void';
    attempt.reason = because;
    attempt.endedWallMs = attempt.startedWallMs === null ? null : fact.at.wallMs;
  }

  #endStage(
    before: RunState | null,
    step: Step,
    attempt: Attempt,
    { at, body }: Fact,
    reason: Message,
  ): void {
    const stage = attempt.stages.at(-1);
    if (!stage || stage.toWallMs !== null || !before) return;
    stage.holds = holdsOf(before, step.id, attempt.number, stage.id, at, true, this.#said);
    stage.toWallMs = at.wallMs;
    if (body.kind === 'stage-ended') {
      stage.endedBy = body.by;
      if (body.by === 'person') stage.said = sayOf(step, stage.id);
    } else stage.brokeOff = body.kind === 'stage-restarted' ? body.reason : reason;
  }

  /** The steps of the plan, with what is still open as it stands at the last fact. */
  steps(state: RunState): readonly StepReport[] {
    return state.plan.steps.map((step) => ({
      id: step.id,
      kind: step.kind,
      phase: step.phase,
      title: step.title,
      fixture: step.fixture ?? null,
      attempts: (this.#attempts.get(step.id) ?? []).map((attempt) => ({
        ...attempt,
        by: attempt.by.flatMap((person) => workerName(state.plan.kitchen.household, person)),
        stages: attempt.stages.map((stage) => this.#asItStands(state, step.id, attempt, stage)),
      })),
      ...(step.work.on === 'utensils' && { items: step.work.items }),
    }));
  }

  #asItStands(state: RunState, step: string, attempt: Attempt, stage: StageReport): StageReport {
    if (stage.toWallMs !== null) return { ...stage };
    const { lastAt } = state.clock;
    const holds = holdsOf(state, step, attempt.number, stage.id, lastAt, false, this.#said);
    return { ...stage, holds };
  }
}

function copied(attempts: ReadonlyMap<string, readonly Attempt[]>): Map<string, Attempt[]> {
  const copies = [...attempts].map(([step, all]): [string, Attempt[]] => [
    step,
    all.map((one) => ({ ...one, stages: one.stages.map((stage) => ({ ...stage })) })),
  ]);
  return new Map(copies);
}

function freshAttempt(number: number): Attempt {
  return {
    number,
    startedWallMs: null,
    endedWallMs: null,
    outcome: 'waiting',
    reason: NO_REASON,
    madeSafe: false,
    by: [],
    stages: [],
    replacedBecause: null,
  };
}

function enter(step: Step, attempt: Attempt, is: StepState, { at }: Fact): void {
  if (attempt.startedWallMs === null) attempt.startedWallMs = at.wallMs;
  attempt.outcome = 'open';
  const last = attempt.stages.at(-1);
  const stage = step.stages[is.stage];
  if (!stage || (last && last.toWallMs === null)) return;
  attempt.stages.push({
    id: stage.id,
    title: stage.title,
    fromWallMs: at.wallMs,
    toWallMs: null,
    said: null,
    endedBy: null,
    brokeOff: null,
    holds: [],
  });
}

/** The words of the action that ends a stage. */
function sayOf({ stages }: Step, id: string): Message | null {
  return stages.find((stage) => stage.id === id)?.say ?? null;
}

/** Why the fact changed what it changed, in the words of whoever said it. */
function reasonIn({ body }: Fact): Message {
  if (body.kind === 'recheck-reported')
    return body.text === '' ? message('engine.because.doubt') : asWritten(body.text);
  if (!('reason' in body)) return NO_REASON;
  return typeof body.reason === 'string' ? asWritten(body.reason) : body.reason;
}

/** The attempt that stands; absent only for a step that the state does not know. */
export function standing(step: StepReport): AttemptReport | undefined {
  return step.attempts.at(-1);
}

/** Minimum times of the standing attempt that were not broken off. */
export function standingHolds(step: StepReport): readonly HoldReport[] {
  const stages = standing(step)?.stages ?? [];
  return stages.filter((stage) => stage.brokeOff === null).flatMap((stage) => stage.holds);
}
