import { solve, type Activity, type After, type Calendar } from '../schedule/index.ts';
import type { Draft } from './draft.ts';
import type { Resource, Timetable } from './types.ts';

const S_H = 3600;
const DAY_S = 24 * S_H;
/** Hours that people work on a day of it, breaks included: common practice, no published source. */
const WORKDAY_S = 14 * S_H;
/** Days ahead for which nights are laid out; longer than any plan. */
const DAYS = 30;
const WORK = 'work';

/** Hours in which nothing that needs a person is planned, s after the start. */
export type Closed = readonly { readonly fromS: number; readonly toS: number }[];

export type TimetableOptions = {
  /** Nights and rest days. Default: the job begins with a working day of 14 h, then 10 h of night. */
  readonly closed?: Closed;
  /** Wished-for finish, s after the start. */
  readonly deadlineS?: number;
  /** Starts of an earlier plan: its order is kept where it can be. */
  readonly previousS?: Readonly<Record<string, number>>;
};

/** Nights when nothing else is told. */
export function usualNights(): Closed {
  return Array.from({ length: DAYS }, (_, day) => ({
    fromS: day * DAY_S + WORKDAY_S,
    toS: (day + 1) * DAY_S,
  }));
}

function afterOf({ step, follows }: Draft): readonly After[] {
  const own = step.needs.map(({ step: id, withinS }): After => {
    if (step.startsBy === 'chain') return { id, maxLagS: 0 };
    return withinS === undefined ? { id } : { id, maxLagS: withinS };
  });
  return [...own, ...follows.map((id) => ({ id }))];
}

/**
 * A step as work to be timed. What needs or watches a person keeps to the
 * working hours; rests and cool-downs run through the night.
 */
function activityOf(draft: Draft, priority: number, keepsHours: boolean): Activity {
  const { step } = draft;
  return {
    id: step.id,
    durationS: step.durationS.typical,
    demand: step.demands,
    after: afterOf(draft),
    ...(keepsHours && { calendar: WORK }),
    priority,
  };
}

export type Timed = {
  readonly timetable: Timetable;
  /** Seconds by which the deadline is missed; 0 when it is kept or there is none. */
  readonly lateS: number;
  /** No order of work would keep the deadline. */
  readonly certain: boolean;
  /** Steps that no working day is long enough for: they run into the night. */
  readonly overnight: readonly string[];
};

/** Starts of all steps, as early as they can be. */
export function timetableOf(
  drafts: readonly Draft[],
  resources: readonly Resource[],
  options: TimetableOptions = {},
): Timed {
  const calendar: Calendar = { id: WORK, closed: options.closed ?? usualNights() };
  // Hours that were told are kept whatever a step takes; the usual night gives way.
  const isOvernight = ({ step }: Draft): boolean =>
    options.closed === undefined && step.attention !== 'none' && step.durationS.typical > WORKDAY_S;
  const { startS, finishS, lowerBoundS, late } = solve(
    {
      activities: drafts.map((draft, at) =>
        activityOf(draft, at, draft.step.attention !== 'none' && !isOvernight(draft)),
      ),
      resources: resources.map(({ id, capacity }) => ({ id, capacity })),
      calendars: [calendar],
      ...(options.deadlineS !== undefined && { deadlineS: options.deadlineS }),
    },
    { rounds: ROUNDS, ...(options.previousS && { previousS: options.previousS }) },
  );
  return {
    timetable: { startS, finishS, lowerBoundS },
    lateS: late?.byS ?? 0,
    certain: late?.certain ?? false,
    overnight: drafts.filter(isOvernight).map(({ step }) => step.title),
  };
}

/** Rounds of improvement: a plan is made while a person waits. */
const ROUNDS = 4;
