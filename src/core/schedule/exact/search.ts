import { Atoms, Bounds, REASON } from './bounds.ts';
import { Clauses } from './clauses.ts';
import { Energy } from './energy.ts';
import { Learner } from './learn.ts';
import { loadsOf } from './loads.ts';
import { Orders } from './orders.ts';
import { Overlaps } from './overlaps.ts';
import { clashesUntilRestart } from './restarts.ts';
import { Ties } from './ties.ts';
import { Twins } from './twins.ts';
import { excludes, type Model } from '../model/model.ts';

/** After a clash what it was about counts for more than what was before it, by this factor. */
const GROWTH = 1.05;
/** Pairs that exclude each other are made at once up to so many; others when they meet. */
const MOST_PAIRS = 3000;
/** Share of the steps after which the bound is raised instead of the finish lowered. */
const LOWERING_SHARE = 0.6;
/** Share of the steps that one try for the bound may take. */
const TRY_SHARE = 0.08;
/** Share of the steps within which the first clash, or a schedule, is met; less for more activities. */
const FIRST = { share: 0.1, activities: 200 };
/** How often all bounds may grow in one go before it is looked for why. */
const CALM_ROUNDS = 4;

export type Steps = { left: number };

/** What the search knows: the best starts it found, when any, and the finish that nothing goes below. */
export type Proof = {
  readonly start?: Float64Array;
  readonly finish: number;
  readonly lower: number;
};

/**
 * Branch and bound with learning. Orders of activities that cannot all run
 * together are chosen where their earliest starts meet; every clash becomes a
 * clause that is never run into again. When the earliest starts meet nowhere
 * they are a schedule, and the next must finish earlier.
 */
export class ExactSearch {
  private readonly model: Model;
  private readonly bounds: Bounds;
  private readonly ties: Ties;
  private readonly twins: Twins;
  private readonly clauses: Clauses;
  private readonly orders: Orders;
  private readonly overlaps: Overlaps;
  private readonly energies: readonly Energy[];
  /** By activity: the loads it is part of. */
  private readonly energiesOf: readonly (readonly Energy[])[];
  private readonly learner: Learner;
  private readonly steps: Steps;
  private readonly grid: number;
  /** The variable of the finish. */
  private readonly end: number;
  private weight = 1;
  private lower: number;
  private finish: number;
  private start: Float64Array | undefined;
  /** Finish that is tried at level 1; infinite: only an earlier one than known. */
  private target = Infinity;
  private triedDown: number;

  /**
   * @param lower bound known, in ticks
   * @param finish known, in ticks
   * @param grid step that all times are multiples of, in ticks
   */
  constructor(model: Model, lower: number, finish: number, grid: number, steps: Steps) {
    const { count, duration } = model;
    this.model = model;
    this.grid = grid;
    this.steps = steps;
    this.lower = lower;
    this.finish = finish;
    this.triedDown = finish;
    this.end = count;
    this.bounds = new Bounds(count + 1, model.holes);
    this.ties = new Ties(this.bounds);
    this.twins = new Twins(model);
    this.clauses = new Clauses(this.bounds);
    this.orders = new Orders(model, this.bounds, this.ties, this.clauses, this.twins, grid);
    this.overlaps = new Overlaps(model, this.bounds, this.orders);
    const atoms = new Atoms();
    this.energies = loadsOf(model).map((load) => new Energy(load, this.bounds, duration, atoms));
    this.energiesOf = Array.from(duration, (_, i) =>
      this.energies.filter((energy) => energy.concerns(i)),
    );
    this.learner = new Learner(this.bounds, this.ties, this.clauses, count + 1, (variable) => {
      this.orders.activity[variable]! += this.weight;
    });
  }

  /** Searches until the best finish is proven or the steps are used up. */
  run(): Proof {
    const { bounds, end } = this;
    const open =
      this.setUp() &&
      this.raise() < this.finish &&
      bounds.raise(2 * end, this.lower, REASON.none, 0, 0) &&
      this.propagate() &&
      this.search();
    return {
      ...(this.start && { start: this.start }),
      finish: this.finish,
      lower: open ? this.lower : this.finish,
    };
  }

