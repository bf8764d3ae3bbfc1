import { civilDate, dayNumber, momentOf, wallTime } from '../../calendar/index.ts';
import { MS_PER_SECOND } from '../../units/index.ts';
import type { Plan, Step } from '../model/index.ts';

/** Work of one day of a plan. */
export type DayOfPlan = {
  /** Its noon, ms since 1970-01-01 UTC. */
  readonly noonWallMs: number;
  readonly handsS: number;
  readonly kettles: number;
  readonly litres: number;
};

function kettlesOf({ kind }: Step): number {
  return kind === 'pour' ? 1 : 0;
}

function litresOf({ kind, work }: Step): number {
  return kind === 'pour' && work.on === 'kettle' ? work.litres : 0;
}

/**
 * What each day asks for, by the day in which a step begins; days on which hands do nothing are 0.
 * @param startWallMs when the work begins, ms since 1970-01-01 UTC
 * @param zone IANA name of the zone whose midnights part the days
 */
export function daysOfPlan(
  { steps, timetable }: Plan,
  startWallMs: number,
  zone: string,
): readonly DayOfPlan[] {
  const dayAt = (atS: number): number =>
    dayNumber(wallTime(startWallMs + atS * MS_PER_SECOND, zone));
  const first = dayAt(0);
  const many = dayAt(timetable.finishS) - first + 1;
  const days = Array.from({ length: many }, (_, at) => ({
    noonWallMs: momentOf({ ...civilDate(first + at), hour: 12, minute: 0 }, zone),
    handsS: 0,
    kettles: 0,
    litres: 0,
  }));
  for (const step of steps) {
    const day = days[dayAt(timetable.startS[step.id] ?? 0) - first];
    if (!day) continue;
    if (step.attention === 'hands') day.handsS += step.durationS.typical;
    day.kettles += kettlesOf(step);
    day.litres += litresOf(step);
  }
  return days;
}
