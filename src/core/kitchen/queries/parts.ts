import table from '../../../../shared/parts.json';
import type { Fixture, PartId } from '../model/kitchen.ts';

type PartRow = {
  readonly id: PartId;
  readonly kinds: readonly string[];
  readonly burners?: readonly string[];
  readonly surfaces?: readonly string[];
  /** Only on a tap with a pull-out sprayer. */
  readonly sprayer?: boolean;
  readonly usual: boolean;
};

// A JSON import knows no literal types; tests hold the rows against the kitchen format.
const ROWS = table.rows as readonly unknown[] as readonly PartRow[];

function fits(row: PartRow, fixture: Fixture): boolean {
  if (!row.kinds.includes(fixture.kind)) return false;
  if (fixture.kind === 'cooktop') {
    const types = fixture.burners.map(({ type }) => type);
    return (
      (row.burners === undefined || types.some((type) => row.burners?.includes(type))) &&
      (row.surfaces === undefined || row.surfaces.includes(fixture.surface))
    );
  }
  return row.sprayer === undefined || (fixture.kind === 'sink' && fixture.tap.sprayer);
}

/** Every part that such a fixture can have, in the order of the table. */
export function possibleParts(fixture: Fixture): readonly PartId[] {
  return ROWS.filter((row) => fits(row, fixture)).map(({ id }) => id);
}

/** The parts that a fixture has: those that were told, else the usual ones. */
export function partsOf(fixture: Fixture): readonly PartId[] {
  const told = fixture.parts;
  return ROWS.filter(
    (row) => fits(row, fixture) && (told === undefined ? row.usual : told.includes(row.id)),
  ).map(({ id }) => id);
}
