import { NO_LAG, transposed } from '../model/lags.ts';
import type { Model } from '../model/model.ts';
import { clear, earliestFit, emptyProfile, hold, isCrowded, release } from './profile.ts';

/** How often one pass may take work back before it gives up, per activity. */
const RETRIES_PER_ACTIVITY = 12;

/** What of a model every pass shares. */
export type Order = {
  /** Lags from each activity, row by row, and those into each one. */
  readonly from: Float64Array;
  readonly into: Float64Array;
  /** How many activities must be placed before each one. */
  readonly waits: Int32Array;
};

/**
 * What is taken back with activities that set a limit: all that was placed later
 * than they were, or only what they bind, so that the rest stays where it is.
 */
export type TakenBack = 'later' | 'bound';

/** Placements that may still be tried; once `found`, running out ends a pass. And how often work was taken back. */
export type Effort = { left: number; found: boolean; takenBack: number };

/**
 * Whether the activity of a row must be placed before another `k`: k may not
 * start before it; of two that start together, the first named.
 */
function goesFirst(lagTo: number, lagBack: number, activity: number, k: number): boolean {
  return lagTo >= 0 && (lagBack < 0 || activity < k);
}

function withWaits(from: Float64Array, into: Float64Array, count: number): Order {
  const waits = new Int32Array(count);
  for (let i = 0, at = 0; i < count; i++) {
    for (let k = 0; k < count; k++, at++) {
      if (goesFirst(from[at]!, into[at]!, i, k)) waits[k]!++;
    }
  }
  return { from, into, waits };
}

export function orderOf({ count, lag }: Model): Order {
  return withWaits(lag, transposed(lag, count), count);
}

/** The order of the same model seen backwards in time. */
export function mirroredOrder({ count, duration }: Model, { from, into }: Order): Order {
  const back = new Float64Array(count * count);
  const backInto = new Float64Array(count * count);
  for (let i = 0, at = 0; i < count; i++) {
    for (let k = 0; k < count; k++, at++) {
      back[at] = into[at]! + duration[i]! - duration[k]!;
      backInto[at] = from[at]! + duration[k]! - duration[i]!;
    }
  }
  return withWaits(back, backInto, count);
}

/**
 * Serial schedule generation: of the activities whose turn it may be, the one
 * with the lowest key is placed at its earliest start. Where that start would
 * overrun a maximum lag, the activities that set the limit are taken back and
 * held until the lag can be kept, with all that was placed later than they
 * were (Franck, Neumann & Schwindt, OR Spektrum 23 (2001) 297), or only with
 * what they bind.
 */
class Pass {
  readonly start: Float64Array;
  private readonly model: Model;
  private readonly order: Order;
  /** Starts below this have been tried and fail. */
  private readonly floor: Float64Array;
  private readonly low: Float64Array;
  private readonly high: Float64Array;
  private readonly waits: Int32Array;
  private readonly profile;
  private readonly back: TakenBack;

  /** What is placed, in the order in which it was. */
  private placed: number[] = [];
  /** Limits from what is placed count as keys: windows are kept up to date all the time, not only when it is their turn. */
  private readonly dynamic: boolean;

  constructor(model: Model, order: Order, dynamic: boolean, back: TakenBack) {
    this.dynamic = dynamic;
    this.back = back;
    this.model = model;
    this.order = order;
    this.start = new Float64Array(model.count).fill(NaN);
    this.floor = Float64Array.from(model.earliest);
    this.low = Float64Array.from(model.earliest);
    this.high = Float64Array.from(model.latest);
    this.waits = Int32Array.from(order.waits);
    this.profile = emptyProfile(model);
  }

  next(key: Float64Array): number {
    let best = -1;
    let bestKey = Infinity;
    for (let i = 0; i < this.model.count; i++) {
      if (this.waits[i] !== 0 || !Number.isNaN(this.start[i]!)) continue;
      // A limit set by what is already placed is nearer than any static one.
      const own = this.dynamic ? Math.min(key[i]!, this.high[i]!) : key[i]!;
      const draw = own === bestKey && this.model.priority[i]! < this.model.priority[best]!;
      if (best < 0 || own < bestKey || draw) {
        best = i;
        bestKey = own;
      }
    }
    return best;
  }

  /** @returns the activity placed, or that its limit was overrun at `at` */
  tryPlace(activity: number): { readonly overrunAt?: number } {
    if (!this.dynamic) this.bindByPlaced(activity);
    const at = earliestFit(this.profile, this.model, activity, this.low[activity]!);
    if (at > this.high[activity]!) return { overrunAt: at };
    this.put(activity, at);
    return {};
  }

