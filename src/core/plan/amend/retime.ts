import {
  ScheduleRefusal,
  solve,
  type Activity,
  type After,
  type Calendar,
} from '../../schedule/index.ts';
import { calendarOf } from '../timetable/days.ts';
import { isDrying, lagOf } from '../timetable/lags.ts';
import { usualNights, type ClosedHours } from '../timetable/timetable.ts';
import type { Plan, Step } from '../model/index.ts';

const WORK = 'work';
/** Rounds of improvement: the person stands there with an empty kettle. */
const ROUNDS = 2;
/** And steps of the exact search: some hundredths of a second. */
const STEPS = 500_000;
/**
 * More steps than this are not timed anew but put one after the other: a person
 * waits with an empty kettle. A hall of 520 takes half a second on a desk computer.
 */
const MOST_STEPS = 1200;
/** Times of a timetable are whole milliseconds; steps that touch are not late. */
const TOUCH_S = 0.01;

export type Retiming = {
  /** The plan with the amended and added steps in it, under the timetable it had. */
  readonly plan: Plan;
  /** The step during which the plan was changed: nothing not begun starts before it. */
  readonly during: Step;
  /** The added steps of its fixture; what was planned after `oldLast` comes after `newLast`. */
  readonly oldLast: string;
  readonly newLast: string;
  readonly hasBegun: (stepId: string) => boolean;
  /** Hours the plan was made around, where they are known. */
  readonly closed?: ClosedHours | undefined;
};

/** Begun, or needed by what has begun, however far back. */
function begunIn({ plan, during, hasBegun }: Retiming): ReadonlySet<string> {
  const byId = new Map(plan.steps.map((step) => [step.id, step]));
  const begun = new Set<string>();
  const open = [during.id, ...plan.steps.filter(({ id }) => hasBegun(id)).map(({ id }) => id)];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (begun.has(id)) continue;
    begun.add(id);
    open.push(...(byId.get(id)?.needs ?? []).map(({ step }) => step));
  }
  return begun;
}

/** The nights and rest days that the plan was made for; the usual nights when it knows no days. */
function closedOf({ days, kitchen }: Plan): ClosedHours {
  return days && kitchen.place
    ? calendarOf(kitchen, kitchen.place, days.startWallMs).closed
    : usualNights();
}

function liesIn(closed: ClosedHours, fromS: number, toS: number): boolean {
  return closed.some((span) => span.fromS < toS - TOUCH_S && span.toS > fromS + TOUCH_S);
}

/** Hours that a step kept when it was planned are kept again; one that ran into the night may go on so. */
function keepsHours(step: Step, startS: number | undefined, closed: ClosedHours): boolean {
  if (step.attention === 'none') return false;
  return startS === undefined || !liesIn(closed, startS, startS + step.durationS.typical);
}

function afterOf(
  step: Step,
  isPourAfter: boolean,
  newLast: string,
  begun: ReadonlySet<string>,
): readonly After[] {
  // What was dried already may have to wait for the new kettles: it is swabbed again.
  const own = step.needs.map((need) =>
    isDrying(step, need) && begun.has(need.step) ? { id: need.step } : lagOf(step, need),
  );
  return isPourAfter ? [...own, { id: newLast }] : own;
}

function activityOf(
  of: Retiming,
  step: Step,
  begun: ReadonlySet<string>,
  closed: ClosedHours,
): Activity {
  const { startS } = of.plan.timetable;
  const plannedS = startS[step.id];
  const common = { id: step.id, durationS: step.durationS.typical, demand: step.demands };
  if (begun.has(step.id) && plannedS !== undefined)
    return { ...common, notBeforeS: plannedS, notAfterS: plannedS };
  const nowS = startS[of.during.id] ?? 0;
  const oldEndS = endS(of.plan, of.oldLast);
  // One fixture is poured after the other, as they were.
  const isPourAfter =
    step.kind === 'boil' &&
    step.fixture !== of.during.fixture &&
    (plannedS ?? 0) >= oldEndS - TOUCH_S;
  return {
    ...common,
    notBeforeS: Math.max(nowS, plannedS ?? nowS),
    priority: plannedS ?? oldEndS,
    after: afterOf(step, isPourAfter, of.newLast, begun),
    ...(keepsHours(step, plannedS, closed) && { calendar: WORK }),
  };
}

function endS({ steps, timetable }: Plan, id: string): number {
  const step = steps.find((one) => one.id === id);
  return (timetable.startS[id] ?? 0) + (step?.durationS.typical ?? 0);
}

/**
 * Starts of what has not begun, once steps were added: none earlier than it was
 * planned, what has begun where it was. Lags, resources and working hours are
 * kept as in the timetable.
 * @returns undefined when no such times were found; the caller then only orders the steps
 */
export function retimed(of: Retiming): Readonly<Record<string, number>> | undefined {
  if (of.plan.steps.length > MOST_STEPS) return undefined;
  const begun = begunIn(of);
  const closed = of.closed ?? closedOf(of.plan);
  const calendar: Calendar = { id: WORK, closed };
  try {
    const { startS } = solve(
      {
        activities: of.plan.steps.map((step) => activityOf(of, step, begun, closed)),
        resources: of.plan.resources.map(({ id, capacity }) => ({ id, capacity })),
        calendars: [calendar],
      },
      { rounds: ROUNDS, steps: STEPS, previousS: of.plan.timetable.startS },
    );
    return Object.fromEntries(
      Object.entries(startS).filter(
        ([id, atS]) => !begun.has(id) && atS !== of.plan.timetable.startS[id],
      ),
    );
  } catch (refusal) {
    if (refusal instanceof ScheduleRefusal) return undefined;
    throw refusal;
  }
}
