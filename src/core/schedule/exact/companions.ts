import { excludes, type Model } from '../model/model.ts';

/** Work beside a resource that keeps it idle, and by how much that idleness may be used all the same. */
export type Companions = {
  readonly activities: readonly number[];
  /** Of each user of the resource: how long it may go on during a companion, ticks; 0: it never does. */
  readonly leak: readonly number[];
  /** How long the resource stands idle at least, when all of this is done, ticks. */
  readonly idle: number;
};

type Apart = (i: number, j: number) => boolean;

/** Whether lags put one behind the other. */
function follows({ count, lag, duration }: Model, i: number, j: number): boolean {
  return lag[i * count + j]! >= duration[i]!;
}

/** How long after the end of its opener a companion begins at the latest. */
function slackAfter({ count, lag, duration }: Model, opener: number, i: number): number {
  return -lag[i * count + opener]! - duration[opener]!;
}

/** All that may be companions together: each with an opener of its own, and all of them apart. */
function candidates(
  model: Model,
  users: readonly number[],
  apart: Apart,
  may: (activity: number) => boolean,
): readonly number[] {
  const { count, duration } = model;
  const isUser = new Set(users);
  const chosen: { readonly activity: number; readonly opener: number }[] = [];
  for (let i = 0; i < count; i++) {
    if (duration[i] === 0 || isUser.has(i) || !may(i)) continue;
    const opener = users.find(
      (one) => follows(model, one, i) && slackAfter(model, one, i) < duration[one]!,
    );
    if (opener === undefined) continue;
    const fits = chosen.every(
      (one) =>
        one.opener !== opener &&
        apart(one.activity, i) &&
        apart(one.opener, i) &&
        apart(one.activity, opener) &&
        slackAfter(model, opener, i) < duration[one.opener]! &&
        slackAfter(model, one.opener, one.activity) < duration[opener]!,
    );
    if (fits) chosen.push({ activity: i, opener });
  }
  return chosen.map(({ activity }) => activity);
}

/** Of each user: which of the activities may go on beside it. */
type Beside = readonly (readonly number[])[];

function leaksOf(
  { duration }: Model,
  users: readonly number[],
  beside: Beside,
  kept: ReadonlySet<number>,
): readonly number[] {
  return users.map((user, k) =>
    beside[k]!.reduce(
      (most, i) => (kept.has(i) ? Math.max(most, Math.min(duration[user]!, duration[i]!)) : most),
      0,
    ),
  );
}

/**
 * What lets a resource that is used one at a time stand idle: a kettle is poured
 * before it boils again, and little else may be on the burner meanwhile. Each
 * companion follows a user of the resource (its opener) so soon that no other
 * opener fits in between; so between two companions lies an opener, and
 * whatever goes on beside companions does so beside one of them at most.
 * @param users no two of them go together
 * @param may be a companion at all
 */
export function companionsOf(
  model: Model,
  users: readonly number[],
  may: (activity: number) => boolean,
): Companions {
  const apart: Apart = (i, j) =>
    excludes(model, i, j) || follows(model, i, j) || follows(model, j, i);
  const all = candidates(model, users, apart, may);
  const beside = users.map((user) => all.filter((i) => !apart(user, i)));
  const together = (kept: ReadonlySet<number>): Companions => {
    const leak = leaksOf(model, users, beside, kept);
    const taken = [...kept].reduce((sum, i) => sum + model.duration[i]!, 0);
    return { activities: [...kept], leak, idle: leak.reduce((rest, ticks) => rest - ticks, taken) };
  };
  let best = together(new Set(all));
  // One that lets more go on beside it than it takes itself says nothing.
  for (const one of new Set(beside.flat())) {
    const without = together(new Set(best.activities.filter((i) => i !== one)));
    if (without.idle >= best.idle) best = without;
  }
  return best;
}
