import type { Kitchen } from '../../kitchen/index.ts';
import { OutOfRangeError } from '../../units/index.ts';
import { buildPlan, type PlanOptions } from '../build/build-plan.ts';
import type { Plan } from '../model/index.ts';

/** Burners that a kettle of this kitchen stands on. */
function kettleBurners({ vessels }: Kitchen): ReadonlySet<string> {
  return new Set(
    vessels.flatMap(({ kind, burner }) =>
      kind === 'stove-kettle' && burner !== undefined ? [burner] : [],
    ),
  );
}

/** Has it a kettle that needs no stove? */
function plugsIn({ vessels }: Kitchen): boolean {
  return vessels.some(({ kind, ratedW }) => kind === 'electric-kettle' && ratedW > 0);
}

/**
 * The kitchen as far as the doubt reaches: the fixtures it touches, and the
 * cooktop under the kettle where there is no other way to boil.
 */
function reach(kitchen: Kitchen, fixtureIds: ReadonlySet<string>): Kitchen {
  const stove = plugsIn(kitchen) ? new Set<string>() : kettleBurners(kitchen);
  const fixtures = kitchen.fixtures.filter(
    (one) =>
      fixtureIds.has(one.id) ||
      (one.kind === 'cooktop' && one.burners.some(({ id }) => stove.has(id))),
  );
  const kept = new Set(fixtures.map(({ id }) => id));
  const burners = new Set(
    fixtures.flatMap((one) => (one.kind === 'cooktop' ? one.burners.map(({ id }) => id) : [])),
  );
  const { utensils: _notInDoubt, ...rest } = kitchen;
  return {
    ...rest,
    household: {
      ...kitchen.household,
      purpose: 'mix-up',
      overrides: kitchen.household.overrides.filter(({ fixture }) => kept.has(fixture)),
    },
    vessels: kitchen.vessels.filter(({ burner }) => burner === undefined || burners.has(burner)),
    fixtures,
  };
}

/**
 * A small plan for a doubt that came up after a run had closed: only the
 * fixtures it touches, each with the question whether it must be purged again,
 * its rest of 24 hours and its purge.
 * @param fixtureIds one or more fixtures of the kitchen
 * @param what happened, in the household's words
 * @throws OutOfRangeError for no fixture or an unknown one, for no words, and
 *   when a model refuses a number of the kitchen
 */
export function planForRecheck(
  kitchen: Kitchen,
  fixtureIds: readonly string[],
  what: string,
  options: Omit<PlanOptions, 'recheck'> = {},
): Plan {
  const known = kitchen.fixtures.map(({ id }) => id);
  const wrong = fixtureIds.find((id) => !known.includes(id));
  if (fixtureIds.length === 0 || wrong !== undefined)
    throw new OutOfRangeError(
      'fixtureIds',
      wrong ?? 'empty',
      known.join(', '),
      'Choose what it happened to.',
    );
  if (what.trim() === '')
    throw new OutOfRangeError('what', 'empty', 'some words', 'Write what happened.');
  const doubted = new Set(fixtureIds);
  return buildPlan(reach(kitchen, doubted), {
    ...options,
    recheck: { what: what.trim(), fixtures: [...doubted] },
  });
}
