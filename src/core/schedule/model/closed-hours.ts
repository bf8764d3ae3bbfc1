import type { Calendar } from '../problem/types.ts';

/** ClosedTicks spans as [from, to, from, to, …]: sorted, apart, in ticks. */
export type ClosedTicks = readonly number[];

/** Sorts and joins closed spans; an empty span closes nothing. */
export function closedSpans(calendar: Calendar, toTicks: (seconds: number) => number): ClosedTicks {
  const spans = calendar.closed
    .map(({ fromS, toS }) => [toTicks(fromS), toTicks(toS)] as const)
    .filter(([from, to]) => to > from)
    .toSorted((a, b) => a[0] - b[0]);
  const joined: number[] = [];
  for (const [from, to] of spans) {
    const last = joined.at(-1);
    if (last !== undefined && from <= last) joined[joined.length - 1] = Math.max(last, to);
    else joined.push(from, to);
  }
  return joined;
}

/** When `work` ticks of open time have passed since `start`. */
export function afterOpenTime(closed: ClosedTicks, start: number, work: number): number {
  let at = start;
  let left = work;
  for (let k = 0; k < closed.length; k += 2) {
    const from = closed[k]!;
    const to = closed[k + 1]!;
    if (to <= at) continue;
    if (from > at) {
      if (from - at >= left) return at + left;
      left -= from - at;
    }
    at = to;
  }
  return at + left;
}
