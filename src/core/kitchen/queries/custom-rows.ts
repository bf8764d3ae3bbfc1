import methods from '../../../../shared/customs/methods.json';
import table from '../../../../shared/customs/table.json';
import { BURNER_TYPES, OVEN_CLEANINGS } from '../model/ids.ts';
import type {
  BurnerType,
  CustomId,
  Fixture,
  FixtureKind,
  MethodId,
  OvenCleaning,
} from '../model/kitchen.ts';

/** What decides which methods make sense for a fixture. */
type Subject = {
  readonly kind: FixtureKind;
  readonly burner?: BurnerType;
  readonly cleaning?: OvenCleaning;
};
/** As the tables hold it; their words are checked by tests against the ids of the kitchen file. */
type Lists = {
  readonly kinds: readonly string[];
  readonly burners?: readonly string[];
  readonly cleaning?: readonly string[];
};
type CustomRowName = Lists & { readonly id: string; readonly customs?: readonly string[] };

const ROWS: readonly CustomRowName[] = table.rows;
const POSSIBLE: readonly (Lists & { readonly methods: readonly string[] })[] = methods.rows;

function holds(list: readonly string[] | undefined, value: string | undefined): boolean {
  return list === undefined || (value !== undefined && list.includes(value));
}

function methodsOf({ kind, burner, cleaning }: Subject): readonly string[] {
  const row = POSSIBLE.find(
    (one) =>
      one.kinds.includes(kind) && holds(one.burners, burner) && holds(one.cleaning, cleaning),
  );
  return row?.methods ?? [];
}

/** The methods that make sense for every one of these. */
function common(subjects: readonly Subject[]): readonly MethodId[] {
  const [first = [], ...rest] = subjects.map(methodsOf);
  return first.filter((one) => rest.every((list) => list.includes(one))) as MethodId[];
}

/** The methods that make sense for any one of these: a hob glows where one of its burners does. */
function joined(subjects: readonly Subject[]): readonly MethodId[] {
  return [...new Set(subjects.flatMap(methodsOf))] as MethodId[];
}

/** Methods that a rabbi's answer about this fixture can sensibly name, the usual one first. */
export function methodsForFixture(fixture: Fixture): readonly MethodId[] {
  const { kind } = fixture;
  if (kind === 'oven') return common([{ kind, cleaning: fixture.cleaning }]);
  if (kind === 'cooktop')
    return joined(fixture.burners.map(({ type }) => ({ kind, burner: type })));
  return common([{ kind }]);
}

function rowsOf(custom: CustomId): readonly CustomRowName[] {
  return ROWS.filter(({ customs }) => holds(customs, custom));
}

/** Ids of the rows of a built-in custom, in the order of its table. */
export function customRowIds(custom: CustomId): readonly string[] {
  return rowsOf(custom).map(({ id }) => id);
}

/** Methods that a row of a built-in custom can be changed to; none when there is no such row. */
export function methodsForRow(custom: CustomId, rowId: string): readonly MethodId[] {
  const row = rowsOf(custom).find(({ id }) => id === rowId);
  if (!row) return [];
  const kinds = row.kinds as readonly FixtureKind[];
  return common(
    kinds.flatMap((kind): readonly Subject[] => {
      if (kind === 'cooktop')
        return (row.burners ?? BURNER_TYPES).map((one) => ({ kind, burner: one as BurnerType }));
      if (kind === 'oven')
        return (row.cleaning ?? OVEN_CLEANINGS).map((one) => ({
          kind,
          cleaning: one as OvenCleaning,
        }));
      return [{ kind }];
    }),
  );
}
