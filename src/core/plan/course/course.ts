import type { ClosedHours } from '../timetable/timetable.ts';
import { criticalChain, type ChainLink } from '../timetable/critical-chain.ts';
import type { Plan, Step } from '../model/index.ts';
import { SECONDS_PER_HOUR } from '../../units/index.ts';
import { cutOf, type Cut } from './cut.ts';
import { peopleLanes, type PersonLane } from './lanes.ts';
import { courseRows, type CourseRow } from './rows.ts';
import type { TimeSpan } from './scale.ts';

/** A plan as its course: who does what, what happens by itself, what decides the end. */
export type Course = {
  readonly lanes: readonly PersonLane[];
  readonly rows: readonly CourseRow[];
  /** What decides the end, in the order of time. */
  readonly chain: readonly ChainLink[];
  /** Hours long enough to sleep or go out in which nothing asks for a person, between the work. */
  readonly free: readonly TimeSpan[];
  /** Nights and days of rest in which nobody is busy: they may be drawn narrower. */
  readonly idle: readonly TimeSpan[];
  /** Where the plan goes on after the hour of its last purging. */
  readonly cut?: Cut;
};

/** Hands with nothing to do for this long are free to eat, sleep or go out, s. */
const FREE_S = 4 * SECONDS_PER_HOUR;

function busyOf({ steps, timetable }: Plan): readonly TimeSpan[] {
  return steps
    .filter(({ attention, id }) => attention !== 'none' && timetable.startS[id] !== undefined)
    .map(({ id, durationS }) => {
      const fromS = timetable.startS[id] ?? 0;
      return { fromS, toS: fromS + durationS.typical };
    })
    .toSorted((a, b) => a.fromS - b.fromS);
}

/** Stretches between the work in which nothing asks for a person, in order. */
function gapsOf(busy: readonly TimeSpan[]): readonly TimeSpan[] {
  const gaps: TimeSpan[] = [];
  let overS = 0;
  for (const { fromS, toS } of busy) {
    if (fromS > overS) gaps.push({ fromS: overS, toS: fromS });
    overS = Math.max(overS, toS);
  }
  return gaps;
}

/** The part of each closed span that no work reaches into. */
function idleOf(
  closed: ClosedHours,
  gaps: readonly TimeSpan[],
  lastS: number,
): readonly TimeSpan[] {
  return closed.flatMap(({ fromS, toS }) =>
    [...gaps, { fromS: lastS, toS: Infinity }].flatMap((gap) => {
      const from = Math.max(fromS, gap.fromS);
      const to = Math.min(toS, gap.toS);
      return to > from ? [{ fromS: from, toS: to }] : [];
    }),
  );
}

/**
 * The course of a plan.
 * @param closed nights and rest days in which nothing that needs a person is planned, s after the start
 * @param ends the steps whose end is asked about; all of them unless told otherwise
 */
export function courseOf(
  plan: Plan,
  closed: ClosedHours,
  ends: (step: Step) => boolean = () => true,
): Course {
  const busy = busyOf(plan);
  const gaps = gapsOf(busy);
  const lastS = Math.max(0, ...busy.map(({ toS }) => toS));
  const cut = cutOf(plan);
  return {
    lanes: peopleLanes(plan),
    rows: courseRows(plan),
    chain: criticalChain(plan.steps, plan.timetable.startS, closed, ends),
    free: gaps.filter(({ fromS, toS }) => toS - fromS >= FREE_S),
    idle: idleOf(closed, gaps, lastS),
    ...(cut && { cut }),
  };
}
