import { runsThroughRestDays, shares, type Plan, type Step } from '../../plan/index.ts';
import { SECONDS_PER_HOUR, type Band } from '../../units/index.ts';
import { firstOpenS, hoursOf, type PlanHours } from './open-hours.ts';

/** Hours that people work on a day at most: what takes longer runs into the night. */
const WORKDAY_S = 14 * SECONDS_PER_HOUR;
/** Times of a timetable are whole milliseconds; what touches does not overlap. */
const TOUCH_S = 0.01;

/** Numbers in [0, 1) that are the same for the same seed (mulberry32; public domain). */
export function sequence(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** The value of a triangle over a band, its peak at the typical, below which a share of it lies. */
export function ofBand({ low, typical, high }: Band, share: number): number {
  if (high <= low) return typical;
  const rise = (typical - low) / (high - low);
  return share < rise
    ? low + Math.sqrt(share * (high - low) * (typical - low))
    : high - Math.sqrt((1 - share) * (high - low) * (high - typical));
}

/** One step as it is played: what it waits for, and the hours it keeps to. */
type Part = {
  readonly step: Step;
  /** Numbers of the parts that must be over. */
  readonly after: readonly number[];
  /** Numbers of those that begin so soon after it that they lie in the same hours. */
  readonly with: readonly number[];
  readonly closed: PlanHours['work'];
  /** A rest that began before the work is over then, whenever the step begins, s after the start. */
  readonly overS?: number;
};

/** A plan made ready to be played many times. */
export type Game = { readonly parts: readonly Part[] };

/** One play: when each part begins and is over, s after the start. */
export type Played = { readonly fromS: Float64Array; readonly toS: Float64Array };

function hoursFor(step: Step, hours: PlanHours): PlanHours['work'] {
  if (step.attention !== 'none' && step.durationS.typical <= WORKDAY_S) return hours.work;
  return runsThroughRestDays(step) ? [] : hours.rests;
}

/**
 * The order of a plan as a net: a step waits for what it needs and, of all that holds the same
 * hands, kettles, circuits or places, for what was planned to be over before it. Steps that were
 * not ordered overlap in the plan, so that together they never hold more than there is.
 */
export function gameOf(plan: Plan): Game {
  const { startS } = plan.timetable;
  const hours = hoursOf(plan);
  const at = ({ id }: Step): number => startS[id] ?? 0;
  const steps = plan.steps
    .filter(({ id }) => startS[id] !== undefined)
    .map((step, n) => ({ step, n }))
    .toSorted((a, b) => at(a.step) - at(b.step) || a.n - b.n)
    .map(({ step }) => step);
  const number = new Map(steps.map(({ id }, n) => [id, n]));
  const parts = steps.map((step, n): Part => {
    const needed = new Set(step.needs.flatMap(({ step: id }) => number.get(id) ?? []));
    const after = steps.flatMap((earlier, m) => {
      const isBefore = m < n && at(earlier) + earlier.durationS.typical <= at(step) + TOUCH_S;
      return needed.has(m) || (isBefore && shares(step, earlier)) ? [m] : [];
    });
    const soon = steps.flatMap((later, m) =>
      later.needs.some((need) => need.step === step.id && need.withinS !== undefined) ? [m] : [],
    );
    const closed = hoursFor(step, hours);
    return step.lastHotWallMs === undefined
      ? { step, after, with: soon, closed }
      : { step, after, with: soon, closed, overS: at(step) + step.durationS.typical };
  });
  return { parts };
}

/**
 * One play of a plan. All work of one kind is equally slow in one play: whoever cleans one thing
 * slowly cleans the next one slowly too.
 */
export function play({ parts }: Game, random: () => number): Played {
  const share = new Map<string, number>();
  const lengths = parts.map(({ step }) => {
    const drawn = share.get(step.kind) ?? random();
    share.set(step.kind, drawn);
    return ofBand(step.durationS, drawn);
  });
  const fromS = new Float64Array(parts.length);
  const toS = new Float64Array(parts.length);
  parts.forEach((part, n) => {
    const lengthS = lengths[n] ?? 0;
    let readyS = 0;
    for (const m of part.after) readyS = Math.max(readyS, toS[m] ?? 0);
    const wholeS = part.with.reduce((sum, m) => sum + (lengths[m] ?? 0), lengthS);
    const startS = firstOpenS(part.closed, readyS, wholeS);
    fromS[n] = startS;
    toS[n] = part.overS === undefined ? startS + lengthS : Math.max(startS, part.overS);
  });
  return { fromS, toS };
}
