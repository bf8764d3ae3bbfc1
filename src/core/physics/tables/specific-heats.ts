import table from '../../../../shared/specific-heats.json';
import { OutOfRangeError, type Band } from '../../units/index.ts';

type Row = { readonly id: string; readonly heatCapacityJKgK: Band };

const ROWS: readonly Row[] = table.rows;

/** Ids of all rows, in the order of the table. */
export function specificHeatIds(): readonly string[] {
  return ROWS.map(({ id }) => id);
}

/**
 * Specific heat of what a utensil is made of, J/(kg K).
 * @throws OutOfRangeError when no row has that id
 */
export function specificHeat(material: string): Band {
  const row = ROWS.find(({ id }) => id === material);
  if (row) return row.heatCapacityJKgK;
  const allowed = specificHeatIds().join(', ');
  throw new OutOfRangeError('itemMaterial', material, allowed, 'Choose one of these.');
}
