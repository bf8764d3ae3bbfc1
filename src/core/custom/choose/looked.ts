import type { Burner, Fixture, Kitchen } from '../../kitchen/index.ts';
import type { CustomRow, Fact, Told } from '../model/types.ts';
import { findRow, type Looked } from '../table/find-row.ts';
import { tableOf } from '../table/tables.ts';

const FACTS: readonly Fact[] = ['varnished', 'kneaded', 'hotFood'];

function told(fixture: Fixture, fact: Fact): Told {
  const value: unknown = Object.entries(fixture).find(([field]) => field === fact)?.[1];
  if (typeof value !== 'boolean') return 'unknown';
  return value ? 'yes' : 'no';
}

/** What the rows of a custom are looked up by. */
export function lookedOf(fixture: Fixture, kitchen: Kitchen): Looked {
  return {
    kind: fixture.kind,
    purpose: kitchen.household.purpose,
    ...('material' in fixture && { material: fixture.material }),
    ...('condition' in fixture && { condition: fixture.condition }),
    ...(fixture.kind === 'oven' && { cleaning: fixture.cleaning }),
    facts: Object.fromEntries(FACTS.map((fact) => [fact, told(fixture, fact)])),
  };
}

/** The row of a fixture, or of one of its burners. */
export function rowFor(fixture: Fixture, kitchen: Kitchen, burner?: Burner): CustomRow {
  const looked = lookedOf(fixture, kitchen);
  return findRow(tableOf(kitchen.household), burner ? { ...looked, burner: burner.type } : looked);
}

/** A cooktop goes by what its burners get; one that glows speaks for all. */
export function rowsOf(
  fixture: Fixture,
  kitchen: Kitchen,
): readonly [CustomRow, ...(readonly CustomRow[])] {
  if (fixture.kind !== 'cooktop') return [rowFor(fixture, kitchen)];
  const rows = [...new Set(fixture.burners.map((burner) => rowFor(fixture, kitchen, burner)))];
  const [first, ...others] = rows.toSorted(
    (a, b) => Number(b.method === 'glow') - Number(a.method === 'glow'),
  );
  if (first) return [first, ...others];
  const burner = fixture.surface === 'glass-ceramic' ? 'radiant-glass' : 'electric-coil';
  return [findRow(tableOf(kitchen.household), { ...lookedOf(fixture, kitchen), burner })];
}
