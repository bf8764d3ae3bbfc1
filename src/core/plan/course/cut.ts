import type { Message } from '../../messages/index.ts';
import { MS_PER_SECOND } from '../../units/index.ts';
import type { Plan, Step } from '../model/index.ts';

/** The hour after which a run begins no purging, and what of the plan that leaves undone. */
export type Cut = {
  readonly name: Message;
  /** s after the start. */
  readonly atS: number;
  /** Steps that purge and would not be over by then. */
  readonly steps: ReadonlySet<string>;
  /** Fixtures of those steps, in the order of the kitchen: they are closed up instead. */
  readonly fixtures: readonly string[];
};

/** Times of a timetable are whole milliseconds. */
const TOUCH_S = 0.01;

/** Where a plan runs past the hour after which nothing is purged; undefined where it keeps it. */
export function cutOf({ kitchen, steps, timetable, days }: Plan): Cut | undefined {
  const { deadline } = days ?? {};
  if (!days || !deadline) return undefined;
  const { name, atWallMs } = deadline.hard ?? deadline;
  const atS = (atWallMs - days.startWallMs) / MS_PER_SECOND;
  const endS = ({ id, durationS }: Step) => (timetable.startS[id] ?? 0) + durationS.typical;
  const over = steps.filter(
    (step) =>
      step.phase === 'purge' &&
      timetable.startS[step.id] !== undefined &&
      endS(step) > atS + TOUCH_S,
  );
  if (over.length === 0) return undefined;
  const fixtures = kitchen.fixtures
    .map(({ id }) => id)
    .filter((id) => over.some(({ fixture }) => fixture === id));
  return { name, atS, steps: new Set(over.map(({ id }) => id)), fixtures };
}
