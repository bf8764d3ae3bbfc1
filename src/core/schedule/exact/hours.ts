import type { ClosedTicks } from '../model/closed-hours.ts';

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
