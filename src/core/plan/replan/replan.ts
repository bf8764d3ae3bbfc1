import { draftsOf } from '../build/build-plan.ts';
import { stepDraft, type StepDraft } from '../context/step-draft.ts';
import type { Plan, Step, Timetable } from '../model/index.ts';
import {
  ScheduleRefusal,
  solve,
  type Activity,
  type After,
  type Schedule,
} from '../../schedule/index.ts';
import { exactly, MS_PER_SECOND, OutOfRangeError, SECONDS_PER_MINUTE } from '../../units/index.ts';
import { calendarOf, type Calendar } from '../timetable/days.ts';
import { criticalChain, longestLinks } from '../timetable/critical-chain.ts';
import { problemOf, withoutMost } from '../timetable/timetable.ts';
import type { Message } from '../../messages/index.ts';

/** Where each step stands at one moment; what is not named has not begun. */
export type Standing = {
  /** ms since 1970-01-01 UTC. */
  readonly nowMs: number;
  /** Done, or left out: nothing of it is to come. */
  readonly over: ReadonlySet<string>;
  /** Begun, and for how long it goes on, s. */
  readonly runningS: ReadonlyMap<string, number>;
};

/** What is still to come, timed anew. */
export type Replanned = {
  /** Starts of what runs and of what has not begun, s after the start of the plan. */
  readonly startS: Timetable['startS'];
  /** When the last of it is over, s after the start of the plan. */
  readonly finishS: number;
  /** What decides that, the longest first. */
  readonly decided: readonly Message[];
};

/** Rounds of improvement and steps of the exact search: it is asked again after every step that is done. */
const EFFORT = { rounds: 4, steps: 500_000 } as const;

/** What orders a plan, by step; what an amendment added is ordered by its needs alone. */
function orderOf(plan: Plan): ReadonlyMap<string, StepDraft> {
  try {
    return new Map(draftsOf(plan).map((draft) => [draft.step.id, draft]));
  } catch (refusal) {
    // A plan of another version, which these models would not make.
    if (refusal instanceof OutOfRangeError) return new Map();
    throw refusal;
  }
}

/** The step as it stands in the plan, with what orders it besides. */
function draftOf(step: Step, planned: StepDraft | undefined): StepDraft {
  if (!planned) return { ...stepDraft(step, step), step };
  // The length of a rest that began before the work follows from when it is timed.
  return { ...planned, step: planned.overS === undefined ? step : planned.step };
}

/** By so much later than planned another order is looked for, s. */
const LATE_S = SECONDS_PER_MINUTE;
/** What waits for something that runs may wait so much longer than it was planned to, s: hands are not as exact as a timetable. */
const SLACK_S = SECONDS_PER_MINUTE;

function lagNow(lag: After, { runningS }: Standing): After {
  return lag.maxLagS === undefined || !runningS.has(lag.id)
    ? lag
    : { ...lag, maxLagS: lag.maxLagS + SLACK_S };
}

/** A step as work that is still to come: not before now, and after nothing that is over. */
function activityNow(of: Activity, nowS: number, standing: Standing): Activity {
  const leftS = standing.runningS.get(of.id);
  if (leftS !== undefined)
    return {
      id: of.id,
      durationS: leftS,
      demand: of.demand,
      notBeforeS: nowS,
      notAfterS: nowS,
    };
  return {
    ...of,
    notBeforeS: Math.max(nowS, of.notBeforeS ?? 0),
    after: (of.after ?? [])
      .filter(({ id }) => !standing.over.has(id))
      .map((lag) => lagNow(lag, standing)),
  };
}

/** A rest counts by its clock once it runs: that it began before the work tells no more. */
function withClock(draft: StepDraft, { over, runningS }: Standing): StepDraft {
  const { id } = draft.step;
  return over.has(id) || runningS.has(id) ? { ...draft, overS: 0 } : draft;
}

function timedAnew(
  plan: Plan,
  drafts: readonly StepDraft[],
  calendar: Calendar,
  nowS: number,
  standing: Standing,
): Schedule | undefined {
  const problem = problemOf(drafts, plan.resources, calendar);
  const activities = problem.activities
    .filter(({ id }) => !standing.over.has(id))
    .map((one) => activityNow(one, nowS, standing));
  try {
    return solve({ ...problem, activities }, { ...EFFORT, previousS: plan.timetable.startS });
  } catch (refusal) {
    if (refusal instanceof ScheduleRefusal) return undefined;
    throw refusal;
  }
}

/** Order that the timetable prefers and the run does not insist on: what is late is done as it comes. */
function withoutOrder(draft: StepDraft): StepDraft {
  return { ...draft, follows: [], ties: [] };
}

/** When the last step of a plan is over by its own timetable, s after its start. */
export function endOf({ steps, timetable }: Plan): number {
  return Math.max(
    0,
    ...steps.map(({ id, durationS }) => (timetable.startS[id] ?? 0) + durationS.typical),
  );
}

/**
 * Times for what is still to come of a plan, from where its work really stands: what runs goes on
 * as long as its clocks say, the rest is timed as the plan was, in its order where that costs
 * nothing, round the same nights and rest days. Only what is to be expected: it changes no plan.
 * @returns undefined where the plan knows no days, or no such times were found
 */
export function replanned(plan: Plan, standing: Standing): Replanned | undefined {
  const { days, kitchen } = plan;
  if (!days || !kitchen.place) return undefined;
  const calendar = calendarOf(kitchen, kitchen.place, days.startWallMs);
  const nowS = Math.max(0, (standing.nowMs - days.startWallMs) / MS_PER_SECOND);
  const order = orderOf(plan);
  const drafts = plan.steps.map((step) => withClock(draftOf(step, order.get(step.id)), standing));
  const plannedS = endOf(plan);
  const timed = (these: readonly StepDraft[]): Schedule | undefined =>
    timedAnew(plan, these, calendar, nowS, standing);
  // How long things may wait at most is a wish, which what happened may have broken.
  const inOrder = timed(drafts) ?? timed(drafts.map(withoutMost));
  const isLate = inOrder === undefined || inOrder.finishS > plannedS + LATE_S;
  const free = isLate ? timed(drafts.map(withoutOrder)) : undefined;
  // Another order makes up for what was lost; nobody is led to be sooner by it than the plan.
  const freeS = free && Math.max(free.finishS, plannedS);
  const isFree = freeS !== undefined && freeS < (inOrder?.finishS ?? Infinity);
  const best = isFree ? free : inOrder;
  if (!best) return undefined;
  return {
    startS: best.startS,
    finishS: Math.max(nowS, isFree ? freeS : best.finishS),
    decided: decidedBy(plan, best.startS, calendar, nowS, standing),
  };
}

/** What decides the end now, counted from now on. */
function decidedBy(
  plan: Plan,
  startS: Timetable['startS'],
  { closed }: Calendar,
  nowS: number,
  { over, runningS }: Standing,
): readonly Message[] {
  const steps = plan.steps
    .filter(({ id }) => !over.has(id))
    .map((step): Step => {
      const leftS = runningS.get(step.id);
      return leftS === undefined ? step : { ...step, durationS: exactly(leftS) };
    });
  const fromNowS = Object.fromEntries(
    Object.entries(startS).map(([id, atS]) => [id, atS - nowS] as const),
  );
  const hours = closed.map(({ fromS, toS }) => ({ fromS: fromS - nowS, toS: toS - nowS }));
  return longestLinks(criticalChain(steps, fromNowS, hours), steps);
}
