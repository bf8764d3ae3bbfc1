/** A row of chances that is the same for the same seed (mulberry32, public domain). */
export class Dice {
  private state: number;

  constructor(seed: number) {
    this.state = (seed * 0x9e3779b9) >>> 0;
  }

  /** 0 up to, not with, 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), this.state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }

  chance(share: number): boolean {
    return this.next() < share;
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.next();
  }

  whole(low: number, high: number): number {
    return Math.floor(this.between(low, high + 1));
  }

  pick<T>(from: readonly T[]): T | undefined {
    return from[Math.floor(this.next() * from.length)];
  }

  /** One of these by weight; those of weight 0 never. */
  weighed<T>(from: readonly (readonly [T, number])[]): T | undefined {
    const all = from.reduce((sum, [, weight]) => sum + weight, 0);
    let left = this.next() * all;
    return from.find(([, weight]) => (left -= weight) < 0)?.[0];
  }
}
