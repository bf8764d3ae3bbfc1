import type {
  BurnerType,
  Condition,
  FixtureKind,
  Material,
  MethodId,
  OvenCleaning,
  Purpose,
} from '../../kitchen/index.ts';
import type {
  ConditionRule,
  CustomRow,
  CustomTable,
  Fact,
  FactRule,
  Told,
} from '../model/types.ts';

/** What a row is looked up by. */
export type Looked = {
  readonly kind: FixtureKind;
  readonly purpose: Purpose;
  readonly material?: Material;
  readonly condition?: Condition;
  readonly burner?: BurnerType;
  readonly cleaning?: OvenCleaning;
  /** What is told about its use; what is absent is not known. */
  readonly facts?: Readonly<Partial<Record<Fact, Told>>>;
};

function holds<T>(list: readonly T[] | undefined, value: T | undefined): boolean {
  return list === undefined || (value !== undefined && list.includes(value));
}

/**
 * The first row of the table that holds.
 * @throws RangeError when none does: a table has a row for everything
 */
export function findRow(table: CustomTable, looked: Looked): CustomRow {
  const row = table.rows.find(
    (one) =>
      one.kinds.includes(looked.kind) &&
      holds(one.materials, looked.material) &&
      holds(one.conditions, looked.condition) &&
      holds(one.purposes, looked.purpose) &&
      holds(one.burners, looked.burner) &&
      holds(one.cleaning, looked.cleaning),
  );
  if (!row)
    throw new RangeError(
      `custom ${table.id} is without a row for ${JSON.stringify(looked)}; allowed: a row for everything. Add it to the table.`,
    );
  return row;
}

/** What its condition changes, if anything. */
export function findConditionRule(
  table: CustomTable,
  looked: Looked,
  method: MethodId,
): ConditionRule | undefined {
  const { condition } = looked;
  if (condition === undefined) return undefined;
  return table.conditionRules.find(
    (one) =>
      one.kinds.includes(looked.kind) &&
      one.methods.includes(method) &&
      holds(one.materials, looked.material) &&
      one.conditions.includes(condition),
  );
}

/** What is known of its use changes: every rule that holds, in the order of the table. */
export function findFactRules(
  table: CustomTable,
  looked: Looked,
  method: MethodId,
): readonly FactRule[] {
  return table.factRules.filter(
    (one) =>
      one.kinds.includes(looked.kind) &&
      one.methods.includes(method) &&
      holds(one.materials, looked.material) &&
      holds(one.purposes, looked.purpose) &&
      one.told.includes(looked.facts?.[one.fact] ?? 'unknown'),
  );
}
