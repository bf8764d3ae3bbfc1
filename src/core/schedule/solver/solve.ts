import { ExactSearch } from '../exact/search.ts';
import { gridOf, lowerBound, type Bound } from './bound.ts';
import { Search } from './improve.ts';
import { modelOf, TICKS_PER_S, ticksUp, type Model } from '../model/model.ts';
import { ScheduleRefusal } from '../problem/refusal.ts';
import type { Problem, Schedule, SolveOptions } from '../problem/types.ts';
import { validate } from '../problem/validate.ts';

/** Enough for the problems of one home to reach their bound; see the tests for what more brings. */
const DEFAULT_ROUNDS = 60;
/** Steps of the exact search: about a second on a laptop, of which most plans take a tenth. */
const DEFAULT_STEPS = 30_000_000;
/** Work a round may take on average, so that long problems with tight lags end in time too. */
const PLACEMENTS_PER_ROUND = 700;
/** The priority rules are worth about as many rounds. */
const RULE_ROUNDS = 10;

/** A finish that every sensible schedule keeps: all work one after the other, and the longest lags. */
function horizonOf(model: Model): number {
  const work = model.duration.reduce((sum, length) => sum + length, 0);
  return work + model.earliest.reduce((latest, start) => Math.max(latest, start), 0);
}

function effortOf(input: 'rounds' | 'steps', options: SolveOptions, usual: number): number {
  const effort = options[input] ?? usual;
  if (Number.isFinite(effort) && effort >= 0) return effort;
  throw new ScheduleRefusal('bad-number', input, effort, 'a number from 0', 'Correct it.');
}

function previousStarts(problem: Problem, options: SolveOptions, model: Model) {
  const { previousS } = options;
  if (!previousS) return undefined;
  return Float64Array.from(problem.activities, ({ id }, at) => {
    const known = previousS[id];
    return known === undefined ? model.earliest[at]! : ticksUp(known);
  });
}

/** Keys of all activities; those not named go last. */
function keysBy(problem: Problem, order: Readonly<Record<string, number>>): Float64Array {
  return Float64Array.from(problem.activities, ({ id }) => order[id] ?? Infinity);
}

function scheduleOf(problem: Problem, start: Float64Array, finish: number, bound: Bound): Schedule {
  const finishS = finish / TICKS_PER_S;
  const lowerBoundS = bound.ticks / TICKS_PER_S;
  const { deadlineS } = problem;
  const starts = problem.activities.map(({ id }, at) => [id, start[at]! / TICKS_PER_S] as const);
  return {
    startS: Object.fromEntries(starts),
    finishS,
    lowerBoundS,
    bound: bound.reason,
    optimal: finish <= bound.ticks,
    ...(deadlineS !== undefined &&
      finishS > deadlineS && {
        late: { byS: finishS - deadlineS, certain: lowerBoundS > deadlineS },
      }),
  };
}

/** Looks for the best schedule: priority rules, the exact search, then rounds; each only while the bound is not reached. */
function searched(
  problem: Problem,
  options: SolveOptions,
  model: Model,
): { readonly search: Search; readonly bound: Bound } {
  const rounds = effortOf('rounds', options, DEFAULT_ROUNDS);
  const mostSteps = effortOf('steps', options, DEFAULT_STEPS);
  const steps = { left: mostSteps };
  const grid = gridOf(model);
  let bound = lowerBound(
    model,
    problem.resources.map(({ id }) => id),
    grid,
  );
  const horizon = horizonOf(model);
  const search = new Search(
    model,
    (RULE_ROUNDS + rounds) * PLACEMENTS_PER_ROUND,
    previousStarts(problem, options, model),
  );
  const isOpen = () => search.best !== undefined && search.best.finish > bound.ticks;
  const prove = () => {
    if (!isOpen() || steps.left <= 0) return;
    const proof = new ExactSearch(model, bound.ticks, search.best!.finish, grid, steps).run();
    if (proof.start) search.take(proof.start);
    if (proof.lower > bound.ticks) bound = { ticks: proof.lower, reason: { kind: 'windows' } };
  };
  search.tryRules(horizon, rounds * PLACEMENTS_PER_ROUND);
  prove();
  const { otherOrder } = options;
  if (otherOrder && isOpen()) {
    const before = search.best!.finish;
    search.tryOrder(keysBy(problem, otherOrder));
    // What is better is proven anew, within steps of its own.
    if (search.best!.finish < before) {
      steps.left = mostSteps;
      prove();
    }
  }
  for (let round = 0; round < rounds; round++) {
    if (search.best && (search.spent || !isOpen())) break;
    search.round(horizon);
  }
  prove();
  return { search, bound };
}

/**
 * Times all activities as early as the search can finish them, keeping every
 * lag, capacity and calendar; with a bound below which nothing can finish.
 * Priority rules with the serial scheme and double justification; an exact
 * search that proves the finish or finds an earlier one, within its steps; where
 * those do not suffice, rounds of crossed and disturbed orders. Times are
 * rounded to whole milliseconds.
 * @throws ScheduleRefusal for a bad field, a cycle of lags, a proven
 *   contradiction (`infeasible`), or nothing found (`not-found`)
 */
export function solve(problem: Problem, options: SolveOptions = {}): Schedule {
  validate(problem);
  const { search, bound } = searched(problem, options, modelOf(problem));
  if (!search.best) {
    throw new ScheduleRefusal(
      'not-found',
      'activities',
      'a set of lags, windows and demands no schedule was found for',
      'lags, windows and demands that some schedule can keep',
      'Lengthen a maxLagS or notAfterS, raise a capacity, or search with more rounds.',
    );
  }
  return scheduleOf(problem, search.best.start, search.best.finish, bound);
}
