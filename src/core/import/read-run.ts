import { decodeJournal, type StoredEntry } from '../journal/index.ts';
import { asWritten, message, type Message } from '../messages/index.ts';
import {
  checkPlan,
  planShapeProblems,
  LATER_RULES,
  type Plan,
  type PlanProblem,
} from '../plan/index.ts';
import { reportOf } from '../report/index.ts';
import {
  apply,
  decide,
  namesNothing,
  view,
  type Fact,
  type FactBody,
  type RunState,
} from '../run/index.ts';
import { firstOf, tooManyRecords, tooManySteps } from './bounds.ts';
import { factShapeProblems } from './fact-shape.ts';

/** A run from a file: whole and safe to go on with, or what is wrong with it, in words. */
export type ReadRun =
  | {
      readonly facts: readonly Fact[];
      readonly entries: readonly StoredEntry[];
      readonly state: RunState;
    }
  | { readonly problems: readonly Message[] };

/** Rules about when and with how much at once; a run that has gone on keeps them by its own guards. */
const TIMES: ReadonlySet<PlanProblem['rule']> = new Set(['timetable', 'resources', 'rest-days']);
/** Rules that plans of earlier years did not know: a run of such a plan is a record that is kept, not judged. */
const LATER: ReadonlySet<PlanProblem['rule']> = new Set(LATER_RULES);

/**
 * Checks the entries of a run that comes from elsewhere, before anything of it
 * is written (I-28): entry by entry, each fact field by field, its plan field
 * by field and rule by rule, each later change of the plan as the engine would
 * have taken it, the plan as it stands at the end, and that the run can be
 * shown and told: one that cannot would stand in every page's way, and could
 * neither be closed nor deleted.
 * @param say the sentences of the reader, each of which a reason in the run must be able to make
 */
export function readRun(stored: readonly unknown[], say?: (reason: Message) => string): ReadRun {
  const long = tooManyRecords(stored.length);
  if (long) return { problems: [long] };
  const { facts, entries, problem } = decodeJournal(stored);
  if (problem) return { problems: [notWhole(problem.seq, problem.message)] };
  const first = facts[0]?.body;
  if (first?.kind !== 'drafted') return { problems: [message('shell.import.no-plan')] };
  const big = tooManySteps((first.plan as Partial<Plan> | undefined)?.steps);
  if (big) return { problems: [big] };
  const shapeless = firstShapeless(facts);
  if (shapeless.length > 0) return { problems: shapeless };
  const shape = planShapeProblems(first.plan);
  if (shape.length > 0) return { problems: shape.map(planProblem) };
  const unsafe = said(() => checkPlan(first.plan), false);
  if (unsafe.length > 0) return { problems: firstOf(unsafe) };
  const read = replayed(facts);
  if ('problems' in read) return read;
  const silent = say && silentProblem(facts, say);
  return silent ? { problems: [silent] } : { ...read, entries };
}

function notWhole(seq: number, problem: Message): Message {
  return message('shell.import.not-whole', { seq, problem });
}

/** What is wrong with the first fact that is none, in the names of its fields. */
function firstShapeless(facts: readonly Fact[]): readonly Message[] {
  for (const fact of facts) {
    const wrong = factShapeProblems(fact);
    if (wrong.length > 0) return wrong.map((what) => notWhole(fact.seq, asWritten(`${what}.`)));
  }
  return [];
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
      .filter(({ rule }) => !LATER.has(rule) && !(amended && TIMES.has(rule)))
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
  const amended = amendedOnly(facts, state.plan);
  if (amended.length > 0) return { problems: firstOf(amended) };
  const untold = untoldProblem(facts, state);
  return untold ? { problems: [untold] } : { facts, state };
}

/** Why no page could show the run as it stands, or no record tell it. */
function untoldProblem(facts: readonly Fact[], state: RunState): Message | null {
  try {
    view(state, state.clock.lastAt);
    reportOf(facts);
    return null;
  } catch (error) {
    return notWhole(state.seq, asWritten(told(error)));
  }
}

function amendedOnly(facts: readonly Fact[], plan: Plan): readonly Message[] {
  const amended = facts.some(({ body }) => body.kind === 'plan-amended');
  if (!amended) return [];
  const shape = planShapeProblems(plan);
  return shape.length > 0 ? shape.map(planProblem) : said(() => checkPlan(plan), true);
}

/** A reason whose sentence cannot be made of what fills it. */
function silentProblem(facts: readonly Fact[], say: (reason: Message) => string): Message | null {
  for (const { seq, body } of facts) {
    const reasons = [
      'reason' in body && typeof body.reason === 'object' ? body.reason : undefined,
      'renew' in body ? body.renew : undefined,
    ];
    try {
      for (const reason of reasons) if (reason) say(reason);
    } catch (error) {
      return notWhole(seq, asWritten([body.kind, told(error)].join(': ')));
    }
  }
  return null;
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

/** A word about a gate, a step or a clock that this run does not have: no run writes it, and thousands would be kept. */
function strangerProblem(state: RunState, { body, seq }: Fact): Message | null {
  const name = namesNothing(state, body) ?? noneSuch(state, body);
  return name === null ? null : message('shell.import.stranger', { seq, name });
}

/** The step or the clock that a fact names and the run has not; what every object has ("constructor") is none. */
function noneSuch({ steps, timers, coolings }: RunState, body: FactBody): string | null {
  if ('step' in body && body.step !== null && !Object.hasOwn(steps, body.step)) return body.step;
  // A fault may tell of a clock that is gone.
  if (!('timer' in body) || body.kind === 'fault-raised') return null;
  const { timer } = body;
  return Object.hasOwn(timers, timer) || coolings.some(({ id }) => id === timer) ? null : timer;
}
