import type { Point } from '../../core/geometry/index.ts';
import type { Stretch } from '../../core/plan/index.ts';
import { pouredUpTo } from './pour-progress.ts';

/** Kettles that share one mark, and where it stands. */
export type LaneMark = { readonly first: number; readonly last: number; readonly at: Point };

/** A picture with more marks than this is not read, but counted: a judgement. */
const MOST_MARKS = 7;
/** Shares of a kettle's way at which its mark may stand, the nearest to its beginning first. */
const SHARES = Array.from({ length: 19 }, (_, i) => 0.02 + i * 0.05);

/** Kettles in runs that follow each other, so many at most. */
function inRuns(kettles: readonly number[]): readonly (readonly number[])[] {
  const size = Math.ceil(kettles.length / MOST_MARKS);
  const runs: number[][] = [];
  for (const kettle of kettles) {
    const run = runs.at(-1);
    if (run && run.length < size) run.push(kettle);
    else runs.push([kettle]);
  }
  return runs;
}

/**
 * Where the numbers of kettles stand: on their own way, near its beginning, clear of each other.
 * Where there are too many to read, those that follow each other share one mark.
 * @param halfM half the height of a mark, m; one of several kettles is 1.8 times as wide
 */
export function markPlaces(
  stretches: readonly Stretch[],
  kettles: readonly number[],
  halfM: number,
): readonly LaneMark[] {
  const marks: LaneMark[] = [];
  const halfWideM = ({ first, last }: Pick<LaneMark, 'first' | 'last'>) =>
    first === last ? halfM : halfM * 1.8;
  /** How far two marks are from touching, in halves of a mark; under 0 they lie over each other. */
  const gap = (a: LaneMark, b: LaneMark) =>
    Math.max(
      Math.abs(a.at[0] - b.at[0]) - halfWideM(a) - halfWideM(b),
      Math.abs(a.at[1] - b.at[1]) - 2 * halfM,
    ) / halfM;
  for (const run of inRuns(kettles)) {
    const [first] = run;
    if (first === undefined) continue;
    const own = stretches.filter(({ kettle }) => kettle === first);
    const tried = SHARES.flatMap((share): LaneMark[] => {
      const { at } = pouredUpTo(own, share);
      return at ? [{ first, last: run.at(-1) ?? first, at }] : [];
    });
    const least = (mark: LaneMark) => Math.min(...marks.map((one) => gap(mark, one)));
    const clear = tried.find((mark) => least(mark) > 0.15);
    const best = clear ?? tried.toSorted((a, b) => least(b) - least(a))[0];
    if (best) marks.push(best);
  }
  return marks;
}
