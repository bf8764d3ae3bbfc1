import { firstOpen } from '../model/closed-hours.ts';
import type { Model } from '../model/model.ts';

/** What is held of each resource over time: `used` from each of `times` to the next. */
export type Profile = { length: number; times: Float64Array; used: Float64Array };

export function emptyProfile(model: Model): Profile {
  // Twice what all activities cut, so that cuts left by work taken back have room.
  const most = 4 * model.count + 4;
  const profile = {
    length: 1,
    times: new Float64Array(most),
    used: new Float64Array(most * model.capacity.length),
  };
  clear(profile);
  return profile;
}

export function clear(profile: Profile): void {
  profile.length = 1;
  profile.times[0] = -Infinity;
  profile.used.fill(0);
}

/** The part of the profile that holds at `time`. */
function partAt(profile: Profile, time: number): number {
  let low = 0;
  let high = profile.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (profile.times[middle]! <= time) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Cuts the profile at `time` and returns the part that begins there. */
function cut(profile: Profile, time: number, kinds: number): number {
  const at = partAt(profile, time);
  if (profile.times[at] === time) return at;
  profile.times.copyWithin(at + 2, at + 1, profile.length);
  profile.used.copyWithin((at + 1) * kinds, at * kinds, profile.length * kinds);
  profile.times[at + 1] = time;
  profile.length++;
  return at + 1;
}

/** Adds `times` (−1 takes it off again) the demand of an activity from one time to another. */
function book(
  profile: Profile,
  model: Model,
  activity: number,
  from: number,
  to: number,
  times = 1,
): void {
  if (to <= from) return;
  const kinds = model.capacity.length;
  const first = cut(profile, from, kinds);
  const last = cut(profile, to, kinds);
  for (let part = first; part < last; part++) {
    for (let r = 0; r < kinds; r++) {
      profile.used[part * kinds + r]! += times * model.demand[activity * kinds + r]!;
    }
  }
}

/** Books an activity from `start` to its finish. */
export function hold(profile: Profile, model: Model, activity: number, start: number): void {
  book(profile, model, activity, start, start + model.duration[activity]!);
}

/** Takes an activity off that was held from `start`. */
export function release(profile: Profile, model: Model, activity: number, start: number): void {
  book(profile, model, activity, start, start + model.duration[activity]!, -1);
}

/** So many cuts are left over that the profile should be built anew. */
export function isCrowded(profile: Profile): boolean {
  return 2 * profile.length > profile.times.length;
}

function fits(profile: Profile, model: Model, activity: number, part: number): boolean {
  const kinds = model.capacity.length;
  for (let r = 0; r < kinds; r++) {
    const wanted = model.demand[activity * kinds + r]!;
    if (wanted > 0 && profile.used[part * kinds + r]! + wanted > model.capacity[r]!) return false;
  }
  return true;
}

function firstFree(profile: Profile, model: Model, activity: number, from: number): number {
  const duration = model.duration[activity]!;
  if (duration === 0) return from;
  let start = from;
  for (let part = partAt(profile, from); part < profile.length; part++) {
    if (profile.times[part]! >= start + duration) break;
    if (!fits(profile, model, activity, part)) start = profile.times[part + 1]!;
  }
  return start;
}

/** The earliest start ≥ `from` that resources and calendar allow. */
export function earliestFit(
  profile: Profile,
  model: Model,
  activity: number,
  from: number,
): number {
  const closed = model.closed[activity];
  let start = from;
  for (;;) {
    const open = closed ? firstOpen(closed, start, model.duration[activity]!) : start;
    start = firstFree(profile, model, activity, open);
    if (start === open) return start;
  }
}
