import type {
  Condition,
  Fixture,
  Household,
  Kitchen,
  Material,
  Override,
  OwnCustom,
  OwnRow,
} from '../kitchen/index.ts';
import { ownCustomOf } from './tables.ts';

function withHousehold(kitchen: Kitchen, change: Partial<Household>): Kitchen {
  return { ...kitchen, household: { ...kitchen.household, ...change } };
}

/** The kitchen without what was said about a fixture: the row of the custom stands again. */
export function withoutAnswer(kitchen: Kitchen, fixture: string): Kitchen {
  const overrides = kitchen.household.overrides.filter((one) => one.fixture !== fixture);
  return withHousehold(kitchen, { overrides });
}

/** The kitchen with an answer about a fixture, in place of any earlier one. */
export function withAnswer(kitchen: Kitchen, said: Override): Kitchen {
  const { overrides } = withoutAnswer(kitchen, said.fixture).household;
  return withHousehold(kitchen, { overrides: [...overrides, said] });
}

/** What was found by looking at a fixture: it answers the questions about what it is. */
export function withFound(
  kitchen: Kitchen,
  fixture: string,
  found: { readonly material?: Material; readonly condition?: Condition },
): Kitchen {
  const change = (one: Fixture): Fixture => {
    const material = found.material !== undefined && 'material' in one;
    const condition = found.condition !== undefined && 'condition' in one;
    // Only fields that this kind of fixture has already are written.
    return {
      ...one,
      ...(material && { material: found.material }),
      ...(condition && { condition: found.condition }),
    } as Fixture;
  };
  return {
    ...kitchen,
    fixtures: kitchen.fixtures.map((one) => (one.id === fixture ? change(one) : one)),
  };
}

/**
 * The kitchen with a custom of its own under a name; a copy of the custom it
 * follows where it had none. One that was copied from the other custom is
 * replaced.
 */
export function withOwnCustom(kitchen: Kitchen, name: string): Kitchen {
  const { household } = kitchen;
  const kept = ownCustomOf(household)?.changedRows ?? [];
  const ownCustom: OwnCustom = { name, basedOn: household.custom, changedRows: kept };
  return withHousehold(kitchen, { ownCustom });
}

/** The built-in custom alone again; answers about fixtures stay. */
export function withoutOwnCustom(kitchen: Kitchen): Kitchen {
  const { ownCustom: _gone, ...household } = kitchen.household;
  return { ...kitchen, household };
}

/** Back to the base row. */
export function withoutOwnRow(kitchen: Kitchen, row: string): Kitchen {
  const own = ownCustomOf(kitchen.household);
  if (!own) return kitchen;
  const changedRows = own.changedRows.filter((one) => one.row !== row);
  return withHousehold(kitchen, { ownCustom: { ...own, changedRows } });
}

/** One row as the household has it, in place of any earlier change of it. */
export function withOwnRow(kitchen: Kitchen, changed: OwnRow, name: string): Kitchen {
  const started = ownCustomOf(kitchen.household) ? kitchen : withOwnCustom(kitchen, name);
  const own = ownCustomOf(withoutOwnRow(started, changed.row).household);
  if (!own) return kitchen;
  return withHousehold(started, {
    ownCustom: { ...own, changedRows: [...own.changedRows, changed] },
  });
}
