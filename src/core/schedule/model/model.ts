import { closedSpans, type ClosedTicks } from './closed-hours.ts';
import { addArc, longestPaths, NO_LAG, type Arc } from './lags.ts';
import { lastStart, nextStart, startHoles, type Holes } from './start-holes.ts';
import { ScheduleRefusal } from '../problem/refusal.ts';
import type { Activity, Problem } from '../problem/types.ts';

/** Whole milliseconds inside, so that sums taken in different orders are equal. */
export const TICKS_PER_S = 1000;
/** Rounding dust of a decimal number of seconds, in ticks. */
const DUST_TICKS = 1e-6;
/** Share of the capacity by which added-up demands may miss it through rounding. */
const DEMAND_DUST = 1e-9;

/** A problem as arrays over activity numbers; times in ticks. */
export type Model = {
  readonly count: number;
  readonly duration: Float64Array;
  /** Row per activity, column per resource. */
  readonly demand: Float64Array;
  /** The resources that each activity asks for: few, where there are many. */
  readonly wants: readonly Int32Array[];
  /** With the rounding dust already allowed for. */
  readonly capacity: Float64Array;
  /** Pairs that exclude each other, one after the other in a flat list. */
  readonly excluded: readonly number[];
  /** Lags from start to start, as the problem tells them. */
  readonly arcs: readonly Arc[];
  /** Longest paths of start-to-start lags, row by row. */
  readonly lag: Float64Array;
  /** Windows of starts that lags, calendars and forced orders leave. */
  readonly earliest: Float64Array;
  readonly latest: Float64Array;
  readonly closed: readonly (ClosedTicks | undefined)[];
  /** Starts that closed hours leave to none, neither to the activity nor to what is tied to it. */
  readonly holes: readonly (Holes | undefined)[];
  /** Of a model seen backwards in time: the moment of the other at which it begins. */
  readonly mirroredAt?: number;
  readonly priority: Float64Array;
};

type Demands = Pick<Model, 'duration' | 'demand' | 'wants' | 'capacity'>;

/** Rounds up: nothing starts before it may. */
export function ticksUp(seconds: number): number {
  return Math.ceil(seconds * TICKS_PER_S - DUST_TICKS);
}

/** Rounds down: nothing is later than it may be. */
function ticksDown(seconds: number): number {
  return Math.floor(seconds * TICKS_PER_S + DUST_TICKS);
}

function arcsOf(activities: readonly Activity[], index: ReadonlyMap<string, number>): Arc[] {
  const arcs: Arc[] = [];
  activities.forEach((activity, to) => {
    for (const { id, minLagS, maxLagS } of activity.after ?? []) {
      const from = index.get(id)!;
      const duration = ticksUp(activities[from]!.durationS);
      const least = duration + ticksUp(minLagS ?? 0);
      arcs.push({ from, to, weight: least });
      if (maxLagS === undefined) continue;
      // A chain of lengths that are no whole ticks stays a chain.
      const most = Math.max(least, duration + ticksDown(maxLagS));
      arcs.push({ from: to, to: from, weight: -most });
    }
  });
  return arcs;
}

function lagMatrix({ activities }: Problem, arcs: readonly Arc[]): Float64Array {
  const paths = longestPaths(activities.length, arcs);
  if ('lag' in paths) return paths.lag;
  const names = paths.cycle.map((at) => activities[at]!.id);
  throw new ScheduleRefusal(
    'cycle',
    'activities.after',
    [...names, names[0]].join(' → '),
    'lags that never lead back to a later start of the same activity',
    'Remove one of these lags, or lengthen a maxLagS among them.',
  );
}

/** The activities of which no times can keep all demands; undefined: none were proven so. */
type Contradiction = readonly number[] | undefined;

/** Pulls the windows together until lags and calendars change nothing, or one is empty. */
function tighten(model: Model): Contradiction {
  const { count, lag, earliest, latest, holes } = model;
  for (let changed = true; changed;) {
    changed = false;
    for (let i = 0; i < count; i++) {
      let early = earliest[i]!;
      let late = latest[i]!;
      for (let j = 0; j < count; j++) {
        const into = lag[j * count + i]!;
        const out = lag[i * count + j]!;
        if (into !== NO_LAG) early = Math.max(early, earliest[j]! + into);
        if (out !== NO_LAG) late = Math.min(late, latest[j]! - out);
      }
      if (holes[i]) early = nextStart(holes[i]!, early);
      if (early > late) return [i];
      if (early > earliest[i]! || late < latest[i]!) changed = true;
      earliest[i] = early;
      latest[i] = late;
    }
  }
  return undefined;
}

/** Whether the two ask for more than there is of some resource, so that one must wait for the other. */
export function excludes(model: Demands, i: number, j: number): boolean {
  if (model.duration[i] === 0 || model.duration[j] === 0) return false;
  const kinds = model.capacity.length;
  for (const r of model.wants[i]!) {
    if (model.demand[i * kinds + r]! + model.demand[j * kinds + r]! > model.capacity[r]!) {
      return true;
    }
  }
  return false;
}

