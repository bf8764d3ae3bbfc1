import { openStart, type Model } from '../model/model.ts';

/** What is held of one resource over time: `used` from each of `times` to the next. */
type Line = { length: number; readonly times: Float64Array; readonly used: Float64Array };

/** A line for each resource: few activities ask for the same, and none for many. */
export type Profile = readonly Line[];

export function emptyProfile(model: Model): Profile {
  const users = new Int32Array(model.capacity.length);
  for (const wanted of model.wants) for (const r of wanted) users[r]!++;
  return Array.from(users, (count) => {
    // Twice what all of its users cut, so that cuts left by work taken back have room.
    const most = 4 * count + 4;
    const line = { length: 1, times: new Float64Array(most), used: new Float64Array(most) };
    line.times[0] = -Infinity;
    return line;
  });
}

export function clear(profile: Profile): void {
  for (const line of profile) {
    line.length = 1;
    line.used[0] = 0;
  }
}

/** The part of the line that holds at `time`. */
function partAt({ times, length }: Line, time: number): number {
  let low = 0;
  let high = length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (times[middle]! <= time) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Cuts the line at `time` and returns the part that begins there. */
function cut(line: Line, time: number): number {
  const at = partAt(line, time);
  if (line.times[at] === time) return at;
  line.times.copyWithin(at + 2, at + 1, line.length);
  line.used.copyWithin(at + 1, at, line.length);
  line.times[at + 1] = time;
  line.length++;
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
  for (const r of model.wants[activity]!) {
    const line = profile[r]!;
    const amount = times * model.demand[activity * kinds + r]!;
    const first = cut(line, from);
    const last = cut(line, to);
    for (let part = first; part < last; part++) line.used[part]! += amount;
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

/** So many cuts are left over on some line that the profile should be built anew. */
export function isCrowded(profile: Profile): boolean {
  return profile.some(({ length, times }) => 2 * length > times.length);
}

/** The earliest start ≥ `from` for which one resource is free long enough. */
function firstFreeOn(
  line: Line,
  wanted: number,
  most: number,
  from: number,
  duration: number,
): number {
  let start = from;
  for (let part = partAt(line, from); part < line.length; part++) {
    if (line.times[part]! >= start + duration) break;
    if (line.used[part]! + wanted > most) start = line.times[part + 1]!;
  }
  return start;
}

/** The earliest start ≥ `from` for which all that it asks for is free long enough. */
function firstFree(profile: Profile, model: Model, activity: number, from: number): number {
  const duration = model.duration[activity]!;
  if (duration === 0) return from;
  const kinds = model.capacity.length;
  let start = from;
  for (;;) {
    const before = start;
    for (const r of model.wants[activity]!) {
      const wanted = model.demand[activity * kinds + r]!;
      start = firstFreeOn(profile[r]!, wanted, model.capacity[r]!, start, duration);
    }
    if (start === before) return start;
  }
}

/** The earliest start ≥ `from` that resources and calendar allow. */
export function earliestFit(
  profile: Profile,
  model: Model,
  activity: number,
  from: number,
): number {
  let start = from;
  for (;;) {
    const open = openStart(model, activity, start);
    start = firstFree(profile, model, activity, open);
    if (start === open) return start;
  }
}
