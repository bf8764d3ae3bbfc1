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
  /** What some lag ties to each one, in either direction. */
  readonly tied: readonly Tied[];
};

/** Activities tied to one, with the lag from it to each and from each to it: side by side, as they are read. */
type Tied = {
  readonly ids: Int32Array;
  readonly to: Float64Array;
  readonly from: Float64Array;
};

/** Placements that may still be tried; once `found`, running out ends a pass. */
export type Effort = { left: number; found: boolean };

function tiedTo(i: number, count: number, lag: Float64Array): Tied {
  const ids: number[] = [];
  for (let j = 0; j < count; j++) {
    if (i !== j && (lag[i * count + j] !== NO_LAG || lag[j * count + i] !== NO_LAG)) ids.push(j);
  }
  return {
    ids: Int32Array.from(ids),
    to: Float64Array.from(ids, (j) => lag[i * count + j]!),
    from: Float64Array.from(ids, (j) => lag[j * count + i]!),
  };
}

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
  const tied = Array.from({ length: count }, (_, i) => tiedTo(i, count, lag));
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < count; j++) {
      if (i === j || !(lag[i * count + j]! >= 0) || !goesFirst(i, j)) continue;
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
    const { ids, to, from } = this.order.tied[activity]!;
    for (let n = 0; n < ids.length; n++) {
      const k = ids[n]!;
      if (Number.isNaN(this.start[k]!)) this.bind(k, at + to[n]!, at - from[n]!);
    }
  }

  /** Narrows the window of `k` to what a placed activity leaves of it. */
  private bind(k: number, least: number, most: number): void {
    if (least > this.low[k]!) this.low[k] = least;
    if (most < this.high[k]!) this.high[k] = most;
  }

  /** @returns false when nothing placed sets the limit, so that taking back helps nothing */
  takeBack(activity: number, at: number): boolean {
    const { latest } = this.model;
    const { ids, to } = this.order.tied[activity]!;
    let since = Infinity;
    for (let n = 0; n < ids.length; n++) {
      const i = ids[n]!;
      const behind = to[n]!;
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
    const tied = this.order.tied[activity]!;
    this.floor[activity] = Math.max(this.floor[activity]!, to);
    for (let n = 0; n < tied.ids.length; n++) {
      const k = tied.ids[n]!;
      const least = to + tied.to[n]!;
      if (least > this.floor[k]!) this.floor[k] = least;
    }
  }

  /** Narrows the window of what is not placed by all that is. */
  private bindByPlaced(i: number): void {
    const { ids, to, from } = this.order.tied[i]!;
    for (let n = 0; n < ids.length; n++) {
      const placed = this.start[ids[n]!]!;
      if (!Number.isNaN(placed)) this.bind(i, placed + from[n]!, placed - to[n]!);
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
    for (let i = 0; i < this.start.length; i++)
      if (Number.isNaN(this.start[i]!)) this.bindByPlaced(i);
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
