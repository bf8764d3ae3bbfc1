import { lagOf } from './lags.ts';
import type { Message } from '../../messages/index.ts';
import {
  solve,
  type Activity,
  type After,
  type Calendar,
  type Problem,
  type Schedule,
} from '../../schedule/index.ts';
import { SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../../units/index.ts';
import { runsThroughRestDays } from '../model/index.ts';
import type { StepDraft } from '../context/step-draft.ts';
import type { Resource, Timetable } from '../model/index.ts';

/** Hours that people work on a day of it, breaks included: common practice, no published source. */
const WORKDAY_S = 14 * SECONDS_PER_HOUR;
/** Days ahead for which nights are laid out; longer than any plan. */
const DAYS = 30;
const WORK = 'work';
const REST_DAYS = 'rest-days';

/** Hours in which nothing that needs a person is planned, s after the start. */
export type ClosedHours = readonly { readonly fromS: number; readonly toS: number }[];

export type TimetableOptions = {
  /** Nights and rest days. Default: the job begins with a working day of 14 h, then 10 h of night. */
  readonly closed?: ClosedHours;
  /** Those of the closed hours that nothing breaks, whatever no day is long enough for. */
  readonly rests?: ClosedHours;
  /** Wished-for finish, s after the start. */
  readonly deadlineS?: number;
  /** By when all purging must be done, s after the start; below 0: it has passed. */
  readonly purgeByS?: number;
  /** Starts of an earlier plan: its order is kept where it can be. */
  readonly previousS?: Readonly<Record<string, number>>;
};

/** Nights when nothing else is told. */
export function usualNights(): ClosedHours {
  return Array.from({ length: DAYS }, (_, day) => ({
    fromS: day * SECONDS_PER_DAY + WORKDAY_S,
    toS: (day + 1) * SECONDS_PER_DAY,
  }));
}

function afterOf({ step, follows }: StepDraft): readonly After[] {
  const own = step.needs.map((need) => lagOf(step, need));
  return [...own, ...follows.map((id) => ({ id }))];
}

/** Hours a step keeps to: a calendar's name, or none for what runs through day and night. */
function hoursOf({ step }: StepDraft, options: TimetableOptions): string | undefined {
  if (step.attention !== 'none' && !isOvernight({ step }, options)) return WORK;
  return runsThroughRestDays(step) ? undefined : REST_DAYS;
}

/** The usual night gives way to what no day is long enough for; hours that a caller told do not. */
function isOvernight(
  { step }: Pick<StepDraft, 'step'>,
  { closed, rests }: TimetableOptions,
): boolean {
  const givesWay = closed === undefined || rests !== undefined;
  return givesWay && step.attention !== 'none' && step.durationS.typical > WORKDAY_S;
}

/**
 * A step as work to be timed. What needs or watches a person keeps to the
 * working hours; rests and cool-downs run through the night.
 */
function activityOf(draft: StepDraft, priority: number, options: TimetableOptions): Activity {
  const { step } = draft;
  const calendar = hoursOf(draft, options);
  return {
    id: step.id,
    durationS: step.durationS.typical,
    demand: step.demands,
    after: afterOf(draft),
    ...(calendar !== undefined && { calendar }),
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
  readonly overnight: readonly Message[];
};

/** Rounds of improvement: a plan is made while a person waits. */
const ROUNDS = 4;

function problemOf(
  drafts: readonly StepDraft[],
  resources: readonly Resource[],
  options: TimetableOptions,
): Problem {
  const calendars: readonly Calendar[] = [
    { id: WORK, closed: options.closed ?? usualNights() },
    { id: REST_DAYS, closed: options.rests ?? [] },
  ];
  return {
    activities: drafts.map((draft, at) => activityOf(draft, at, options)),
    resources: resources.map(({ id, capacity }) => ({ id, capacity })),
    calendars,
    ...(options.deadlineS !== undefined && { deadlineS: options.deadlineS }),
  };
}

/** When the last purge is over, s; 0 when there is none. */
function purgedS(drafts: readonly StepDraft[], { startS }: Pick<Schedule, 'startS'>): number {
  const ends = drafts
    .filter(({ step }) => step.phase === 'purge')
    .map(({ step }) => (startS[step.id] ?? 0) + step.durationS.typical);
  return Math.max(0, ...ends);
}

/** The purge and all that comes before it. */
function untilPurged(drafts: readonly StepDraft[]): readonly StepDraft[] {
  const byId = new Map(drafts.map((draft) => [draft.step.id, draft]));
  const kept = new Set<string>();
  const open = drafts.filter(({ step }) => step.phase === 'purge');
  for (let at = open.pop(); at; at = open.pop()) {
    if (kept.has(at.step.id)) continue;
    kept.add(at.step.id);
    const before = [...at.step.needs.map(({ step }) => step), ...at.follows];
    open.push(...before.flatMap((id) => byId.get(id) ?? []));
  }
  return drafts.filter(({ step }) => kept.has(step.id));
}

type Late = Pick<Timed, 'lateS' | 'certain'> & { readonly solved: Schedule };

/**
 * How late the purge is. When it is, it is ordered once more by itself: covering and marking may
 * wait, and its own bound tells whether any order of work would be in time.
 */
function purgeLate(
  drafts: readonly StepDraft[],
  resources: readonly Resource[],
  options: TimetableOptions,
  solved: Schedule,
  byS: number,
): Late {
  if (purgedS(drafts, solved) <= byS) return { lateS: 0, certain: false, solved };
  const purge = solve(problemOf(untilPurged(drafts), resources, options), { rounds: ROUNDS });
  const again = solve(problemOf(drafts, resources, options), {
    rounds: ROUNDS,
    previousS: { ...solved.startS, ...purge.startS },
  });
  const best = purgedS(drafts, again) < purgedS(drafts, solved) ? again : solved;
  const lateS = Math.max(0, purgedS(drafts, best) - byS);
  return { lateS, certain: lateS > 0 && purge.lowerBoundS > byS, solved: best };
}

/** Starts of all steps, as early as they can be. */
export function timetableOf(
  drafts: readonly StepDraft[],
  resources: readonly Resource[],
  options: TimetableOptions = {},
): Timed {
  const first = solve(problemOf(drafts, resources, options), {
    rounds: ROUNDS,
    ...(options.previousS && { previousS: options.previousS }),
  });
  const { late } = first;
  const { solved, lateS, certain }: Late =
    options.purgeByS === undefined
      ? { solved: first, lateS: late?.byS ?? 0, certain: late?.certain ?? false }
      : purgeLate(drafts, resources, options, first, options.purgeByS);
  return {
    timetable: {
      startS: solved.startS,
      finishS: solved.finishS,
      lowerBoundS: solved.lowerBoundS,
      proven: solved.optimal,
    },
    lateS,
    certain,
    overnight: drafts.filter((one) => isOvernight(one, options)).map(({ step }) => step.title),
  };
}
