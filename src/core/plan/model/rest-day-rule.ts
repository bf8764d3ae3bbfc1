import { MS_PER_SECOND } from '../../units/index.ts';
import type { Plan, RestDay } from './plan.ts';
import type { Step } from './step.ts';

/** May it lie in a rest day once begun? Rests and cool-downs, which go on without anybody; nothing hot that must be turned off. */
export function runsThroughRestDays(step: Step): boolean {
  if (step.attention !== 'none') return false;
  if (step.kind === 'rest' || step.startsBy === 'chain') return true;
  return step.stages.every(({ hazards }) => hazards.length === 0);
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
