import { ScheduleRefusal } from './refusal.ts';
import type { Activity, Problem } from './types.ts';

/** Lags are kept between all pairs: more would fill the memory of a tablet. A home of 300 fixtures has 1800. */
const MOST_ACTIVITIES = 5000;
/** More kinds of resources than any home has. */
const MOST_RESOURCES = 1000;
/** Beyond this (about 30 years) a time is a mistake of units, and whole milliseconds stay exact. */
const LONGEST_S = 1e9;

function number(input: string, value: unknown, min: number, max = LONGEST_S): void {
  if (typeof value !== 'number' || !(value >= min && value <= max)) {
    throw new ScheduleRefusal(
      'bad-number',
      input,
      value,
      `a number from ${min} to ${max}`,
      'Correct it.',
    );
  }
}

function few(input: string, rows: readonly unknown[], most: number): void {
  if (rows.length <= most) return;
  throw new ScheduleRefusal(
    'too-many',
    input,
    `a list of ${rows.length}`,
    `at most ${most} rows`,
    'Plan part of the work by itself.',
  );
}

function uniqueIds(field: string, rows: readonly { readonly id: string }[]): Set<string> {
  const ids = new Set<string>();
  rows.forEach((row, at) => {
    if (ids.has(row.id)) {
      throw new ScheduleRefusal(
        'duplicate-id',
        `${field}[${at}].id`,
        row.id,
        'an id used once',
        'Rename one of the two.',
      );
    }
    ids.add(row.id);
  });
  return ids;
}

type Ids = { has(id: string): boolean; keys(): Iterable<string> };

function known(input: string, id: string, ids: Ids, what: string): void {
  if (ids.has(id)) return;
  const some = [...ids.keys()].slice(0, 6).join(', ') || 'none exist';
  throw new ScheduleRefusal(
    'unknown-id',
    input,
    id,
    `the id of a known ${what} (${some})`,
    'Add it or correct the id.',
  );
}

function checkAfter(activity: Activity, path: string, ids: ReadonlySet<string>): void {
  activity.after?.forEach((lag, at) => {
    const input = `${path}.after[${at}]`;
    known(`${input}.id`, lag.id, ids, 'activity');
    if (lag.minLagS !== undefined) number(`${input}.minLagS`, lag.minLagS, -LONGEST_S);
    if (lag.maxLagS === undefined) return;
    number(`${input}.maxLagS`, lag.maxLagS, -LONGEST_S);
    if (lag.maxLagS < (lag.minLagS ?? 0)) {
      throw new ScheduleRefusal(
        'bad-number',
        `${input}.maxLagS`,
        lag.maxLagS,
        `at least minLagS (${lag.minLagS ?? 0})`,
        'Raise maxLagS or lower minLagS.',
      );
    }
  });
}

function checkActivity(
  activity: Activity,
  path: string,
  ids: ReadonlySet<string>,
  capacities: ReadonlyMap<string, number>,
  calendars: ReadonlySet<string>,
): void {
  number(`${path}.durationS`, activity.durationS, 0);
  if (activity.notBeforeS !== undefined) {
    number(`${path}.notBeforeS`, activity.notBeforeS, -LONGEST_S);
  }
  if (activity.notAfterS !== undefined) number(`${path}.notAfterS`, activity.notAfterS, 0);
  if (activity.calendar !== undefined) {
    known(`${path}.calendar`, activity.calendar, calendars, 'calendar');
  }
  checkAfter(activity, path, ids);
  for (const [resource, amount] of Object.entries(activity.demand)) {
    const input = `${path}.demand.${resource}`;
    known(input, resource, capacities, 'resource');
    number(input, amount, 0);
    const capacity = capacities.get(resource) ?? 0;
    if (amount > capacity && activity.durationS > 0) {
      throw new ScheduleRefusal(
        'over-capacity',
        input,
        amount,
        `at most the capacity ${capacity} of ${resource} (activity ${activity.id})`,
        'Lower the demand or raise the capacity.',
      );
    }
  }
}

/**
 * Checks names and numbers of a problem; what only a search can tell (cycles of
 * lags, windows too narrow) is refused later.
 * @throws ScheduleRefusal naming the first bad field
 */
export function validate(problem: Problem): void {
  few('activities', problem.activities, MOST_ACTIVITIES);
  few('resources', problem.resources, MOST_RESOURCES);
  const ids = uniqueIds('activities', problem.activities);
  uniqueIds('resources', problem.resources);
  const calendars = uniqueIds('calendars', problem.calendars ?? []);
  problem.resources.forEach((resource, at) =>
    number(`resources[${at}].capacity`, resource.capacity, 0),
  );
  if (problem.deadlineS !== undefined) number('deadlineS', problem.deadlineS, -LONGEST_S);
  problem.calendars?.forEach((calendar, at) =>
    calendar.closed.forEach((closed, slot) => {
      const input = `calendars[${at}].closed[${slot}]`;
      number(`${input}.fromS`, closed.fromS, -LONGEST_S);
      number(`${input}.toS`, closed.toS, closed.fromS);
    }),
  );
  const capacities = new Map(problem.resources.map(({ id, capacity }) => [id, capacity]));
  problem.activities.forEach((activity, at) =>
    checkActivity(activity, `activities[${at}]`, ids, capacities, calendars),
  );
}