  /**
   * Raises the bound by what follows from a finish without any choice: one that
   * leads to a clash is too early (destructive improvement: Klein & Scholl,
   * European Journal of Operational Research 112 (1999) 322).
   * @returns the bound, in ticks
   */
  private raise(): number {
    const { bounds, end, grid } = this;
    let low = Math.max(this.lower, bounds.bound[2 * end]!);
    let high = this.finish;
    // What clashes with a late finish clashes with every earlier one, so most bounds that stay are known at once.
    if (!this.misses(low)) high = low;
    while (low < high && this.steps.left > 0) {
      const middle = low + Math.floor((high - low) / grid / 2) * grid;
      if (this.misses(middle)) low = middle + grid;
      else high = middle;
    }
    this.lower = low;
    return low;
  }

  /** Whether a finish leads to a clash by itself. */
  private misses(finish: number): boolean {
    const { bounds, end } = this;
    bounds.levels.push(bounds.side.length);
    const holds = bounds.raise(2 * end + 1, -finish, REASON.none, 0, 0) && this.propagate();
    bounds.undo(0);
    return !holds;
  }

  /** All that always holds. @returns false when nothing finishes earlier */
  private setUp(): boolean {
    const { model, bounds, ties, end } = this;
    const { count, earliest, latest, duration } = model;
    const raise = (side: number, value: number) => bounds.raise(side, value, REASON.none, 0, 0);
    bounds.bound[2 * end] = this.lower;
    bounds.bound[2 * end + 1] = this.grid - this.finish;
    for (let i = 0; i < count; i++) {
      if (!raise(2 * i, earliest[i]!) || !raise(2 * i + 1, -latest[i]!)) return false;
    }
    for (const { from, to, weight } of model.arcs) if (!ties.add(from, to, weight)) return false;
    for (const [one, next] of this.twins.pairs) {
      const apart = excludes(model, one, next) ? duration[one]! : 0;
      if (!ties.add(one, next, apart)) return false;
    }
    for (let i = 0; i < count; i++) {
      if (this.isLast(i) && !ties.add(i, end, duration[i]!)) return false;
    }
    return this.propagate() && this.orders.introduceExcluding(MOST_PAIRS) && this.propagate();
  }

  /** Whether no lag makes another activity end after this one. */
  private isLast(i: number): boolean {
    const { count, lag, duration } = this.model;
    for (let j = 0; j < count; j++) {
      const beyond = lag[i * count + j]! + duration[j]! - duration[i]!;
      if (j !== i && (beyond > 0 || (beyond === 0 && j > i))) return false;
    }
    return true;
  }

  private propagate(): boolean {
    const { bounds, ties, clauses, steps } = this;
    // Bounds that grow again and again may be pushing each other.
    let calm = CALM_ROUNDS * this.model.count;
    for (;;) {
      for (let side = bounds.next(); side >= 0; side = bounds.next()) {
        if (--calm < 0) {
          const most = 2 * this.model.count + 2;
          steps.left -= most;
          calm = most;
          if (!ties.chase(side, most)) return false;
        }
        steps.left -= 1 + ties.workOf(side) + clauses.workOf(side);
        for (const energy of this.energiesOf[side >> 1] ?? []) energy.isStale = true;
        if (!ties.propagate(side) || !clauses.propagate(side)) return false;
      }
      for (const energy of this.energies) {
        if (!energy.isStale) continue;
        energy.isStale = false;
        steps.left -= energy.work;
        if (!energy.propagate()) return false;
        if (bounds.queue.length > 0) break;
      }
      if (bounds.queue.length === 0) return true;
    }
  }

