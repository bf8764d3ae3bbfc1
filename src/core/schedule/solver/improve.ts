import { flip, mirror, type Model } from '../model/model.ts';
import {
  generateSchedule,
  mirroredOrder,
  orderOf,
  type Effort,
  type Order,
  type TakenBack,
} from './generate.ts';
import { ruleKeys, type Keys } from './rules.ts';

export type Found = {
  readonly start: Float64Array;
  readonly finish: number;
  readonly drift: number;
};

/** How many schedules are kept as parents. */
const PARENTS = 16;
/** Fewer than this are no stock to cross. */
const FEWEST_PARENTS = 8;
/** Share of the rounds that start afresh from a disturbed rule. */
const FRESH_SHARE = 0.15;
/** Full width of the disturbance, as a share of the spread of a rule's keys. */
const DISTURB_SHARE = 0.5;
/** Above 1, better parents are drawn more often. */
const PARENT_BIAS = 1.5;
/** Least and most share of a list that comes from the second parent. */
const CROSS_SHARE = { least: 0.2, most: 0.7 };
/** Half-width, in positions of the list, by which a mutation shifts an activity. */
const SHIFT_POSITIONS = 6;
/** Share of the activities a mutation shifts. */
const SHIFT_SHARE = 0.2;

/** A try is a pass forward, one back and one forward again, with room for what is taken back. */
const PASSES_OF_TRY = 6;

function finishOf(model: Model, start: Float64Array): number {
  return start.reduce((end, at, i) => Math.max(end, at + model.duration[i]!), 0);
}

/** Numbers in [0, 1) that are the same in every run (mulberry32; public domain). */
function sequence(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Activities in the order of their starts. */
function listOf(start: Float64Array): number[] {
  return Array.from(start.keys()).toSorted((a, b) => start[a]! - start[b]! || a - b);
}

function keyOf(list: readonly number[]): Float64Array {
  const key = new Float64Array(list.length);
  list.forEach((activity, position) => (key[activity] = position));
  return key;
}

/** The head of one list, a stretch in the order of another, then the rest as in the first. */
function cross(a: readonly number[], b: readonly number[], from: number, to: number): number[] {
  const child = a.slice(0, from);
  const taken = new Set(child);
  for (const activity of b) {
    if (child.length >= to) break;
    if (taken.has(activity)) continue;
    taken.add(activity);
    child.push(activity);
  }
  for (const activity of a) if (!taken.has(activity)) child.push(activity);
  return child;
}

/** Looks for good schedules of one model; keeps the best few. */
export class Search {
  readonly found: Found[] = [];
  private readonly model: Model;
  private readonly order: Order;
  private readonly backOrder: Order;
  private readonly previous: Float64Array | undefined;
  private readonly random = sequence(1);
  private readonly effort: Effort;

  /** @param placements that may be tried once a schedule is found */
  constructor(model: Model, placements: number, previous?: Float64Array) {
    this.effort = { left: placements, found: false, takenBack: 0 };
    this.model = model;
    this.previous = previous;
    this.order = orderOf(model);
    this.backOrder = mirroredOrder(model, this.order);
  }

  get spent(): boolean {
    return this.effort.left <= 0;
  }

  get best(): Found | undefined {
    return this.found[0];
  }

  /** Earlier finish first; then nearer to the previous schedule, or else earlier starts. */
  private keep(start: Float64Array): void {
    this.effort.found = true;
    const wish = this.previous;
    const drift = start.reduce((sum, at, i) => sum + (wish ? Math.abs(at - wish[i]!) : at), 0);
    const one = { start, drift, finish: finishOf(this.model, start) };
    const worse = (other: Found) =>
      other.finish > one.finish || (other.finish === one.finish && other.drift > drift);
    if (this.found.some((other) => other.finish === one.finish && other.drift === drift)) return;
    const at = this.found.findIndex(worse);
    this.found.splice(at < 0 ? this.found.length : at, 0, one);
    this.found.length = Math.min(this.found.length, PARENTS);
  }

  /**
   * Moves all work as late as the finish allows, then as early as it goes
   * (double justification: Valls, Ballestín & Quintanilla, European Journal of
   * Operational Research 165 (2005) 375).
   */
  private justify(start: Float64Array, taken: TakenBack): void {
    const horizon = finishOf(this.model, start);
    const back = mirror(this.model, horizon, this.backOrder.from);
    const key = flip(this.model, start, horizon);
    const late = generateSchedule(back, this.backOrder, key, false, taken, this.effort);
    if (!late) return;
    const again = flip(this.model, late, horizon);
    const early = generateSchedule(this.model, this.order, again, false, taken, this.effort);
    if (early) this.keep(early);
  }

  /** One order; what is not told otherwise stays where it was placed when a limit is overrun. */
  private try({ key, dynamic }: Keys, taken: TakenBack = 'bound'): void {
    const start = generateSchedule(this.model, this.order, key, dynamic, taken, this.effort);
    if (!start) return;
    this.keep(start);
    this.justify(start, taken);
  }

  /** A schedule found elsewhere, and the order of it. */
  take(start: Float64Array): void {
    this.keep(start);
    this.try({ key: start, dynamic: false });
  }

  /** An order told from outside, with the effort of its passes on top. */
  tryOrder(key: Float64Array): void {
    this.effort.left = Math.max(0, this.effort.left) + PASSES_OF_TRY * this.model.count;
    this.try({ key, dynamic: false });
  }

  /**
   * Every priority rule once, and where work was taken back once more, with all that was later.
   * @param spare placements that the second time leaves
   */
  tryRules(horizon: number, spare: number): void {
    if (this.previous) this.try({ key: this.previous, dynamic: false });
    const again = ruleKeys(this.model, horizon).filter((keys) => {
      const before = this.effort.takenBack;
      this.try(keys);
      return this.effort.takenBack > before;
    });
    for (const keys of again) if (this.effort.left > spare) this.try(keys, 'later');
  }

  /** A priority rule with its keys disturbed. */
  private disturb(horizon: number): void {
    const rules = ruleKeys(this.model, horizon);
    const { key, dynamic } = rules[Math.floor(this.random() * rules.length)]!;
    const spread = DISTURB_SHARE * this.random() * (Math.max(...key) - Math.min(...key));
    this.try({ key: key.map((value) => value + (this.random() - 0.5) * spread), dynamic }, 'later');
  }

  /** One new order: now and then a rule disturbed, else two good orders crossed and some positions shifted. */
  round(horizon: number): void {
    const { count } = this.model;
    const few = this.found.length < FEWEST_PARENTS;
    if (few || this.random() < FRESH_SHARE) return this.disturb(horizon);
    const parent = () =>
      listOf(this.found[Math.floor(this.random() ** PARENT_BIAS * this.found.length)]!.start);
    const from = Math.floor(this.random() * count);
    const share = CROSS_SHARE.least + (CROSS_SHARE.most - CROSS_SHARE.least) * this.random();
    const length = Math.floor(share * count);
    const key = keyOf(cross(parent(), parent(), from, Math.min(count, from + length)));
    const shifted = key.map((position) =>
      this.random() < SHIFT_SHARE ? position + (2 * this.random() - 1) * SHIFT_POSITIONS : position,
    );
    this.try({ key: shifted, dynamic: false }, 'later');
  }
}
