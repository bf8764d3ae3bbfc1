/**
 * When a growing set of work is over at the earliest, in open time: a binary
 * tree over the work in the order of its heads (Vilím, Constraint Programming
 * 2004, Lecture Notes in Computer Science 3258, 62).
 */
export class Envelope {
  private readonly leaves: number;
  /** Energy below each node, and the latest of each head with all energy behind it. */
  private readonly energy: Float64Array;
  private readonly latest: Float64Array;

  constructor(count: number) {
    this.leaves = 2 ** Math.ceil(Math.log2(Math.max(1, count)));
    this.energy = new Float64Array(2 * this.leaves);
    this.latest = new Float64Array(2 * this.leaves);
  }

  clear(): void {
    this.energy.fill(0);
    this.latest.fill(-Infinity);
  }

  /** Adds the work at a place in the order of heads. @returns when all of it is over */
  add(place: number, head: number, busy: number): number {
    const { energy, latest } = this;
    let node = this.leaves + place;
    energy[node] = busy;
    latest[node] = head + busy;
    for (node >>= 1; node > 0; node >>= 1) {
      const right = 2 * node + 1;
      energy[node] = energy[right - 1]! + energy[right]!;
      latest[node] = Math.max(latest[right]!, latest[right - 1]! + energy[right]!);
    }
    return latest[1]!;
  }
}
