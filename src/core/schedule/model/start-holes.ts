import type { ClosedTicks } from './closed-hours.ts';
import { NO_LAG, type Arc } from './lags.ts';

/** Starts that work may not have, as [first, next free, first, next free, …] in whole ticks: sorted and apart. */
export type Holes = readonly number[];

/** Adds a hole behind those that begin no later; what touches the last one joins it. */
function append(holes: number[], first: number, free: number): void {
  const last = holes.length - 1;
  if (last > 0 && first <= holes[last]!) holes[last] = Math.max(holes[last]!, free);
  else holes.push(first, free);
}

/** Starts that closed hours forbid to work of one length; gaps too short for it are closed too. */
export function forbiddenStarts(closed: ClosedTicks, duration: number): Holes {
  const holes: number[] = [];
  for (let k = 0; k < closed.length; k += 2) {
    const first = closed[k]! - duration + 1;
    const free = closed[k + 1]!;
    if (free > first) append(holes, first, free);
  }
  return holes;
}

/** How many holes begin at or before a moment. */
export function holesUntil(holes: Holes, at: number): number {
  let low = 0;
  let high = holes.length / 2;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holes[2 * middle]! <= at) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The first start from a moment on that lies in no hole. */
export function nextStart(holes: Holes, from: number): number {
  const behind = holesUntil(holes, from);
  return behind > 0 ? Math.max(from, holes[2 * behind - 1]!) : from;
}

/** The last start up to a moment that lies in no hole. */
export function lastStart(holes: Holes, until: number): number {
  const behind = holesUntil(holes, until);
  return behind > 0 && until < holes[2 * behind - 1]! ? holes[2 * behind - 2]! - 1 : until;
}

/** All starts that either list forbids. */
function united(a: Holes, b: Holes): Holes {
  const holes: number[] = [];
  for (let i = 0, j = 0; i < a.length || j < b.length;) {
    if (j >= b.length || (i < a.length && a[i]! <= b[j]!)) {
      append(holes, a[i]!, a[i + 1]!);
      i += 2;
    } else {
      append(holes, b[j]!, b[j + 1]!);
      j += 2;
    }
  }
  return holes;
}

/** Starts of which all that another may have, from `least` to `most` later, lie in one hole of it. */
function heldBack(holes: Holes, least: number, most: number): Holes {
  const held: number[] = [];
  for (let k = 0; k < holes.length; k += 2) {
    const first = holes[k]! - least;
    const free = holes[k + 1]! - most;
    if (free > first) append(held, first, free);
  }
  return held;
}

function isSame(a: Holes, b: Holes): boolean {
  return a.length === b.length && a.every((value, k) => value === b[k]);
}

/** By activity: those tied to it by lags both ways. */
function tiedBothWays(count: number, arcs: readonly Arc[], lag: Float64Array): readonly number[][] {
  const tied: number[][] = Array.from({ length: count }, () => []);
  for (const { from, to } of arcs) {
    if (from === to || lag[from * count + to] === NO_LAG || lag[to * count + from] === NO_LAG) {
      continue;
    }
    if (!tied[to]!.includes(from)) tied[to]!.push(from);
    if (!tied[from]!.includes(to)) tied[from]!.push(to);
  }
  return tied;
}

/** How often the holes of each activity are handed on, on average, at most. */
const ROUNDS = 4;

/**
 * Holes of all activities: closed hours, and what these leave no start to that
 * must follow or go before within a limit (no kettle is put on that would be
 * poured at night).
 */
export function startHoles(
  closed: readonly (ClosedTicks | undefined)[],
  duration: Float64Array,
  arcs: readonly Arc[],
  lag: Float64Array,
): readonly (Holes | undefined)[] {
  const count = closed.length;
  const holes = closed.map((spans, i) =>
    spans?.length ? forbiddenStarts(spans, duration[i]!) : undefined,
  );
  const tied = tiedBothWays(count, arcs, lag);
  const queue = Array.from(holes.keys()).filter((i) => holes[i] && tied[i]!.length > 0);
  for (let at = 0; at < queue.length && at < ROUNDS * count; at++) {
    const j = queue[at]!;
    for (const i of tied[j]!) {
      const held = heldBack(holes[j]!, lag[i * count + j]!, -lag[j * count + i]!);
      if (held.length === 0) continue;
      const all = united(holes[i] ?? [], held);
      if (holes[i] && isSame(all, holes[i]!)) continue;
      holes[i] = all;
      queue.push(i);
    }
  }
  return holes;
}
