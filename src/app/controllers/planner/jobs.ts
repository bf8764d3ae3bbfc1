import {
  adviceSteps,
  surenessMessages,
  surenessOf,
  triageSteps,
  type Sureness,
  type AdviceList,
  type AdviceOptions,
  type Planned,
  type Triage,
  type TryingProgress,
} from '../../../core/advice/index.ts';
import { planCovers, type CoverPlan } from '../../../core/covering/index.ts';
import type { ChosenQuestion } from '../../../core/custom/index.ts';
import type { Kitchen } from '../../../core/kitchen/index.ts';
import type { Message } from '../../../core/messages/index.ts';
import {
  buildPlan,
  heatCharts,
  moveMessage,
  planForRecheck,
  pourCharts,
  pourMoves,
  ranOut,
  whatItChanges,
  type AnswerChange,
  type HeatChart,
  type Plan,
  type PlanOptions,
  type PourChart,
} from '../../../core/plan/index.ts';
import { outlookOf, type Outlook, type RunView } from '../../../core/run/index.ts';
import { buildUtensilPlan, type UtensilPlan } from '../../../core/utensils/index.ts';

/** How far a job is; undefined: somewhere. */
export type Progress = TryingProgress | undefined;

/**
 * One job in pieces: between two of them others have their turn, and it may be stopped. What goes
 * in and comes out is plain data, since it is copied from thread to thread.
 */
type Job<Input, Output> = (input: Input) => Generator<Progress, Output>;

/** A plan with its pictures, which are worked out beside it and never stored with it. */
type DrawnPlan = {
  readonly plan: Plan;
  readonly heat: readonly HeatChart[];
  readonly pours: readonly PourChart[];
};

export type Helpful = AdviceList & { readonly triage: Triage | undefined };

/** How sure an end is, and what is said of it. */
export type ToldSureness = { readonly sureness: Sureness; readonly told: readonly Message[] };

function* drawnPlan(of: { kitchen: Kitchen; options: PlanOptions }) {
  const plan = buildPlan(of.kitchen, of.options);
  yield undefined;
  return { plan, heat: heatCharts(plan), pours: pourCharts(plan) } satisfies DrawnPlan;
}

function* helpful(of: { before: Planned; options: AdviceOptions }): Generator<Progress, Helpful> {
  const list = yield* adviceSteps(of.before, of.options);
  const triage = triageSteps(of.before);
  for (;;) {
    yield undefined;
    const { done, value } = triage.next();
    if (done) return { ...list, triage: value };
  }
}

/** A job that is done in one go. */
function whole<Input, Output>(work: (input: Input) => Output): Job<Input, Output> {
  // oxlint-disable-next-line require-yield
  return function* job(input) {
    return work(input);
  };
}

/** All that takes longer than a moment, by name. */
export const JOBS = {
  plan: drawnPlan,
  recheck: whole(
    (of: { kitchen: Kitchen; fixtures: readonly string[]; what: string; options: PlanOptions }) =>
      planForRecheck(of.kitchen, of.fixtures, of.what, of.options),
  ),
  sureness: whole(({ plan, options }: { plan: Plan; options: PlanOptions }): ToldSureness => {
    const sureness = surenessOf(plan, options);
    return { sureness, told: surenessMessages(sureness, plan) };
  }),
  'pour-moves': whole((plan: Plan): readonly Message[] => pourMoves(plan).map(moveMessage)),
  'answer-changes': whole(
    (of: {
      kitchen: Kitchen;
      question: ChosenQuestion;
      options: PlanOptions;
    }): readonly AnswerChange[] => whatItChanges(of.kitchen, of.question, of.options),
  ),
  'ran-out': whole((of: { plan: Plan; step: string; share: number; begun: readonly string[] }) =>
    ranOut(of.plan, of.step, of.share, (id) => of.begun.includes(id)),
  ),
  outlook: whole((of: { view: RunView; nowMs: number }): Outlook | undefined =>
    outlookOf(of.view, of.nowMs),
  ),
  advice: helpful,
  covers: whole((plan: Plan): CoverPlan => planCovers(plan.kitchen, plan)),
  utensils: whole((kitchen: Kitchen): UtensilPlan => buildUtensilPlan(kitchen)),
} as const;

export type JobName = keyof typeof JOBS;
export type InputOf<K extends JobName> = Parameters<(typeof JOBS)[K]>[0];
export type OutputOf<K extends JobName> =
  ReturnType<(typeof JOBS)[K]> extends Generator<Progress, infer Output> ? Output : never;
