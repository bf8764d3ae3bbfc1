import type { Activity, Problem, Schedule } from './types.ts';

/** A rule that a schedule breaks, with the activities that break it. */
export type Violation = {
  readonly rule:
    | 'missing'
    | 'before zero'
    | 'not before'
    | 'not after'
    | 'minimum lag'
    | 'maximum lag'
    | 'capacity'
    | 'calendar'
    | 'finish'
    | 'lower bound';
  readonly activities: readonly string[];
  readonly say: string;
};

/** Starts are rounded to whole milliseconds: two roundings may add up. */
const TOLERANCE_S = 0.002;
const DEMAND_TOLERANCE = 1e-6;

type Placed = { readonly activity: Activity; readonly startS: number; readonly endS: number };

function placedOf(problem: Problem, { startS }: Schedule): Placed[] {
  return problem.activities.flatMap((activity) => {
    const start = startS[activity.id];
    if (start === undefined || !Number.isFinite(start)) return [];
    return [{ activity, startS: start, endS: start + activity.durationS }];
  });
}

function* ownWindow({ activity, startS, endS }: Placed, problem: Problem): Generator<Violation> {
  const { id, notBeforeS, notAfterS } = activity;
  const activities = [id];
  if (startS < 0) yield { rule: 'before zero', activities, say: `${id} starts at ${startS} s` };
  if (notBeforeS !== undefined && startS < notBeforeS - TOLERANCE_S) {
    yield {
      rule: 'not before',
      activities,
      say: `${id} starts at ${startS}, before ${notBeforeS} s`,
    };
  }
  if (notAfterS !== undefined && startS > notAfterS + TOLERANCE_S) {
    yield { rule: 'not after', activities, say: `${id} starts at ${startS}, after ${notAfterS} s` };
  }
  const calendar = problem.calendars?.find((one) => one.id === activity.calendar);
  for (const { fromS, toS } of calendar?.closed ?? []) {
    if (toS <= fromS || startS >= toS - TOLERANCE_S || endS <= fromS + TOLERANCE_S) continue;
    const say = `${id} (${startS} to ${endS} s) runs into the closed ${fromS} to ${toS} s`;
    yield { rule: 'calendar', activities, say };
  }
}

function* lags(
  { activity, startS }: Placed,
  ends: ReadonlyMap<string, number>,
): Generator<Violation> {
  for (const { id, minLagS = 0, maxLagS } of activity.after ?? []) {
    const endS = ends.get(id);
    if (endS === undefined) continue;
    const activities = [id, activity.id];
    const say = `${activity.id} starts ${startS - endS} s after ${id}`;
    if (startS - endS < minLagS - TOLERANCE_S) {
      yield { rule: 'minimum lag', activities, say: `${say}; at least ${minLagS}` };
    }
    if (maxLagS !== undefined && startS - endS > maxLagS + TOLERANCE_S) {
      yield { rule: 'maximum lag', activities, say: `${say}; at most ${maxLagS}` };
    }
  }
}

/** Demand only ever rises at a start, so the starts are where to look. */
function* capacities(problem: Problem, placed: readonly Placed[]): Generator<Violation> {
  for (const { id, capacity } of problem.resources) {
    const users = placed.filter(({ activity }) => (activity.demand[id] ?? 0) > 0);
    for (const { startS: atS } of users) {
      const now = users.filter(
        ({ startS, endS }) => startS <= atS + TOLERANCE_S && endS > atS + TOLERANCE_S,
      );
      const held = now.reduce((sum, { activity }) => sum + (activity.demand[id] ?? 0), 0);
      if (held <= capacity * (1 + DEMAND_TOLERANCE)) continue;
      yield {
        rule: 'capacity',
        activities: now.map(({ activity }) => activity.id),
        say: `at ${atS} s ${held} of ${id} are held; there are ${capacity}`,
      };
    }
  }
}

/**
 * Everything about a schedule that breaks its problem, told without any part
 * of the solver. Empty: the schedule holds.
 */
export function checkSchedule(problem: Problem, schedule: Schedule): readonly Violation[] {
  const placed = placedOf(problem, schedule);
  const ends = new Map(placed.map(({ activity, endS }) => [activity.id, endS]));
  const found: Violation[] = [];
  for (const { id } of problem.activities) {
    if (!ends.has(id)) found.push({ rule: 'missing', activities: [id], say: `${id} has no start` });
  }
  for (const one of placed) found.push(...ownWindow(one, problem), ...lags(one, ends));
  found.push(...capacities(problem, placed));
  const lastS = placed.reduce((last, { endS }) => Math.max(last, endS), 0);
  if (Math.abs(lastS - schedule.finishS) > TOLERANCE_S) {
    const say = `the last work ends at ${lastS} s, not at ${schedule.finishS} s`;
    found.push({ rule: 'finish', activities: [], say });
  }
  if (schedule.finishS < schedule.lowerBoundS - TOLERANCE_S) {
    const say = `finishes at ${schedule.finishS} s, before its bound ${schedule.lowerBoundS} s`;
    found.push({ rule: 'lower bound', activities: [], say });
  }
  return found;
}
