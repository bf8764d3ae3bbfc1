import ashkenazic from '../../../../shared/customs/ashkenazic.json';
import parts from '../../../../shared/customs/parts.json';
import sephardic from '../../../../shared/customs/sephardic.json';
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

type RawTable = Omit<CustomTable, 'rows' | 'conditionRules' | 'factRules'> & {
  readonly rows: readonly RawRow[];
  readonly conditionRules: readonly RawRule[];
  readonly factRules: readonly RawFactRule[];
};

/** The tables are ours: a test holds their shape against a schema, so none is checked while running. */
function tableOfRaw({ rows, conditionRules, factRules, ...table }: RawTable): CustomTable {
  return {
    ...table,
    rows: rows.map(withTexts),
    conditionRules: conditionRules.map((rule) => ruleWithTexts(rule)),
    factRules: factRules.map((rule) => ruleWithTexts(rule)),
  };
}

const TABLES: Readonly<Record<CustomId, CustomTable>> = {
  sephardic: tableOfRaw(sephardic as unknown as RawTable),
  ashkenazic: tableOfRaw(ashkenazic as unknown as RawTable),
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
