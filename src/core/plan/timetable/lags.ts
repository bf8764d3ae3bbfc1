import type { After } from '../../schedule/index.ts';
import { SECONDS_PER_MINUTE } from '../../units/index.ts';
import { dryId } from '../context/step-ids.ts';
import { handworkS } from '../context/work-times.ts';
import type { Need, Step } from '../model/index.ts';

/**
 * From the start of a pour to its last hot drop, s: carried and poured by a slow
 * hand; the cold water comes after.
 */
function lastDropS({ kind, durationS }: Step): number {
  return kind === 'pour' ? Math.max(0, durationS.high - handworkS('cold').high) : 0;
}

/**
 * How long after its boil a step may be planned, s. Boiled water is fresh until
 * the last drop (I-23), so the pour itself is taken off.
 */
export function mostLagS(step: Step, withinS: number): number {
  return Math.max(0, withinS - lastDropS(step));
}

/** What was dried is poured while it is: longer ago than this a place is wet again, s: a judgement. */
const DRIED_S = 30 * SECONDS_PER_MINUTE;

/** Does the pour need this as the drying of its place? */
export function isDrying(step: Step, { step: id }: Need): boolean {
  return step.kind === 'pour' && step.fixture !== undefined && id === dryId(step.fixture);
}

/** A need as the schedule keeps it. */
export function lagOf(step: Step, need: Need): After {
  const { step: id, withinS } = need;
  // What waits for several begins with the last of them, which no single lag can say.
  if (step.startsBy === 'chain') return step.needs.length === 1 ? { id, maxLagS: 0 } : { id };
  if (isDrying(step, need)) return { id, maxLagS: DRIED_S };
  return withinS === undefined ? { id } : { id, maxLagS: mostLagS(step, withinS) };
}
