import type { Bound } from './bound.ts';
import { flip, forceOrders, mirror, type Model } from './model.ts';
import { book, clear, earliestFit, emptyProfile } from './profile.ts';

/** Windows that pull each other together by ever smaller steps are left after so many. */
const MOST_PASSES = 40;

/**
 * An activity whose latest start lies before its earliest finish surely runs in
 * between. Moves earliest starts past what surely runs
 * (Lahrichi, Comptes Rendus de l'Académie des Sciences 294 (1982) 209).
 * @returns whether some start moved
 */
function pushPastCertain(model: Model): boolean {
  const { count, earliest, latest, duration } = model;
  const certain = emptyProfile(model);
  const end = (i: number) => earliest[i]! + duration[i]!;
  clear(certain);
  for (let i = 0; i < count; i++) book(certain, model, i, latest[i]!, end(i));
  let moved = false;
  for (let i = 0; i < count; i++) {
    const from = latest[i]!;
    const to = end(i);
    book(certain, model, i, from, to, -1);
    const fit = earliestFit(certain, model, i, earliest[i]!);
    book(certain, model, i, from, to);
    if (fit <= earliest[i]!) continue;
    earliest[i] = fit;
    moved = true;
  }
  return moved;
}

/** Whether no schedule can finish by `horizon`. Never true wrongly; not always true when it could be. */
function surelyMisses(original: Model, horizon: number): boolean {
  const model: Model = {
    ...original,
    lag: original.lag.slice(),
    earliest: original.earliest.slice(),
    latest: original.latest.map((late, i) => Math.min(late, horizon - original.duration[i]!)),
  };
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    if (forceOrders(model)) return true;
    const early = pushPastCertain(model);
    if (model.earliest.some((start, i) => start > model.latest[i]!)) return true;
    // Backwards in time earliest finishes become latest starts.
    const back = mirror(model, horizon, model.lag);
    const late = pushPastCertain(back);
    if (back.earliest.some((start, i) => start > back.latest[i]!)) return true;
    if (!early && !late) return false;
    model.latest.set(flip(model, back.earliest, horizon));
  }
  return false;
}

/**
 * Raises a lower bound: a finish that leads to a contradiction is too early
 * (destructive improvement: Klein & Scholl, European Journal of Operational
 * Research 112 (1999) 322).
 * @param finish of a known schedule, in ticks
 * @param grid step that all times are multiples of, in ticks
 */
export function raiseBound(model: Model, bound: Bound, finish: number, grid: number): Bound {
  let low = bound.ticks;
  let high = finish;
  while (low < high) {
    const middle = low + Math.floor((high - low) / grid / 2) * grid;
    if (surelyMisses(model, middle)) low = middle + grid;
    else high = middle;
  }
  return low > bound.ticks ? { ticks: low, reason: { kind: 'windows' } } : bound;
}
