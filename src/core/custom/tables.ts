import ashkenazic from '../../../shared/customs/ashkenazic.json';
import sephardic from '../../../shared/customs/sephardic.json';
import type { CustomId } from '../kitchen/index.ts';
import { readCustomTable } from './read-table.ts';
import type { CustomTable } from './types.ts';

const TABLES: Readonly<Record<CustomId, CustomTable>> = {
  sephardic: readCustomTable(sephardic),
  ashkenazic: readCustomTable(ashkenazic),
};

/** The table of a custom. */
export function customTable(custom: CustomId): CustomTable {
  return TABLES[custom];
}
