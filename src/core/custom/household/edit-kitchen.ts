import type {
  Condition,
  Fixture,
  Household,
  Kitchen,
  Material,
  Override,
  OwnCustom,
  OwnRow,
  SurfaceFacts,
} from '../../kitchen/index.ts';
import type { ChosenQuestion, RowAnswer } from '../model/types.ts';
import { ownCustomOf } from '../table/tables.ts';

function withHousehold(kitchen: Kitchen, change: Partial<Household>): Kitchen {
  return { ...kitchen, household: { ...kitchen.household, ...change } };
}

/** What an answer speaks of, beside its fixture. */
type About = Pick<Override, 'row' | 'part' | 'burner'>;

function sameAbout(a: About, b: About): boolean {
  return a.row === b.row && a.part === b.part && a.burner === b.burner;
}

/**
 * The kitchen without what was said about a fixture: the row of the custom
 * stands again.
 * @param about the question whose answer alone is taken back; the whole
 *   fixture's, where it was answered so
 */
export function withoutAnswer(kitchen: Kitchen, fixture: string, about?: About): Kitchen {
  const { overrides } = kitchen.household;
  const isOf = (one: Override): boolean => one.fixture === fixture;
  const exact = about && overrides.some((one) => isOf(one) && sameAbout(one, about));
  const goes = (one: Override): boolean =>
    isOf(one) && (about === undefined || sameAbout(one, exact ? about : {}));
  return withHousehold(kitchen, { overrides: overrides.filter((one) => !goes(one)) });
}

/** An answer as far as it is not words. */
type Way = Pick<RowAnswer, 'method' | 'cover'> & {
  readonly [K in 'minutes' | 'times' | 'rest' | 'stone' | 'upwards']?: RowAnswer[K] | undefined;
};

/** A known answer to a question, as what was said: it speaks of that question alone. */
export function answerAs(
  question: Pick<ChosenQuestion, 'fixture' | 'row' | 'part'>,
  { method, cover, minutes, times, rest, stone, upwards }: Way,
  said: Pick<Override, 'saidBy' | 'saidOn' | 'text'>,
): Override {
  const { fixture, row, part } = question;
  return {
    fixture,
    method,
    ...(minutes !== undefined && { minutes }),
    ...(times !== undefined && { times }),
    cover,
    ...(rest !== undefined && { rest }),
    ...(stone !== undefined && { stone }),
    ...(upwards !== undefined && { upwards }),
    ...(part !== undefined ? { part } : row !== undefined && { row }),
    ...said,
  };
}

/** The kitchen with an answer, in place of any earlier one about the same. */
export function withAnswer(kitchen: Kitchen, said: Override): Kitchen {
  const kept = kitchen.household.overrides.filter(
    (one) => one.fixture !== said.fixture || !sameAbout(one, said),
  );
  return withHousehold(kitchen, { overrides: [...kept, said] });
}

/** What can be told of the use of a kind of fixture. */
function factsOf(kind: Fixture['kind']): readonly (keyof SurfaceFacts)[] {
  if (kind === 'counter' || kind === 'table') return ['varnished', 'kneaded', 'hotFood'];
  if (kind === 'sink') return ['varnished'];
  return kind === 'cupboard' || kind === 'drawer' ? ['hotFood'] : [];
}

/** What was found by looking at a fixture: it answers the questions about what it is. */
export function withFound(
  kitchen: Kitchen,
  fixture: string,
  found: { readonly material?: Material; readonly condition?: Condition } & SurfaceFacts,
): Kitchen {
  const change = (one: Fixture): Fixture => {
    const material = found.material !== undefined && 'material' in one;
    const condition = found.condition !== undefined && 'condition' in one;
    // Only fields that this kind of fixture has already are written.
    const { varnished, kneaded, hotFood } = found;
    const known = factsOf(one.kind);
    return {
      ...one,
      ...(material && { material: found.material }),
      ...(condition && { condition: found.condition }),
      ...(varnished !== undefined && known.includes('varnished') && { varnished }),
      ...(kneaded !== undefined && known.includes('kneaded') && { kneaded }),
      ...(hotFood !== undefined && known.includes('hotFood') && { hotFood }),
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
