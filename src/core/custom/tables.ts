import ashkenazic from '../../../shared/customs/ashkenazic.json';
import sephardic from '../../../shared/customs/sephardic.json';
import type { CustomId, Household, OwnCustom } from '../kitchen/index.ts';
import { readCustomTable } from './read-table.ts';
import { withOwnRows } from './own-rows.ts';
import type { CustomTable } from './types.ts';

const TABLES: Readonly<Record<CustomId, CustomTable>> = {
  sephardic: readCustomTable(sephardic),
  ashkenazic: readCustomTable(ashkenazic),
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

/** "Sephardic", or "Our custom (Sephardic with 2 rows of our own)". */
export function customName(household: Household): string {
  const { name } = TABLES[household.custom];
  const own = ownCustomOf(household);
  if (!own) return name;
  const rows = own.changedRows.length;
  const words = rows === 0 ? 'unchanged' : `with ${rows} ${rows === 1 ? 'row' : 'rows'} of our own`;
  return `${own.name} (${name}, ${words})`;
}