function excludedPairs(model: Demands): readonly number[] {
  const pairs: number[] = [];
  const count = model.wants.length;
  const working = model.wants.map(({ length }, i) => length > 0 && model.duration[i]! > 0);
  for (let i = 0; i < count; i++) {
    if (!working[i]) continue;
    for (let j = i + 1; j < count; j++) {
      if (working[j] && excludes(model, i, j)) pairs.push(i, j);
    }
  }
  return pairs;
}

/**
 * Where two activities exclude each other and only one order is left, adds that
 * order (immediate selection: Carlier & Pinson, Management Science 35 (1989) 164).
 * Windows are tightened along the way.
 */
function forceOrders(model: Model): Contradiction {
  const { count, lag, earliest, latest, duration } = model;
  const pairs = model.excluded;
  const mayPrecede = (i: number, j: number) =>
    lag[j * count + i]! <= -duration[i]! && earliest[i]! + duration[i]! <= latest[j]!;
  const narrow = tighten(model);
  if (narrow) return narrow;
  for (let changed = true; changed;) {
    changed = false;
    for (let k = 0; k < pairs.length; k += 2) {
      const i = pairs[k]!;
      const j = pairs[k + 1]!;
      const done = lag[i * count + j]! >= duration[i]! || lag[j * count + i]! >= duration[j]!;
      if (done) continue;
      const iFirst = mayPrecede(i, j);
      const jFirst = mayPrecede(j, i);
      if (iFirst && jFirst) continue;
      if (!iFirst && !jFirst) return [i, j];
      const [first, second] = iFirst ? [i, j] : [j, i];
      if (!addArc(lag, count, first, second, duration[first]!)) return [i, j];
      changed = true;
    }
    const empty = changed ? tighten(model) : undefined;
    if (empty) return empty;
  }
  return undefined;
}

/** The refusal of a problem proven to have no schedule. */
function infeasible(ids: readonly string[]): ScheduleRefusal {
  return new ScheduleRefusal(
    'infeasible',
    'activities',
    `without any time for ${ids.join(' and ')}`,
    'lags, windows and demands that some schedule can keep',
    `Lengthen a maxLagS or notAfterS around ${ids.join(' and ')}, raise a capacity, or open a calendar.`,
  );
}

/** What the activities ask for of the resources, in the order of these. */
function demandsOf({ activities, resources }: Problem, duration: Float64Array): Demands {
  const kinds = resources.length;
  const number = new Map(resources.map(({ id }, r) => [id, r]));
  const demand = new Float64Array(activities.length * kinds);
  const wants = activities.map((activity, i) => {
    const asked = Object.entries(activity.demand).filter(([, amount]) => amount > 0);
    for (const [id, amount] of asked) demand[i * kinds + number.get(id)!] = amount;
    return Int32Array.from(asked, ([id]) => number.get(id)!).toSorted();
  });
  const capacity = Float64Array.from(resources, (one) => one.capacity * (1 + DEMAND_DUST));
  return { duration, demand, wants, capacity };
}

/**
 * The arrays of a validated problem.
 * @throws ScheduleRefusal `cycle` or (proven) `infeasible`
 */
export function modelOf(problem: Problem): Model {
  const { activities } = problem;
  const index = new Map(activities.map(({ id }, at) => [id, at]));
  const calendars = new Map(
    problem.calendars?.map((calendar) => [calendar.id, closedSpans(calendar, ticksUp)]),
  );
  const arcs = arcsOf(activities, index);
  const lag = lagMatrix(problem, arcs);
  const duration = Float64Array.from(activities, ({ durationS }) => ticksUp(durationS));
  const closed = activities.map(({ calendar }) => calendars.get(calendar ?? ''));
  const demands = demandsOf(problem, duration);
  const model: Model = {
    ...demands,
    count: activities.length,
    arcs,
    lag,
    earliest: Float64Array.from(activities, ({ notBeforeS }) =>
      ticksUp(Math.max(0, notBeforeS ?? 0)),
    ),
    latest: Float64Array.from(activities, ({ notAfterS }) =>
      notAfterS === undefined ? Infinity : ticksUp(notAfterS),
    ),
    closed,
    holes: startHoles(closed, duration, arcs, lag),
    excluded: excludedPairs(demands),
    priority: Float64Array.from(activities, ({ priority }) => priority ?? 0),
  };
  const contradiction = forceOrders(model);
  if (contradiction) throw infeasible(contradiction.map((at) => activities[at]!.id));
  return model;
}

/** Starts seen backwards from `horizon`: a start s becomes horizon − s − duration. */
export function flip({ duration }: Model, starts: Float64Array, horizon: number): Float64Array {
  return starts.map((start, at) => horizon - start - duration[at]!);
}

/** The first start of an activity from a moment on that no hole forbids. */
export function openStart({ holes, duration, mirroredAt }: Model, i: number, from: number): number {
  const own = holes[i];
  if (!own) return from;
  if (mirroredAt === undefined) return nextStart(own, from);
  const end = mirroredAt - duration[i]!;
  return end - lastStart(own, end - from);
}

/** The model seen backwards in time from `horizon`, by which all must finish. */
export function mirror(model: Model, horizon: number, backLags: Float64Array): Model {
  return {
    ...model,
    lag: backLags,
    earliest: flip(model, model.latest, horizon).map((start) => Math.max(0, start)),
    latest: flip(model, model.earliest, horizon),
    mirroredAt: horizon,
  };
}
