import { REASON, type Bounds, type Side } from './bounds.ts';

/** No literal: the tie always holds. */
const ALWAYS = -1;

/**
 * Ties between starts: `to` starts at least `weight` after `from`, always or
 * while a literal holds. They raise lower bounds forwards and push upper bounds
 * back; a tie that cannot be kept makes its literal false.
 */
export class Ties {
  readonly from: number[] = [];
  readonly to: number[] = [];
  readonly weight: number[] = [];
  /** The side that must be at least `literalAt` for the tie to hold. */
  readonly literal: Side[] = [];
  readonly literalAt: number[] = [];
  /** Ties that a side passes its growth on by, and those that a side switches on. */
  private readonly touched: number[][] = [];
  private readonly switched: number[][] = [];
  private readonly bounds: Bounds;

  constructor(bounds: Bounds) {
    this.bounds = bounds;
  }

  private static put(lists: number[][], side: Side, tie: number): void {
    (lists[side] ??= []).push(tie);
  }

  /** A new tie. @returns false on a clash */
  add(from: number, to: number, weight: number, literal = ALWAYS, literalAt = 0): boolean {
    const tie = this.from.length;
    this.from.push(from);
    this.to.push(to);
    this.weight.push(weight);
    this.literal.push(literal);
    this.literalAt.push(literalAt);
    Ties.put(this.touched, 2 * from, tie);
    Ties.put(this.touched, 2 * to + 1, tie);
    if (literal >= 0) Ties.put(this.switched, literal, tie);
    return this.visit(tie);
  }

  /** Passes on one tie from both of its ends. */
  private visit(tie: number): boolean {
    const { bound } = this.bounds;
    const from = this.from[tie]!;
    const to = this.to[tie]!;
    const weight = this.weight[tie]!;
    const literal = this.literal[tie]!;
    const early = bound[2 * from]! + weight;
    const late = bound[2 * to + 1]! + weight;
    if (literal < 0 || bound[literal]! >= this.literalAt[tie]!) {
      return (
        this.bounds.raise(2 * to, early, REASON.tie, tie, 0) &&
        this.bounds.raise(2 * from + 1, late, REASON.tie, tie, 0)
      );
    }
    if (early + bound[2 * to + 1]! <= 0) return true;
    const off = 1 - this.literalAt[tie]!;
    return this.bounds.raise(literal ^ 1, off, REASON.broken, tie, early - weight);
  }

  /** Passes on the growth of one side. @returns false on a clash */
  propagate(side: Side): boolean {
    for (const tie of this.touched[side] ?? []) if (!this.visit(tie)) return false;
    for (const tie of this.switched[side] ?? []) if (!this.visit(tie)) return false;
    return true;
  }

  /** The tie by which a side grew last, or −1 when it grew otherwise. */
  private lastTie(side: Side): number {
    const entry = this.bounds.head[side]!;
    return entry >= 0 && this.bounds.reason[entry] === REASON.tie ? this.bounds.data[entry]! : -1;
  }

  /** The side whose growth a tie passed on to another. */
  sourceOf(tie: number, side: Side): Side {
    return (side & 1) === 0 ? 2 * this.from[tie]! : 2 * this.to[tie]! + 1;
  }

  /**
   * Ties that push each other on without end: where the growth of a side leads
   * back into a ring of ties, their literals cannot all hold.
   * @param most how many sides there are: whoever goes back further is in a ring
   * @returns false on a clash
   */
  chase(start: Side, most: number): boolean {
    let inRing = start;
    for (let link = 0; link < most; link++) {
      const tie = this.lastTie(inRing);
      if (tie < 0) return true;
      inRing = this.sourceOf(tie, inRing);
    }
    const { clash } = this.bounds;
    clash.clear();
    let side = inRing;
    let gain = 0;
    do {
      const tie = this.lastTie(side);
      gain += this.weight[tie]!;
      if (this.literal[tie]! >= 0) clash.add(this.literal[tie]!, this.literalAt[tie]!);
      side = this.sourceOf(tie, side);
    } while (side !== inRing);
    return gain <= 0;
  }

  /** Ties that a side touches, as work done. */
  workOf(side: Side): number {
    return (this.touched[side]?.length ?? 0) + (this.switched[side]?.length ?? 0);
  }
}
