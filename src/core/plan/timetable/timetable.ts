import { lagOf } from './lags.ts';
import type { Message } from '../../messages/index.ts';
import {
  ScheduleRefusal,
  solve,
  type Activity,
  type After,
  type Calendar,
  type Problem,
  type Schedule,
  type SolveOptions,
} from '../../schedule/index.ts';
import { SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../../units/index.ts';
import { runsThroughRestDays } from '../model/index.ts';
import type { StepDraft } from '../context/step-draft.ts';
import type { Resource, Step, Timetable } from '../model/index.ts';

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

/** Lags after other steps. Ties to steps that are not timed with it are passed over. */
function afterOf(
  { step, follows, ties }: StepDraft,
  lengths: ReadonlyMap<string, number>,
): readonly After[] {
  const own = step.needs.map((need) => lagOf(step, need));
  const tied = ties.flatMap(({ step: id, to, mostS }): After[] => {
    const lengthS = lengths.get(id);
    if (lengthS === undefined) return [];
    const fromS = to === 'start' ? -lengthS : 0;
    return [{ id, minLagS: fromS, ...(mostS !== undefined && { maxLagS: fromS + mostS }) }];
  });
  return [...own, ...follows.map((id) => ({ id })), ...tied];
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

/** What all steps of one timetable share. */
type Timing = {
  readonly options: TimetableOptions;
  /** Typical durations, s. */
  readonly lengths: ReadonlyMap<string, number>;
  /** When rests that began before the work are over, s after the start. */
  readonly overS: ReadonlyMap<string, number>;
};

function timingOf(drafts: readonly StepDraft[], options: TimetableOptions): Timing {
  return {
    options,
    lengths: new Map(drafts.map(({ step }) => [step.id, step.durationS.typical])),
    overS: new Map(drafts.flatMap(({ step, overS = 0 }) => (overS > 0 ? [[step.id, overS]] : []))),
  };
}

/**
 * A step as work to be timed. What needs or watches a person keeps to the
 * working hours; rests and cool-downs run through the night.
 */
function activityOf(
  draft: StepDraft,
  priority: number,
  { options, lengths, overS }: Timing,
): Activity {
  const { step } = draft;
  const calendar = hoursOf(draft, options);
  const notBeforeS = Math.max(0, ...step.needs.map((need) => overS.get(need.step) ?? 0));
  return {
    id: step.id,
    durationS: step.durationS.typical,
    demand: step.demands,
    after: afterOf(draft, lengths),
    ...(notBeforeS > 0 && { notBeforeS }),
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

/** The work of a timetable as the schedule takes it: one activity a draft, in their order. */
export function problemOf(
  drafts: readonly StepDraft[],
  resources: readonly Resource[],
  options: TimetableOptions,
): Problem {
  const timing = timingOf(drafts, options);
  const calendars: readonly Calendar[] = [
    { id: WORK, closed: options.closed ?? usualNights() },
    { id: REST_DAYS, closed: options.rests ?? [] },
  ];
  return {
    activities: drafts.map((draft, at) => activityOf(draft, at, timing)),
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

/** How long things may wait at most is a wish: where the hours of work are too short for it, it is given up. */
export function withoutMost(draft: StepDraft): StepDraft {
  return { ...draft, ties: draft.ties.map(({ step, to }) => ({ step, to })) };
}

function solved(
  drafts: readonly StepDraft[],
  resources: readonly Resource[],
  options: TimetableOptions,
  how: SolveOptions,
): Schedule {
  try {
    return solve(problemOf(drafts, resources, options), how);
  } catch (refusal) {
    const wished = drafts.some(({ ties }) => ties.some(({ mostS }) => mostS !== undefined));
    if (!(refusal instanceof ScheduleRefusal) || !wished) throw refusal;
    return solve(problemOf(drafts.map(withoutMost), resources, options), how);
  }
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
  first: Schedule,
  byS: number,
): Late {
  if (purgedS(drafts, first) <= byS) return { lateS: 0, certain: false, solved: first };
  const purge = solved(untilPurged(drafts), resources, options, { rounds: ROUNDS });
  const again = solved(drafts, resources, options, {
    rounds: ROUNDS,
    previousS: { ...first.startS, ...purge.startS },
  });
  const best = purgedS(drafts, again) < purgedS(drafts, first) ? again : first;
  const lateS = Math.max(0, purgedS(drafts, best) - byS);
  return { lateS, certain: lateS > 0 && purge.lowerBoundS > byS, solved: best };
}

const HEAT: ReadonlySet<Step['kind']> = new Set(['glow', 'high-heat', 'self-clean', 'cool']);
/** More steps than any plan has. */
const AFTER_ALL = 1e6;

/** Water before fire: a place beside an oven is poured before the oven keeps it hot for hours. */
function waterFirst(drafts: readonly StepDraft[]): Readonly<Record<string, number>> {
  return Object.fromEntries(
    drafts.map(({ step }, at) => [step.id, HEAT.has(step.kind) ? AFTER_ALL + at : at]),
  );
}

/** As early as it goes by the rules, or else by water before fire. */
function earliest(
  drafts: readonly StepDraft[],
  resources: readonly Resource[],
  { previousS, ...options }: TimetableOptions,
): Schedule {
  return solved(drafts, resources, options, {
    rounds: ROUNDS,
    ...(previousS ? { previousS } : { otherOrder: waterFirst(drafts) }),
  });
}

/** Starts of all steps, as early as they can be. */
export function timetableOf(
  drafts: readonly StepDraft[],
  resources: readonly Resource[],
  options: TimetableOptions = {},
): Timed {
  const first = earliest(drafts, resources, options);
  const { late } = first;
  const {
    solved: best,
    lateS,
    certain,
  }: Late = options.purgeByS === undefined
    ? { solved: first, lateS: late?.byS ?? 0, certain: late?.certain ?? false }
    : purgeLate(drafts, resources, options, first, options.purgeByS);
  return {
    timetable: {
      startS: best.startS,
      finishS: best.finishS,
      lowerBoundS: best.lowerBoundS,
      proven: best.optimal,
    },
    lateS,
    certain,
    overnight: drafts.filter((one) => isOvernight(one, options)).map(({ step }) => step.title),
  };
}
