import { LIMITS } from '../../kitchen/index.ts';
import { buildPlan, type Plan } from '../../plan/index.ts';
import { ScheduleRefusal } from '../../schedule/index.ts';
import { OutOfRangeError } from '../../units/index.ts';
import { withChange, type Change, type ChangeKind, type Situation } from '../changes/change.ts';
import { answerChanges, coverChanges } from '../changes/said.ts';
import { lastHotChanges, startChanges } from '../changes/times.ts';
import { kettleChanges, stoveKettleChanges, urnChanges } from '../changes/water.ts';
import { compareSavings, helps, sameEnd, savingOf, type Saving } from './saving.ts';

/** A change with what it saves. */
export type Advice = { readonly change: Change; readonly saving: Saving };

/** A situation with its plan. */
export type Planned = { readonly situation: Situation; readonly plan: Plan };

/** What a household would call the vessels that come to its kitchen. */
type VesselNames = { readonly [K in 'kettle' | 'stove-kettle' | 'urn']: string };

export type AdviceOptions = {
  readonly names: VesselNames;
  /** Before this nobody can begin any more, ms since 1970-01-01 UTC. Absent: the planned beginning is the earliest. */
  readonly earliestWallMs?: number;
};

/** What of all advice is told: every change that helps, the best first, and what was tried in vain. */
export type AdviceList = {
  readonly advice: readonly Advice[];
  /** Kinds of change of which none saved anything. */
  readonly inVain: readonly ChangeKind[];
};

/** What is tried: each is one plan. The same for the same situation, in the same order. */
export function changesToTry(
  { situation, plan }: Planned,
  { names, earliestWallMs = situation.options.startWallMs ?? 0 }: AdviceOptions,
): readonly Change[] {
  const { kitchen } = situation;
  const { people } = kitchen.household;
  return [
    ...kettleChanges(kitchen, names.kettle),
    ...stoveKettleChanges(kitchen, plan, names['stove-kettle']),
    ...urnChanges(kitchen, names.urn),
    ...(people < LIMITS.people.most ? [{ kind: 'people' as const, people: people + 1 }] : []),
    ...startChanges(situation, plan, earliestWallMs),
    ...lastHotChanges(situation),
    ...answerChanges(plan),
    ...coverChanges(kitchen, plan),
  ];
}

/** A plan with a change; none where no model or no timetable bears it. */
function plannedWith(situation: Situation, change: Change): Planned | undefined {
  const after = withChange(situation, change);
  try {
    return { situation: after, plan: buildPlan(after.kitchen, after.options) };
  } catch (refusal) {
    if (refusal instanceof OutOfRangeError || refusal instanceof ScheduleRefusal) return undefined;
    throw refusal;
  }
}

/** One change, by planning again with it. Takes as long as a plan. */
function tried(before: Planned, change: Change): Advice | undefined {
  const after = plannedWith(before.situation, change);
  return after && { change, saving: savingOf(before, after) };
}

/** An earlier beginning that ends no sooner than a later one is no advice. */
function isOutdone({ change, saving }: Advice, others: readonly Advice[]): boolean {
  if (change.kind !== 'start') return false;
  return others.some(
    (one) =>
      one.change.kind === 'start' &&
      one.change.startWallMs > change.startWallMs &&
      (sameEnd(one.saving, saving) || one.saving.endS > saving.endS),
  );
}

/** The same thing done in several places (a kettle on one circuit or another): the best of them stands for all. */
function placeOf({ change }: Advice): string | undefined {
  return change.kind === 'kettle' ? change.kind : undefined;
}

/** All that was tried, as it is told. */
function ranked(all: readonly Advice[]): AdviceList {
  const helpful = all.filter(({ change, saving }) => helps(change, saving));
  const told = helpful
    .filter((one) => !isOutdone(one, helpful))
    .toSorted((a, b) => compareSavings(a.saving, b.saving));
  const helped = new Set(helpful.map(({ change }) => change.kind));
  return {
    advice: told.filter((one, at) => {
      const place = placeOf(one);
      return place === undefined || told.findIndex((other) => placeOf(other) === place) === at;
    }),
    inVain: [...new Set(all.map(({ change }) => change.kind))].filter((kind) => !helped.has(kind)),
  };
}

/** How far a search has come: so many changes of so many, the one that is being tried counted in. */
export type TryingProgress = { readonly done: number; readonly of: number };

/**
 * The search for what would help, change by change: each `next` makes one plan, so that whoever
 * leads it may show how far it is, and stop.
 * @throws OutOfRangeError when a model refuses a number of the kitchen as it is
 */
export function* adviceSteps(
  before: Planned,
  options: AdviceOptions,
): Generator<TryingProgress, AdviceList> {
  const changes = changesToTry(before, options);
  const all: Advice[] = [];
  for (const [done, change] of changes.entries()) {
    yield { done: done + 1, of: changes.length };
    const one = tried(before, change);
    if (one) all.push(one);
  }
  return ranked(all);
}

/**
 * What would help, each worked out by planning again with the change, the best first. As long as
 * some tens of plans; a page goes through `adviceSteps` instead.
 * @throws OutOfRangeError when a model refuses a number of the kitchen as it is
 */
export function adviceFor(before: Planned, options: AdviceOptions): AdviceList {
  const steps = adviceSteps(before, options);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}
