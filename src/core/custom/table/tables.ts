import parts from '../../../../shared/customs/parts.json';
import table from '../../../../shared/customs/table.json';
import type { CustomId, Household, OwnCustom } from '../../kitchen/index.ts';
import { message, type Message } from '../../messages/index.ts';
import { withOwnRows } from './own-rows.ts';
import {
  partWithTexts,
  ruleWithTexts,
  withTexts,
  type RawFactRule,
  type RawPartRow,
  type RawRow,
  type RawRule,
} from './row-texts.ts';
import type { CustomTable, PartRow } from '../model/types.ts';

/** Of one custom, or of both where it names none. */
type Whose = { readonly customs?: readonly CustomId[] };

type RawTable = {
  readonly customs: readonly Omit<CustomTable, 'rows' | 'conditionRules' | 'factRules'>[];
  readonly rows: readonly (RawRow & Whose)[];
  readonly conditionRules: readonly (RawRule & Whose)[];
  readonly factRules: readonly (RawFactRule & Whose)[];
};

/** The table is ours: a test holds its shape against a schema, so none is checked while running. */
const TABLE = table as unknown as RawTable;

function of<T extends Whose>(custom: CustomId, all: readonly T[]): readonly Omit<T, 'customs'>[] {
  return all.flatMap(({ customs, ...one }) => (customs?.includes(custom) === false ? [] : [one]));
}

function tableOfRaw(custom: CustomId): CustomTable {
  const head = TABLE.customs.find(({ id }) => id === custom);
  if (!head)
    throw new RangeError(`custom is “${custom}”; allowed: one of shared/customs/table.json.`);
  return {
    ...head,
    rows: of(custom, TABLE.rows).map(withTexts),
    conditionRules: of(custom, TABLE.conditionRules).map((rule) => ruleWithTexts(rule)),
    factRules: of(custom, TABLE.factRules).map((rule) => ruleWithTexts(rule)),
  };
}

const TABLES: Readonly<Record<CustomId, CustomTable>> = {
  sephardic: tableOfRaw('sephardic'),
  ashkenazic: tableOfRaw('ashkenazic'),
};

/** How parts are treated, by every custom. */
export const PART_ROWS: readonly PartRow[] = (
  parts.rows as readonly unknown[] as readonly RawPartRow[]
).map(partWithTexts);

/** The own custom a household follows; none while it follows another than it copied. */
export function ownCustomOf(household: Household): OwnCustom | undefined {
  const own = household.ownCustom;
  return own?.basedOn === household.custom ? own : undefined;
}

/** The table of a custom, with the rows of a household's own in their places. */
export function customTable(custom: CustomId, own?: OwnCustom): CustomTable {
  const table = TABLES[custom];
  return own?.basedOn === custom ? withOwnRows(table, own) : table;
}

/** The table a household goes by. */
export function tableOf(household: Household): CustomTable {
  return customTable(household.custom, ownCustomOf(household));
}

/** "Sephardic", or "Our custom (Sephardic, with 2 rows of our own)". */
export function customName(household: Household): Message {
  const base = message(`custom.name.${household.custom}`);
  const own = ownCustomOf(household);
  return own
    ? message('custom.name.own', { name: own.name, base, rows: own.changedRows.length })
    : base;
}
