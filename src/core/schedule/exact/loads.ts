import type { Load } from './energy.ts';
import { OpenTime } from './hours.ts';
import type { ClosedTicks } from '../solver/closed-hours.ts';
import type { Model } from '../solver/model.ts';

function loadOf(
  members: readonly number[],
  busy: (i: number) => number,
  alone: boolean,
  closed: ClosedTicks,
): Load[] {
  if (members.length < 2) return [];
  return [{ members, busy: members.map(busy), alone, open: new OpenTime(closed) }];
}

/** The work on a resource that follows one calendar, and that of which no two go together. */
function loadsOfHours(
  model: Model,
  r: number,
  users: readonly number[],
  closed: ClosedTicks,
): readonly Load[] {
  const kinds = model.capacity.length;
  const capacity = model.capacity[r]!;
  const amount = (i: number) => model.demand[i * kinds + r]!;
  const alone = users.filter((i) => 2 * amount(i) > capacity);
  const shared = alone.length === users.length ? [] : users;
  return [
    ...loadOf(alone, (i) => model.duration[i]!, true, closed),
    ...loadOf(shared, (i) => (model.duration[i]! * amount(i)) / capacity, false, closed),
  ];
}

/** The work that competes for each resource: all of it, and that of each calendar in its open hours. */
export function loadsOf(model: Model): readonly Load[] {
  const kinds = model.capacity.length;
  const all = Array.from(model.duration.keys());
  return Array.from(model.capacity).flatMap((capacity, r) => {
    const amount = (i: number) => model.demand[i * kinds + r]!;
    const users = all.filter((i) => amount(i) > 0 && model.duration[i]! > 0);
    if (users.reduce((sum, i) => sum + amount(i), 0) <= capacity) return [];
    const hours = [...new Set(users.map((i) => model.closed[i]))].filter((closed) => closed?.length);
    const within = hours.map((closed) => users.filter((i) => model.closed[i] === closed));
    // In its open hours the same work has less room: all hours tell nothing more.
    const whole = within.some((some) => some.length === users.length) ? [] : users;
    return [
      ...loadsOfHours(model, r, whole, []),
      ...hours.flatMap((closed, at) => loadsOfHours(model, r, within[at]!, closed!)),
    ];
  });
}
