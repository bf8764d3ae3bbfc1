import { decodeJournal, type StoredEntry } from '../journal/index.ts';
import { message, type Message } from '../messages/index.ts';
import { checkPlan, planShapeProblems, type Plan, type PlanProblem } from '../plan/index.ts';
import { apply, decide, namesNothing, type Fact, type RunState } from '../run/index.ts';
import { firstOf, tooManyRecords, tooManySteps } from './bounds.ts';

/** A run from a file: whole and safe to go on with, or what is wrong with it, in words. */
export type ReadRun =
  | {
      readonly facts: readonly Fact[];
      readonly entries: readonly StoredEntry[];
      readonly state: RunState;
    }
  | { readonly problems: readonly Message[] };

/**
 * Rules of good order that plans of earlier versions were not made by. None of them guards a hand
 * or a purge: a run that was begun then is taken up as it is.
 */
const NEWER: ReadonlySet<PlanProblem['rule']> = new Set(['cleaning-order', 'chilled']);

/** Rules about when and with how much at once; a run that has gone on keeps them by its own guards. */
const TIMES: ReadonlySet<PlanProblem['rule']> = new Set(['timetable', 'resources', 'rest-days']);

/**
 * Checks the entries of a run that comes from elsewhere, before anything of it
 * is written (I-28): entry by entry, its plan field by field and rule by
 * rule, each later change of the plan as the engine would have taken it, and
 * the plan as it stands at the end.
 */
export function readRun(stored: readonly unknown[]): ReadRun {
  const long = tooManyRecords(stored.length);
  if (long) return { problems: [long] };
  const { facts, entries, problem } = decodeJournal(stored);
  if (problem)
    return {
      problems: [message('shell.import.not-whole', { seq: problem.seq, problem: problem.message })],
    };
  const first = facts[0]?.body;
  if (first?.kind !== 'drafted') return { problems: [message('shell.import.no-plan')] };
  const big = tooManySteps((first.plan as Partial<Plan> | undefined)?.steps);
  if (big) return { problems: [big] };
  const shape = planShapeProblems(first.plan);
  if (shape.length > 0) return { problems: shape.map(planProblem) };
  const unsafe = said(() => checkPlan(first.plan), false);
  if (unsafe.length > 0) return { problems: firstOf(unsafe) };
  const read = replayed(facts);
  return 'problems' in read ? read : { ...read, entries };
}

/** What is wrong with the plan, in the names of its fields and rules. */
function planProblem(problem: string): Message {
  return message('shell.import.plan', { problem });
}

function told(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

function said(check: () => readonly PlanProblem[], amended: boolean): readonly Message[] {
  try {
    return check()
      .filter(({ rule }) => !NEWER.has(rule) && !(amended && TIMES.has(rule)))
      .map(({ say }) => planProblem(say));
  } catch (error) {
    return [planProblem(told(error))];
  }
}

type Replayed = Omit<Exclude<ReadRun, { problems: unknown }>, 'entries'>;

function replayed(facts: readonly Fact[]): Replayed | { readonly problems: readonly Message[] } {
  let state: RunState | null = null;
  try {
    for (const fact of facts) {
      const refused = state && (amendmentProblem(state, fact) ?? strangerProblem(state, fact));
      if (refused) return { problems: [refused] };
      state = apply(state, fact);
    }
  } catch (error) {
    return { problems: [planProblem(told(error))] };
  }
  if (state === null) return { problems: [message('engine.journal.empty')] };
  const { plan } = state;
  const unsafe = amendedOnly(facts, plan);
  return unsafe.length > 0 ? { problems: firstOf(unsafe) } : { facts, state };
}

function amendedOnly(facts: readonly Fact[], plan: Plan): readonly Message[] {
  const amended = facts.some(({ body }) => body.kind === 'plan-amended');
  if (!amended) return [];
  const shape = planShapeProblems(plan);
  return shape.length > 0 ? shape.map(planProblem) : said(() => checkPlan(plan), true);
}

/** A change of the plan that the engine would not have taken. */
function amendmentProblem(state: RunState, { body, at }: Fact): Message | null {
  if (body.kind !== 'plan-amended') return null;
  const { steps, startS, reason } = body;
  const big = tooManySteps(steps, state.plan.steps.length);
  if (big) return big;
  try {
    const decision = decide(state, { kind: 'amend-plan', steps, startS, reason }, at);
    return 'refusal' in decision ? decision.refusal.message : null;
  } catch {
    return message('shell.import.amendment');
  }
}

/** A word about a gate or a clock that this run does not have: no run writes it, and thousands would be kept. */
function strangerProblem(state: RunState, { body, seq }: Fact): Message | null {
  const name = namesNothing(state, body);
  return name === null ? null : message('shell.import.stranger', { seq, name });
}
