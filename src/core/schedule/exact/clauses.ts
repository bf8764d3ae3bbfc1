import { REASON, type Atoms, type Bounds, type Side } from './bounds.ts';

/** Clauses: of the atoms of each at least one holds. Two of each are watched. */
export class Clauses {
  private readonly sides: Side[][] = [];
  private readonly values: number[][] = [];
  /** By side: clauses in which a watched atom turns false when that side grows. */
  private readonly watching: number[][] = [];
  private readonly bounds: Bounds;

  constructor(bounds: Bounds) {
    this.bounds = bounds;
  }

  private isFalse(side: Side, value: number): boolean {
    return this.bounds.bound[side ^ 1]! >= 1 - value;
  }

  private watch(side: Side, clause: number): void {
    (this.watching[side ^ 1] ??= []).push(clause);
  }

  /** The level at which an atom turned false; more than any: it has not. */
  private falseSince(side: Side, value: number): number {
    if (!this.isFalse(side, value)) return Infinity;
    const entry = this.bounds.entryOf(side ^ 1, 1 - value);
    return entry < 0 ? 0 : this.bounds.level[entry]!;
  }

  /** A new clause; what it leaves of one atom is raised. @returns false on a clash */
  add({ side, value }: Atoms): boolean {
    const order = side
      .map((one, at) => ({ side: one, value: value[at]!, since: this.falseSince(one, value[at]!) }))
      .toSorted((a, b) => (a.since === b.since ? 0 : b.since > a.since ? 1 : -1));
    const clause = this.sides.length;
    this.sides.push(order.map((one) => one.side));
    this.values.push(order.map((one) => one.value));
    const [first, second] = order;
    if (first) this.watch(first.side, clause);
    if (second) this.watch(second.side, clause);
    if (second && second.since === Infinity) return true;
    return this.force(clause);
  }

  /** The first atom is the only one that may still hold. */
  private force(clause: number): boolean {
    const sides = this.sides[clause]!;
    const values = this.values[clause]!;
    if (sides.length > 0 && !this.isFalse(sides[0]!, values[0]!)) {
      return this.bounds.raise(sides[0]!, values[0]!, REASON.clause, clause, 0);
    }
    const { clash } = this.bounds;
    clash.clear();
    sides.forEach((side, at) => clash.add(side ^ 1, 1 - values[at]!));
    return false;
  }

  /** Looks at the clauses that the growth of one side may have left with one atom. */
  propagate(grown: Side): boolean {
    const list = this.watching[grown];
    if (!list) return true;
    let kept = 0;
    let holds = true;
    for (let k = 0; k < list.length; k++) {
      const clause = list[k]!;
      if (!holds) list[kept++] = clause;
      else if (!this.moveWatch(clause, grown)) {
        list[kept++] = clause;
        holds = this.check(clause, grown);
      }
    }
    list.length = kept;
    return holds;
  }

  /** @returns whether the clause is watched elsewhere from now on */
  private moveWatch(clause: number, grown: Side): boolean {
    const sides = this.sides[clause]!;
    const values = this.values[clause]!;
    const { bound } = this.bounds;
    const own = sides.length > 1 && (sides[1]! ^ 1) === grown ? 1 : 0;
    if (!this.isFalse(sides[own]!, values[own]!)) return false;
    if (sides.length > 1 && bound[sides[1 - own]!]! >= values[1 - own]!) return false;
    for (let k = 2; k < sides.length; k++) {
      const side = sides[k]!;
      const value = values[k]!;
      if (this.isFalse(side, value)) continue;
      sides[k] = sides[own]!;
      values[k] = values[own]!;
      sides[own] = side;
      values[own] = value;
      this.watch(side, clause);
      return true;
    }
    return false;
  }

  /** Raises what the clause leaves of one atom. */
  private check(clause: number, grown: Side): boolean {
    const sides = this.sides[clause]!;
    const values = this.values[clause]!;
    const own = sides.length > 1 && (sides[1]! ^ 1) === grown ? 1 : 0;
    if (!this.isFalse(sides[own]!, values[own]!)) return true;
    if (sides.length > 1 && this.bounds.bound[sides[1 - own]!]! >= values[1 - own]!) return true;
    if (own === 0 && sides.length > 1) {
      [sides[0], sides[1]] = [sides[1]!, sides[0]!];
      [values[0], values[1]] = [values[1]!, values[0]!];
    }
    return this.force(clause);
  }

  /** Clauses that watch a side, as work done. */
  workOf(side: Side): number {
    return this.watching[side]?.length ?? 0;
  }

  /** The opposites of all atoms of a clause but that on one side. */
  explain(clause: number, raised: Side, into: Atoms): void {
    const sides = this.sides[clause]!;
    const values = this.values[clause]!;
    for (let k = 0; k < sides.length; k++) {
      if (sides[k] !== raised) into.add(sides[k]! ^ 1, 1 - values[k]!);
    }
  }
}
