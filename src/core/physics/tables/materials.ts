import table from '../../../../shared/materials.json';
import { OutOfRangeError, type Band } from '../../units/index.ts';

/** Class of burn thresholds. */
export type TouchKind = 'metal' | 'mineral' | 'plastic' | 'wood';

export type MaterialRow = {
  readonly id: string;
  readonly kind: TouchKind | 'unknown';
  readonly conductivityWMK: number;
  readonly densityKgM3: number;
  readonly heatCapacityJKgK: number;
  readonly emissivity: number;
  /** Contact angle of water: clean and wet to greasy, sealed or waxed. */
  readonly contactDeg: Band;
  /** As kitchens have it, with nothing below that takes heat; a laminate with its board. */
  readonly thicknessMm: Band;
  /** Sudden difference of temperature that may crack it; null: it does not crack so. */
  readonly shockK: Band | null;
  readonly source: string;
  readonly checked: boolean;
};

const ROWS = table.rows as readonly MaterialRow[];

/** Ids of all rows, in the order of the table. */
export function materialIds(): readonly string[] {
  return ROWS.map(({ id }) => id);
}

/**
 * Properties of a kitchen surface.
 * @throws OutOfRangeError when no row has that id
 */
export function material(id: string): MaterialRow {
  const row = ROWS.find((found) => found.id === id);
  if (row) return row;
  throw new OutOfRangeError('material', id, materialIds().join(', '), 'Choose one of these.');
}

/** Heat a square metre of it pulls at sudden contact, W·s^½/(m² K): √(kρc). */
export function effusivity(id: string): number {
  const { conductivityWMK, densityKgM3, heatCapacityJKgK } = material(id);
  return Math.sqrt(conductivityWMK * densityKgM3 * heatCapacityJKgK);
}
