import { Atoms, REASON, type Bounds } from './bounds.ts';
import type { Clauses } from './clauses.ts';
import type { Ties } from './ties.ts';

/** What a clash teaches. */
export type Lesson = {
  /** Of these at least one holds; the first is the one that was missed. None: nothing holds at all. */
  readonly clause: Atoms;
  /** The level at which the first would have been known. */
  readonly level: number;
  readonly work: number;
};

/**
 * Learns from a clash: goes back along the trail to the last single cause at
 * the deepest level (first unique implication point: Marques-Silva & Sakallah,
 * IEEE Transactions on Computers 48 (1999) 506), over bounds of starts as lazy
 * clause generation does (Schutt, Feydy, Stuckey & Wallace, Constraints 16
 * (2011) 250).
 */
export class Learner {
  private readonly bounds: Bounds;
  private readonly ties: Ties;
  private readonly clauses: Clauses;
  /** By entry of the trail: the value needed of its side. */
  private readonly needed = new Map<number, number>();
  private readonly causes = new Atoms();
  /** The first variable that says an order. */
  private readonly orders: number;
  private readonly onAtom: (variable: number) => void;

  constructor(
    bounds: Bounds,
    ties: Ties,
    clauses: Clauses,
    orders: number,
    onAtom: (variable: number) => void,
  ) {
    this.orders = orders;
    this.bounds = bounds;
    this.ties = ties;
    this.clauses = clauses;
    this.onAtom = onAtom;
  }

  /** The atoms by which an entry came to be at least `value`. */
  private explain(entry: number, value: number): Atoms {
    const { causes, bounds, ties } = this;
    causes.clear();
    const side = bounds.side[entry]!;
    const data = bounds.data[entry]!;
    switch (bounds.reason[entry]) {
      case REASON.tie: {
        causes.add(ties.sourceOf(data, side), value - ties.weight[data]!);
        if (ties.literal[data]! >= 0) causes.add(ties.literal[data]!, ties.literalAt[data]!);
        break;
      }
      case REASON.hours:
        causes.add(side, bounds.aux[entry]!);
        break;
      case REASON.clause:
        this.clauses.explain(data, side, causes);
        break;
      case REASON.broken: {
        const from = bounds.aux[entry]!;
        causes.add(2 * ties.from[data]!, from);
        causes.add(2 * ties.to[data]! + 1, 1 - ties.weight[data]! - from);
        break;
      }
      case REASON.listed: {
        const { pool } = bounds;
        const count = pool[data]!;
        for (let k = 0; k < count; k++)
          causes.add(pool[data + 1 + 2 * k]!, pool[data + 2 + 2 * k]!);
        break;
      }
    }
    return causes;
  }

  /** Notes that an atom is needed. @returns its level when it was not needed before, else 0 */
  private need(side: number, value: number): number {
    const entry = this.bounds.entryOf(side, value);
    if (entry < 0) return 0;
    const level = this.bounds.level[entry]!;
    if (level === 0) return 0;
    const known = this.needed.get(entry);
    if (known === undefined || known < value) this.needed.set(entry, value);
    return known === undefined ? level : 0;
  }

  private deepest({ side, value }: Atoms): number {
    let level = 0;
    for (let k = 0; k < side.length; k++) {
      const entry = this.bounds.entryOf(side[k]!, value[k]!);
      if (entry >= 0) level = Math.max(level, this.bounds.level[entry]!);
    }
    return level;
  }

  /** A start that everything hangs on teaches less than the order or the choice that set it. */
  private isChoice(entry: number): boolean {
    const { side, reason } = this.bounds;
    return side[entry]! >> 1 >= this.orders || reason[entry] === REASON.none;
  }

  /** What the clash of the bounds teaches; undone to the level that it belongs to. */
  learn(): Lesson {
    const { bounds, needed } = this;
    const { clash } = bounds;
    const level = this.deepest(clash);
    const clause = new Atoms();
    if (level === 0) return { clause, level: 0, work: clash.side.length };
    bounds.undo(level);
    needed.clear();
    let open = 0;
    let work = 0;
    const needAll = ({ side, value }: Atoms) => {
      work += side.length;
      for (let k = 0; k < side.length; k++) {
        if (this.need(side[k]!, value[k]!) === level) open++;
        this.onAtom(side[k]! >> 1);
      }
    };
    needAll(clash);
    let entry = bounds.side.length - 1;
    for (; ; entry--) {
      const value = needed.get(entry);
      if (value === undefined) continue;
      if (open === 1 && this.isChoice(entry)) break;
      needed.delete(entry);
      open--;
      needAll(this.explain(entry, value));
    }
    return this.lesson(entry, clause, work);
  }

  /** The clause of all that is needed, the entry `first` before the rest. */
  private lesson(first: number, clause: Atoms, work: number): Lesson {
    const { bounds, needed } = this;
    const strongest = new Map<number, number>();
    for (const [entry, value] of needed) {
      if (entry === first || this.follows(entry, value)) continue;
      const side = bounds.side[entry]!;
      strongest.set(side, Math.max(value, strongest.get(side) ?? -Infinity));
    }
    const own = bounds.side[first]!;
    clause.add(own ^ 1, 1 - needed.get(first)!);
    let level = 0;
    for (const [side, value] of strongest) {
      if (side === own) continue;
      clause.add(side ^ 1, 1 - value);
      level = Math.max(level, bounds.level[bounds.entryOf(side, value)]!);
    }
    return { clause, level, work: work + needed.size };
  }

  /** Whether what is needed besides makes an entry true by itself. */
  private follows(entry: number, value: number): boolean {
    if (this.bounds.reason[entry] === REASON.none) return false;
    const { side, value: least } = this.explain(entry, value);
    for (let k = 0; k < side.length; k++) {
      const cause = this.bounds.entryOf(side[k]!, least[k]!);
      if (cause < 0 || this.bounds.level[cause] === 0) continue;
      const known = this.needed.get(cause);
      if (known === undefined || known < least[k]!) return false;
    }
    return true;
  }
}
