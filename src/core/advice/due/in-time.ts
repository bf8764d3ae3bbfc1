import { MS_PER_SECOND } from '../../units/index.ts';
import type { Plan, PlanOptions } from '../../plan/index.ts';

/** What must be done by when: all of it, or the purging alone. s after the start of the plan. */
export type Due = { readonly byS: number; readonly of: 'purge' | 'all' };

/** The hour a plan is held against; none where there is none. */
export function dueOf({ days }: Plan, options: PlanOptions): Due | undefined {
  if (options.purgeByS !== undefined) return { byS: options.purgeByS, of: 'purge' };
  if (options.deadlineS !== undefined) return { byS: options.deadlineS, of: 'all' };
  if (!days?.deadline) return undefined;
  const byS = (days.deadline.atWallMs - days.startWallMs) / MS_PER_SECOND;
  return { byS, of: 'purge' };
}

/** When what must be done is done, s after the start. */
export function doneS({ steps, timetable }: Plan, of: Due['of']): number {
  if (of === 'all') return timetable.finishS;
  const ends = steps
    .filter(({ phase }) => phase === 'purge')
    .map(({ id, durationS }) => (timetable.startS[id] ?? 0) + durationS.typical);
  return Math.max(0, ...ends);
}

/** By how much a plan is late, s; 0 where it is in time or nothing is due. */
export function lateS(plan: Plan, options: PlanOptions): number {
  const due = dueOf(plan, options);
  return due ? Math.max(0, doneS(plan, due.of) - due.byS) : 0;
}