  private put(activity: number, at: number): void {
    const { waits } = this;
    const { from, into } = this.order;
    this.start[activity] = at;
    this.placed.push(activity);
    hold(this.profile, this.model, activity, at);
    const { count } = this.model;
    for (let k = 0, row = activity * count; k < count; k++, row++) {
      if (goesFirst(from[row]!, into[row]!, activity, k)) waits[k]!--;
    }
    if (this.dynamic) this.bindAll(activity, at);
  }

  /** Narrows all windows by one activity; what is placed already is bound too, and nobody looks at that. */
  private bindAll(activity: number, at: number): void {
    const { low, high } = this;
    const { from, into } = this.order;
    const { count } = this.model;
    for (let k = 0, row = activity * count; k < count; k++, row++) {
      if (at + from[row]! > low[k]!) low[k] = at + from[row]!;
      if (at - into[row]! < high[k]!) high[k] = at - into[row]!;
    }
  }

  /** @returns false when nothing placed sets the limit, so that taking back helps nothing */
  takeBack(activity: number, at: number): boolean {
    const { latest, count } = this.model;
    const { from } = this.order;
    let since = Infinity;
    for (let i = 0; i < count; i++) {
      const behind = from[activity * count + i]!;
      const placed = this.start[i]!;
      if (behind === NO_LAG || Number.isNaN(placed) || placed - behind >= at) continue;
      since = Math.min(since, placed);
      this.raiseFloor(i, at + behind);
      if (this.floor[i]! > latest[i]!) return false;
    }
    if (since === Infinity) return false;
    this.remove(since);
    return true;
  }

  private raiseFloor(activity: number, to: number): void {
    const { floor } = this;
    const { from } = this.order;
    const { count } = this.model;
    for (let k = 0, row = activity * count; k < count; k++, row++) {
      if (to + from[row]! > floor[k]!) floor[k] = to + from[row]!;
    }
  }

  /** The window that all that is placed leaves to what is not. */
  private bindByPlaced(i: number): void {
    const { from, into } = this.order;
    const row = i * this.model.count;
    let low = this.floor[i]!;
    let high = this.model.latest[i]!;
    for (const k of this.placed) {
      const at = this.start[k]!;
      low = Math.max(low, at + into[row + k]!);
      high = Math.min(high, at - from[row + k]!);
    }
    this.low[i] = low;
    this.high[i] = high;
  }

  private takeOff(activity: number, at: number): void {
    const { waits } = this;
    const { from, into } = this.order;
    const { count } = this.model;
    this.start[activity] = NaN;
    release(this.profile, this.model, activity, at);
    for (let k = 0, row = activity * count; k < count; k++, row++) {
      if (goesFirst(from[row]!, into[row]!, activity, k)) waits[k]!++;
    }
  }

  /** Takes back what starts below its floor now, and, where all later work is to go, what started at `since` or later. */
  private remove(since: number): void {
    const { start, floor, placed } = this;
    this.placed = placed.filter(
      (i) => start[i]! >= floor[i]! && (start[i]! < since || this.back === 'bound'),
    );
    const kept = new Set(this.placed);
    for (const i of placed) if (!kept.has(i)) this.takeOff(i, start[i]!);
    if (this.dynamic) {
      for (let i = 0; i < start.length; i++) if (Number.isNaN(start[i]!)) this.bindByPlaced(i);
    }
    if (isCrowded(this.profile)) {
      clear(this.profile);
      this.start.forEach((start, i) => {
        if (!Number.isNaN(start)) hold(this.profile, this.model, i, start);
      });
    }
  }
}

/**
 * One pass of the serial scheme.
 * @param key lowest goes first
 * @param dynamic limits from what is already placed count as keys too
 * @param back what goes with activities that are taken back
 * @returns start ticks, or undefined when this pass found no schedule
 */
export function generateSchedule(
  model: Model,
  order: Order,
  key: Float64Array,
  dynamic: boolean,
  back: TakenBack,
  effort: Effort,
): Float64Array | undefined {
  const pass = new Pass(model, order, dynamic, back);
  let retries = RETRIES_PER_ACTIVITY * model.count;
  for (let activity = pass.next(key); activity >= 0; activity = pass.next(key)) {
    if (effort.left-- <= 0 && effort.found) return undefined;
    const { overrunAt } = pass.tryPlace(activity);
    if (overrunAt === undefined) continue;
    effort.takenBack++;
    if (retries-- === 0 || !pass.takeBack(activity, overrunAt)) return undefined;
  }
  return pass.start;
}
