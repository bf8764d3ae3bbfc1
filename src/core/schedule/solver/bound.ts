import { afterOpenTime, type ClosedTicks } from '../model/closed-hours.ts';
import type { Model } from '../model/model.ts';
import { tails } from './rules.ts';
import type { BoundReason } from '../problem/types.ts';

export type Bound = { readonly ticks: number; readonly reason: BoundReason };

/** Dust of added-up energies, in ticks, taken off before rounding up. */
const ENERGY_DUST_TICKS = 1e-3;

/** Some of the work on one resource: which activities, and how long each keeps the whole of it busy. */
type Load = { readonly members: readonly number[]; readonly busy: (activity: number) => number };

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}

/** The largest step that all times of the model are multiples of: starts on it lose nothing. */
export function gridOf(model: Model): number {
  let grid = 0;
  const take = (value: number) => {
    if (Number.isFinite(value)) grid = divisor(Math.abs(value), grid);
  };
  model.duration.forEach(take);
  model.lag.forEach(take);
  model.earliest.forEach(take);
  model.latest.forEach(take);
  for (const spans of new Set(model.closed)) spans?.forEach(take);
  return grid || 1;
}

/**
 * Work that cannot begin before a head nor be followed by less than a tail
 * takes at least its energy between the two (Carlier's bound of one machine,
 * with the capacity in place of the machine). A night in between does not count.
 */
function energyBound(
  model: Model,
  after: Float64Array,
  { members, busy }: Load,
  closed: ClosedTicks,
): number {
  const byTail = members.toSorted((a, b) => after[b]! - after[a]!);
  const heads = new Set(members.map((i) => model.earliest[i]!));
  let best = 0;
  for (const head of heads) {
    let energy = 0;
    for (const i of byTail) {
      if (model.earliest[i]! < head) continue;
      energy += busy(i);
      best = Math.max(best, afterOpenTime(closed, head, energy) + after[i]!);
    }
  }
  return best;
}

/** All work on a resource, work of which no two go together, and that of each calendar alone. */
function loadsOf(
  model: Model,
  r: number,
  users: readonly number[],
): { readonly load: Load; readonly closed: ClosedTicks }[] {
  const kinds = model.capacity.length;
  const capacity = model.capacity[r]!;
  const amount = (i: number) => model.demand[i * kinds + r]!;
  const shared = (i: number) => (model.duration[i]! * amount(i)) / capacity;
  const alone = users.filter((i) => 2 * amount(i) > capacity);
  const loads: { load: Load; closed: ClosedTicks }[] = [
    { load: { members: users, busy: shared }, closed: [] },
    { load: { members: alone, busy: (i) => model.duration[i]! }, closed: [] },
  ];
  for (const closed of new Set(users.map((i) => model.closed[i]))) {
    if (!closed) continue;
    const follows = (i: number) => model.closed[i] === closed;
    loads.push(
      { load: { members: users.filter(follows), busy: shared }, closed },
      { load: { members: alone.filter(follows), busy: (i) => model.duration[i]! }, closed },
    );
  }
  return loads;
}

/**
 * A time no schedule can finish before: the longest chain of lags and
 * calendars, or the energy some resource must give, whichever is later.
 */
export function lowerBound(model: Model, resourceIds: readonly string[], grid: number): Bound {
  let best: Bound = {
    ticks: model.earliest.reduce((end, start, i) => Math.max(end, start + model.duration[i]!), 0),
    reason: { kind: 'critical path' },
  };
  const after = tails(model).map((tail, i) => tail - model.duration[i]!);
  const users: number[][] = resourceIds.map(() => []);
  model.wants.forEach((wanted, i) => {
    if (model.duration[i]! > 0) for (const r of wanted) users[r]!.push(i);
  });
  resourceIds.forEach((resource, r) => {
    for (const { load, closed } of loadsOf(model, r, users[r]!)) {
      const exact = energyBound(model, after, load, closed) - ENERGY_DUST_TICKS;
      const ticks = Math.ceil(exact / grid) * grid;
      if (ticks > best.ticks) best = { ticks, reason: { kind: 'resource', resource } };
    }
  });
  return best;
}
