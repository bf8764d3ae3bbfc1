import ashkenazic from '../../../shared/customs/ashkenazic.json';
import sephardic from '../../../shared/customs/sephardic.json';
import type { CustomId, Household, OwnCustom } from '../kitchen/index.ts';
import { message, type Message } from '../messages/index.ts';
import { withOwnRows } from './own-rows.ts';
import { ruleWithTexts, withTexts, type RawRow, type RawRule } from './row-texts.ts';
import type { CustomTable } from './types.ts';

type RawTable = Omit<CustomTable, 'rows' | 'conditionRules'> & {
  readonly rows: readonly RawRow[];
  readonly conditionRules: readonly RawRule[];
};

/** The tables are ours: a test holds their shape against a schema, so none is checked while running. */
function tableOfRaw({ rows, conditionRules, ...table }: RawTable): CustomTable {
  return { ...table, rows: rows.map(withTexts), conditionRules: conditionRules.map(ruleWithTexts) };
}

const TABLES: Readonly<Record<CustomId, CustomTable>> = {
  sephardic: tableOfRaw(sephardic as unknown as RawTable),
  ashkenazic: tableOfRaw(ashkenazic as unknown as RawTable),
};

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
