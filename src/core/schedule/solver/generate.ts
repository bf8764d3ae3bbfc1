import { NO_LAG } from '../model/lags.ts';
import type { Model } from '../model/model.ts';
import { clear, earliestFit, emptyProfile, hold, isCrowded, release } from './profile.ts';

/** How often one pass may take work back before it gives up, per activity. */
const RETRIES_PER_ACTIVITY = 12;

/** What of a model every pass shares: who must be placed before whom. */
export type Order = {
  /** Activities that must be placed before each one. */
  readonly before: readonly (readonly number[])[];
  readonly behind: readonly (readonly number[])[];
  /** Activities that some lag ties to each one, in either direction. */
  readonly tied: readonly (readonly number[])[];
};

/** Placements that may still be tried; once `found`, running out ends a pass. */
export type Effort = { left: number; found: boolean };

/** i goes before j where j may not start before i; of two that start together, the first named. */
export function orderOf({ count, lag }: Model): Order {
  const ahead = new Int32Array(count);
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < count; j++) if (lag[i * count + j]! >= 0) ahead[j]!++;
  }
  const goesFirst = (i: number, j: number) =>
    ahead[i]! < ahead[j]! || (ahead[i] === ahead[j] && i < j);
  const before: number[][] = Array.from({ length: count }, () => []);
  const behind: number[][] = Array.from({ length: count }, () => []);
  const tied: number[][] = Array.from({ length: count }, () => []);
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < count; j++) {
      if (i === j) continue;
      if (lag[i * count + j] !== NO_LAG || lag[j * count + i] !== NO_LAG) tied[i]!.push(j);
      if (!(lag[i * count + j]! >= 0) || !goesFirst(i, j)) continue;
      before[j]!.push(i);
      behind[i]!.push(j);
    }
  }
  return { before, behind, tied };
}

/**
 * Serial schedule generation: of the activities whose turn it may be, the one
 * with the lowest key is placed at its earliest start. Where that start would
 * overrun a maximum lag, the activities that set the limit are taken back and
 * held until the lag can be kept, with all that was placed later than they
 * were (Franck, Neumann & Schwindt, OR Spektrum 23 (2001) 297).
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

  constructor(model: Model, order: Order) {
    this.model = model;
    this.order = order;
    this.start = new Float64Array(model.count).fill(NaN);
    this.floor = Float64Array.from(model.earliest);
    this.low = Float64Array.from(model.earliest);
    this.high = Float64Array.from(model.latest);
    this.waits = Int32Array.from(order.before, (list) => list.length);
    this.profile = emptyProfile(model);
  }

  next(key: Float64Array, dynamic: boolean): number {
    let best = -1;
    let bestKey = Infinity;
    for (let i = 0; i < this.model.count; i++) {
      if (this.waits[i] !== 0 || !Number.isNaN(this.start[i]!)) continue;
      // A limit set by what is already placed is nearer than any static one.
      const own = dynamic ? Math.min(key[i]!, this.high[i]!) : key[i]!;
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
    const at = earliestFit(this.profile, this.model, activity, this.low[activity]!);
    if (at > this.high[activity]!) return { overrunAt: at };
    this.put(activity, at);
    return {};
  }

  private put(activity: number, at: number): void {
    this.start[activity] = at;
    hold(this.profile, this.model, activity, at);
    for (const j of this.order.behind[activity]!) this.waits[j]!--;
    for (const k of this.order.tied[activity]!) {
      if (Number.isNaN(this.start[k]!)) this.bind(k, activity, at);
    }
  }

  /** Narrows the window of `k` by the start of a placed activity. */
  private bind(k: number, activity: number, at: number): void {
    const { count, lag } = this.model;
    const least = at + lag[activity * count + k]!;
    if (least > this.low[k]!) this.low[k] = least;
    const most = at - lag[k * count + activity]!;
    if (most < this.high[k]!) this.high[k] = most;
  }

  /** @returns false when nothing placed sets the limit, so that taking back helps nothing */
  takeBack(activity: number, at: number): boolean {
    const { count, lag, latest } = this.model;
    let since = Infinity;
    for (const i of this.order.tied[activity]!) {
      const behind = lag[activity * count + i]!;
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
    const { count, lag } = this.model;
    this.floor[activity] = Math.max(this.floor[activity]!, to);
    for (const k of this.order.tied[activity]!) {
      const least = to + lag[activity * count + k]!;
      if (least > this.floor[k]!) this.floor[k] = least;
    }
  }

  /** Takes back what started at `since` or later, or starts below its floor now. */
  private remove(since: number): void {
    this.start.forEach((start, i) => {
      if (Number.isNaN(start) || (start < since && start >= this.floor[i]!)) return;
      this.start[i] = NaN;
      release(this.profile, this.model, i, start);
      for (const j of this.order.behind[i]!) this.waits[j]!++;
    });
    this.low.set(this.floor);
    this.high.set(this.model.latest);
    this.start.forEach((start, i) => {
      if (!Number.isNaN(start)) return;
      for (const j of this.order.tied[i]!) {
        const placed = this.start[j]!;
        if (!Number.isNaN(placed)) this.bind(i, j, placed);
      }
    });
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
 * @returns start ticks, or undefined when this pass found no schedule
 */
export function generateSchedule(
  model: Model,
  order: Order,
  key: Float64Array,
  dynamic: boolean,
  effort: Effort,
): Float64Array | undefined {
  const pass = new Pass(model, order);
  let retries = RETRIES_PER_ACTIVITY * model.count;
  for (let activity = pass.next(key, dynamic); activity >= 0; activity = pass.next(key, dynamic)) {
    if (effort.left-- <= 0 && effort.found) return undefined;
    const { overrunAt } = pass.tryPlace(activity);
    if (overrunAt === undefined) continue;
    if (retries-- === 0 || !pass.takeBack(activity, overrunAt)) return undefined;
  }
  return pass.start;
}
