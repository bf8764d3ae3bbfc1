import type { Message } from '../../messages/index.ts';
import { runsThroughRestDays, type Plan, type PlanOptions } from '../../plan/index.ts';
import { MS_PER_SECOND } from '../../units/index.ts';
import { dueOf } from '../due/in-time.ts';
import { SURE } from './sure.ts';
import { gameOf, play, sequence, type Game, type Played } from './play.ts';

/** How often in all plays something came in time, 0 to 1. */
type Chance = { readonly chance: number };

/** How sure the end of a plan is, by playing it with its own bands. s after the start. */
export type Sureness = {
  readonly plays: number;
  /** Half of all plays end by then. */
  readonly medianS: number;
  /** Nine plays of ten end by then. */
  readonly nineInTenS: number;
  readonly due?: Chance & { readonly byS: number };
  /** Rest days into whose beginning work may run: what was planned before them is over, or is not. */
  readonly restDays: readonly (Chance & LastBefore)[];
};

/** A day of rest, and what is planned last before it. */
type LastBefore = {
  readonly name: Message;
  readonly fromWallMs: number;
  readonly last: Message;
  /** Begun after this it may run into the day with slow hands; ms. */
  readonly beginByWallMs: number;
};

/** Enough for a chance of nine in ten to be known to about three in a hundred. */
const PLAYS = 400;
const SEED = 1;
/** Times of a timetable are whole milliseconds. */
const TOUCH_S = 0.01;

function countOf(plays: readonly Played[], holds: (one: Played) => boolean): number {
  return plays.filter(holds).length / plays.length;
}

/** The least end by which a share of all plays is over. */
function endBy(ends: readonly number[], share: number): number {
  const sorted = ends.toSorted((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length - 1e-9) - 1)] ?? 0;
}

function latest(toS: Float64Array, which: readonly boolean[]): number {
  return toS.reduce((last, end, n) => (which[n] ? Math.max(last, end) : last), 0);
}

function restDaysOf({ days, timetable }: Plan, { parts }: Game, plays: readonly Played[]) {
  if (!days) return [];
  return days.restDays.flatMap(({ name, fromWallMs }) => {
    const fromS = (fromWallMs - days.startWallMs) / MS_PER_SECOND;
    if (fromS <= 0 || fromS >= timetable.finishS) return [];
    const before = parts.map(
      ({ step }) => !runsThroughRestDays(step) && (timetable.startS[step.id] ?? Infinity) < fromS,
    );
    const last = parts
      .filter((_, n) => before[n])
      .map(({ step }) => step)
      .toSorted((a, b) => (timetable.startS[b.id] ?? 0) - (timetable.startS[a.id] ?? 0))[0];
    if (!last) return [];
    const chance = countOf(plays, ({ toS }) => latest(toS, before) <= fromS + TOUCH_S);
    const beginByWallMs = fromWallMs - last.durationS.high * MS_PER_SECOND;
    return [{ name, fromWallMs, chance, last: last.title, beginByWallMs }];
  });
}

/**
 * How sure the end of a plan is. The plan is played with lengths drawn from its bands, always in
 * its order and its hours; the same answer every time.
 * @param told deadlines that were told beside those of the plan's own days
 * @param plays how often, 1 or more
 */
export function surenessOf(plan: Plan, told: PlanOptions = {}, plays = PLAYS): Sureness {
  const game = gameOf(plan);
  const random = sequence(SEED);
  const played = Array.from({ length: plays }, () => play(game, random));
  const all = game.parts.map(() => true);
  const ends = played.map(({ toS }) => latest(toS, all));
  const due = dueOf(plan, told);
  const isDue = game.parts.map(({ step }) => due?.of !== 'purge' || step.phase === 'purge');
  return {
    plays,
    medianS: endBy(ends, 0.5),
    nineInTenS: endBy(ends, SURE),
    ...(due && {
      due: { byS: due.byS, chance: countOf(played, ({ toS }) => latest(toS, isDue) <= due.byS) },
    }),
    restDays: restDaysOf(plan, game, played),
  };
}
