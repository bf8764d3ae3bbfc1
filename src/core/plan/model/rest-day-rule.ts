import { MS_PER_SECOND } from '../../units/index.ts';
import type { Plan, RestDay } from './plan.ts';
import type { Step } from './step.ts';

/**
 * The one rule of what may lie in a rest day once begun, for planning and for the run: rests and
 * cool-downs, which measure what goes on without anybody, and waits with no hands, no eyes and no heat.
 */
export function runsThroughRestDays({
  kind,
  attention,
  stages,
}: Pick<Step, 'kind' | 'attention' | 'stages'>): boolean {
  if (attention !== 'none') return false;
  if (kind === 'rest' || kind === 'cool') return true;
  return stages.every(({ hazards }) => hazards.length === 0);
}

/** Times of a timetable are whole milliseconds; what touches does not overlap. */
const TOUCH_S = 0.01;

/** The rest day that a step of the timetable would break, if there is one. */
export function restDayBroken({ days, timetable }: Plan, step: Step): RestDay | undefined {
  const startS = timetable.startS[step.id];
  if (!days || startS === undefined || runsThroughRestDays(step)) return undefined;
  const endS = startS + step.durationS.typical;
  const toS = (atWallMs: number): number => (atWallMs - days.startWallMs) / MS_PER_SECOND;
  return days.restDays.find(
    ({ fromWallMs, toWallMs }) =>
      startS < toS(toWallMs) - TOUCH_S && endS > toS(fromWallMs) + TOUCH_S,
  );
}
