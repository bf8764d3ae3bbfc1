import { companionsOf } from './companions.ts';
import type { Load } from './energy.ts';
import { OpenTime } from './hours.ts';
import type { ClosedTicks } from '../model/closed-hours.ts';
import type { Model } from '../model/model.ts';

/** Whether lags put all members in a row: then they push each other as far as their energy would. */
function isOneAfterAnother({ count, lag, duration }: Model, members: readonly number[]): boolean {
  const follows = (i: number, j: number) => lag[i * count + j]! >= duration[i]!;
  return members.every((i, k) =>
    members.every((j, other) => other <= k || follows(i, j) || follows(j, i)),
  );
}

function loadOf(
  model: Model,
  members: readonly number[],
  busy: (i: number) => number,
  alone: boolean,
  closed: ClosedTicks,
): Load[] {
  if (members.length < 2 || isOneAfterAnother(model, members)) return [];
  const open = new OpenTime(closed);
  return [{ members, busy: members.map(busy), firm: members.map(() => alone), open }];
}

/** Work that goes one at a time, together with what lets the resource stand idle. */
function loadWithCompanions(
  model: Model,
  users: readonly number[],
  closed: ClosedTicks,
): readonly Load[] {
  const { duration } = model;
  const keepsHours = (i: number) => closed.length === 0 || model.closed[i] === closed;
  const { activities, leak, idle } = companionsOf(model, users, keepsHours);
  if (idle <= 0) return [];
  const isTight = leak.every((ticks) => ticks === 0);
  return [
    {
      members: [...users, ...activities],
      busy: [
        ...users.map((i, k) => duration[i]! - leak[k]!),
        ...activities.map((i) => duration[i]!),
      ],
      firm: [...leak.map((ticks) => ticks === 0), ...activities.map(() => isTight)],
      open: new OpenTime(closed),
    },
  ];
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
    ...loadOf(model, alone, (i) => model.duration[i]!, true, closed),
    ...loadWithCompanions(model, alone, closed),
    ...loadOf(model, shared, (i) => (model.duration[i]! * amount(i)) / capacity, false, closed),
  ];
}

/** The work that competes for each resource: all of it, and that of each calendar in its open hours. */
export function loadsOf(model: Model): readonly Load[] {
  const kinds = model.capacity.length;
  const usersOf: number[][] = Array.from(model.capacity, () => []);
  model.wants.forEach((wanted, i) => {
    if (model.duration[i]! > 0) for (const r of wanted) usersOf[r]!.push(i);
  });
  return Array.from(model.capacity).flatMap((capacity, r) => {
    const amount = (i: number) => model.demand[i * kinds + r]!;
    const users = usersOf[r]!;
    if (users.reduce((sum, i) => sum + amount(i), 0) <= capacity) return [];
    const hours = [...new Set(users.map((i) => model.closed[i]))].filter(
      (closed) => closed?.length,
    );
    const within = hours.map((closed) => users.filter((i) => model.closed[i] === closed));
    // In its open hours the same work has less room: all hours tell nothing more.
    const whole = within.some((some) => some.length === users.length) ? [] : users;
    return [
      ...loadsOfHours(model, r, whole, []),
      ...hours.flatMap((closed, at) => loadsOfHours(model, r, within[at]!, closed!)),
    ];
  });
}