  /** @returns false when nothing finishes earlier than what is known */
  private search(): boolean {
    const all = this.steps.left;
    const first = FIRST.share * Math.min(1, (FIRST.activities / this.model.count) ** 2);
    let clashes = 0;
    let restarts = 1;
    let left = clashesUntilRestart(restarts);
    let tryUntil = -Infinity;
    let holds = true;
    while (this.steps.left > 0) {
      // Before the first clash or schedule nothing is learnt: so large a problem is beyond the steps.
      if (clashes === 0 && !this.start && this.steps.left < (1 - first) * all) {
        this.steps.left = 0;
        return true;
      }
      if (!holds) {
        clashes++;
        left--;
        this.weight *= GROWTH;
        const taught = this.learn();
        if (taught === 'nothing holds') return false;
        holds = taught === 'holds' && this.propagate();
        continue;
      }
      if (left <= 0) {
        this.bounds.undo(0);
        left = clashesUntilRestart(++restarts);
        holds = this.propagate();
        if (!holds) continue;
      }
      if (this.bounds.levels.length === 0) {
        if (!this.lift()) return false;
        if (this.steps.left < (1 - LOWERING_SHARE) * all) {
          tryUntil = this.aim(tryUntil, TRY_SHARE * all);
        }
      } else if (this.target < Infinity && this.steps.left < tryUntil) {
        this.bounds.undo(0);
        continue;
      }
      holds = this.step() && this.propagate();
    }
    return true;
  }

  /** Takes over the bound that follows without any choice, on the grid. @returns false on a clash */
  private lift(): boolean {
    const { bounds, end, grid } = this;
    this.lower = Math.max(this.lower, Math.ceil(bounds.bound[2 * end]! / grid) * grid);
    return bounds.raise(2 * end, this.lower, REASON.none, 0, 0);
  }

  /** Chooses the finish to try for. */
  private aim(tryUntil: number, share: number): number {
    const settled = this.target < this.lower || this.target === Infinity;
    if (!settled && this.steps.left >= tryUntil) return tryUntil;
    if (!settled) this.triedDown = this.target;
    // All finishes were tried in vain: once more, with what was learnt.
    if (this.triedDown <= this.lower) this.triedDown = this.finish;
    const top = Math.min(this.triedDown, this.finish) - this.grid;
    this.target = this.lower + Math.floor((top - this.lower) / this.grid / 2) * this.grid;
    return this.steps.left - share;
  }

  /** One choice, one thing learnt about what meets, or a schedule. @returns false on a clash */
  private step(): boolean {
    const { bounds, end } = this;
    if (bounds.levels.length === 0 && this.target < Infinity) {
      bounds.levels.push(bounds.side.length);
      return bounds.raise(2 * end + 1, -this.target, REASON.none, 0, 0);
    }
    this.steps.left -= this.overlaps.work;
    const obstacle = this.overlaps.next();
    if (!obstacle) return this.take();
    if (obstacle.kind === 'set') {
      const { members } = obstacle;
      return members.length > 2
        ? this.orders.forbid(members)
        : this.orders.introduce(members[0]!, members[1]!);
    }
    bounds.levels.push(bounds.side.length);
    const { side, value } = obstacle.literal;
    return bounds.raise(side, value, REASON.none, 0, 0);
  }

  /** The earliest starts are a schedule: the next finishes earlier. */
  private take(): boolean {
    const { bounds, model } = this;
    this.start = Float64Array.from({ length: model.count }, (_, i) => bounds.bound[2 * i]!);
    this.finish = this.start.reduce((last, at, i) => Math.max(last, at + model.duration[i]!), 0);
    bounds.undo(0);
    return bounds.raise(2 * this.end + 1, this.grid - this.finish, REASON.none, 0, 0);
  }

  /** Goes back to where a clash would have been known, and knows it. */
  private learn(): 'holds' | 'clashes' | 'nothing holds' {
    const { clause, level, work } = this.learner.learn();
    this.steps.left -= 8 * work;
    if (clause.side.length === 0) return 'nothing holds';
    this.bounds.undo(level);
    return this.clauses.add(clause) ? 'holds' : 'clashes';
  }
}
