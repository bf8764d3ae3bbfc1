import table from '../../../../shared/physics/specific-heats.json';
import { LITRES_PER_M3, OutOfRangeError, type Band } from '../../units/index.ts';

type Row = {
  readonly id: string;
  readonly heatCapacityJKgK: Band;
  readonly densityKgM3: number;
};

const ROWS: readonly Row[] = table.rows;

/** Ids of all rows, in the order of the table. */
export function specificHeatIds(): readonly string[] {
  return ROWS.map(({ id }) => id);
}

function rowOf(material: string): Row {
  const row = ROWS.find(({ id }) => id === material);
  if (row) return row;
  const allowed = specificHeatIds().join(', ');
  throw new OutOfRangeError('itemMaterial', material, allowed, 'Choose one of these.');
}

/**
 * Specific heat of what a utensil is made of, J/(kg K).
 * @throws OutOfRangeError when no row has that id
 */
export function specificHeat(material: string): Band {
  return rowOf(material).heatCapacityJKgK;
}

/**
 * Water that a mass of it displaces when it sinks, L.
 * @throws OutOfRangeError when no row has that id
 */
export function displacedLitres(material: string, massKg: number): number {
  return (massKg / rowOf(material).densityKgM3) * LITRES_PER_M3;
}
