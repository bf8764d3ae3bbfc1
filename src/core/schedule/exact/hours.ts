import type { ClosedTicks } from '../model/closed-hours.ts';

/**
 * Starts that closed hours forbid to work of one length, as [first, next free,
 * first, next free, …] in whole ticks; gaps too short for it are closed too.
 */
export function forbiddenStarts(closed: ClosedTicks, duration: number): readonly number[] {
  const spans: number[] = [];
  for (let k = 0; k < closed.length; k += 2) {
    const first = closed[k]! - duration + 1;
    const free = closed[k + 1]!;
    if (free <= first) continue;
    const last = spans.length - 1;
    if (last > 0 && first <= spans[last]!) spans[last] = Math.max(spans[last]!, free);
    else spans.push(first, free);
  }
  return spans;
}

/** How much open time lies before a moment, and the moments before which so much lies. */
export class OpenTime {
  private readonly closed: ClosedTicks;
  /** Open time before the beginning of each closed span. */
  private readonly openBefore: readonly number[];

  constructor(closed: ClosedTicks) {
    this.closed = closed;
    const before: number[] = [];
    let shut = 0;
    for (let k = 0; k < closed.length; k += 2) {
      before.push(closed[k]! - shut);
      shut += closed[k + 1]! - closed[k]!;
    }
    this.openBefore = before;
  }

  /** The last span that begins at or before a moment, or −1. */
  private spanAt(time: number): number {
    let low = -1;
    let high = this.openBefore.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.closed[2 * middle]! <= time) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  /** Open time up to a moment. */
  until(time: number): number {
    const span = this.spanAt(time);
    if (span < 0) return time;
    return this.openBefore[span]! + Math.max(0, time - this.closed[2 * span + 1]!);
  }

  /** Closed spans that begin before a moment of open time, or at it too. */
  spansBefore(open: number, inclusive: boolean): number {
    let low = 0;
    let high = this.openBefore.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      const at = this.openBefore[middle]!;
      if (at < open || (inclusive && at === open)) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** The first moment up to which at least so much time was open. */
  earliest(open: number): number {
    let low = -1;
    let high = this.openBefore.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.openBefore[middle]! < open) low = middle;
      else high = middle - 1;
    }
    return low < 0 ? open : this.closed[2 * low + 1]! + open - this.openBefore[low]!;
  }

  /** The last moment up to which no more time was open. */
  latest(open: number): number {
    let low = -1;
    let high = this.openBefore.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.openBefore[middle]! <= open) low = middle;
      else high = middle - 1;
    }
    return low < 0 ? open : this.closed[2 * low + 1]! + open - this.openBefore[low]!;
  }
}
