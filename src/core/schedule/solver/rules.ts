import { NO_LAG } from '../model/lags.ts';
import type { Model } from '../model/model.ts';

/** Least time from the start of each activity to the end of all that lags behind it. */
export function tails({ count, lag, duration }: Model): Float64Array {
  const tail = new Float64Array(count);
  for (let i = 0, at = 0; i < count; i++) {
    let longest = 0;
    for (let j = 0; j < count; j++, at++) longest = Math.max(longest, lag[at]! + duration[j]!);
    tail[i] = longest;
  }
  return tail;
}

/** Sums a value over all activities that may not start before each one. */
function behindSum({ count, lag }: Model, values: Float64Array): Float64Array {
  const sums = new Float64Array(count);
  for (let i = 0, at = 0; i < count; i++) {
    let sum = 0;
    for (let j = 0; j < count; j++, at++) if (lag[at]! >= 0) sum += values[j]!;
    sums[i] = sum;
  }
  return sums;
}

/** Share of all capacities that an activity holds, added up. */
function load({ demand, capacity, wants }: Model, activity: number): number {
  const kinds = capacity.length;
  let sum = 0;
  for (const r of wants[activity]!) {
    if (capacity[r]! > 0) sum += demand[activity * kinds + r]! / capacity[r]!;
  }
  return sum;
}

/** Keys of one priority rule (lowest first), and whether keys are times that limits can undercut. */
export type Keys = { readonly key: Float64Array; readonly dynamic: boolean };

/**
 * Keys of the priority rules worth trying (Kolisch, European Journal of
 * Operational Research 90 (1996) 320): latest start, latest finish, most total
 * successors, greatest positional weight, least slack, and latest start with
 * the resource load of what follows.
 */
export function ruleKeys(model: Model, horizon: number): readonly Keys[] {
  const { count, duration, earliest, lag } = model;
  const tail = tails(model);
  const latestStart = tail.map((length, i) => Math.min(horizon - length, model.latest[i]!));
  const latestFinish = latestStart.map((start, i) => start + duration[i]!);
  const slack = latestStart.map((start, i) => start - earliest[i]!);
  const successors = behindSum(model, new Float64Array(count).fill(1));
  const weight = behindSum(model, duration);
  const work = behindSum(
    model,
    duration.map((length, j) => length * load(model, j)),
  );
  const negative = (values: Float64Array) => values.map((value) => -value);
  const keys: Keys[] = [latestFinish, latestStart].map((key) => ({ key, dynamic: false }));
  if (lag.some((value) => value < 0 && value !== NO_LAG)) {
    keys.unshift({ key: latestStart, dynamic: true }, { key: latestFinish, dynamic: true });
  }
  for (const key of [negative(work), negative(successors), negative(weight), slack]) {
    keys.push({ key, dynamic: false });
  }
  if (count > 0) keys.push({ key: earliest.slice(), dynamic: false });
  return keys;
}
