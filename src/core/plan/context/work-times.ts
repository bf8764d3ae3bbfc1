import table from '../../../../shared/cleaning.json';
import type { Fixture, FixtureKind } from '../../kitchen/index.ts';
import { areaM2, netAreaM2 } from '../../kitchen/index.ts';
import { mapBand, type Band } from '../../units/index.ts';

// Work that people do with their hands, from shared/cleaning.json (minutes).

const S_MIN = 60;

type PerUnit = Band & { readonly of: string };

export type Cleaning = {
  readonly kind: FixtureKind;
  /** 1 is cleaned first: high before low. */
  readonly level: number;
  readonly checklist: readonly string[];
  readonly source: string;
};

export type Preparing = (typeof table.preparing)[number];
export type Handwork = (typeof table.finishing)[number]['id'];

export const PREPARING: readonly Preparing[] = table.preparing;

function rowOf(kind: FixtureKind) {
  const row = table.rows.find((one) => one.kind === kind);
  if (!row) throw new RangeError(`kind is "${kind}"; allowed: a row of cleaning. Add it.`);
  return row;
}

/** Checklist and order of cleaning a kind of fixture. */
export function cleaningOf(kind: FixtureKind): Cleaning {
  const { level, checklist, source } = rowOf(kind);
  return { kind, level, checklist, source };
}

/** How many of its units a fixture has: shelves, burners, bowls or square metres. */
function unitsOf(fixture: Fixture, of: string): number {
  switch (of) {
    case 'shelf':
      return 'shelves' in fixture ? fixture.shelves.length : 1;
    case 'burner':
      return fixture.kind === 'cooktop' ? fixture.burners.length : 1;
    case 'bowl':
      return fixture.kind === 'sink' ? fixture.bowls.length : 1;
    default:
      return surfaceM2(fixture);
  }
}

/** Area seen from above, less cut-outs; shelves where there are some, m². */
export function surfaceM2(fixture: Fixture): number {
  if ('shelves' in fixture && fixture.shelves.length > 0)
    return fixture.shelves.reduce((sum, { lengthM, widthM }) => sum + lengthM * widthM, 0);
  if (!('outline' in fixture) || fixture.outline === undefined) return 0;
  return fixture.kind === 'counter'
    ? netAreaM2(fixture.outline, fixture.holes)
    : areaM2(fixture.outline);
}

function total(base: Band, perUnit: PerUnit | undefined, units: number): Band {
  const at = (end: keyof Band): number => S_MIN * (base[end] + (perUnit?.[end] ?? 0) * units);
  return { low: at('low'), typical: at('typical'), high: at('high') };
}

/** Seconds that one person takes to clean a fixture. */
export function cleaningS(fixture: Fixture): Band {
  const { minutes, perUnit } = rowOf(fixture.kind);
  return total(minutes, perUnit, perUnit ? unitsOf(fixture, perUnit.of) : 0);
}

/** Seconds of other handwork; `fixture` gives its units where the work goes by them. */
export function handworkS(id: Handwork, fixture?: Fixture): Band {
  const row = table.finishing.find((one) => one.id === id);
  if (!row) throw new RangeError(`handwork is "${id}"; allowed: a row of finishing. Add it.`);
  const { minutes, perUnit } = row;
  return total(minutes, perUnit, perUnit && fixture ? unitsOf(fixture, perUnit.of) : 0);
}

export function preparingS(row: Preparing): Band {
  return mapBand(row.minutes, (minutes) => minutes * S_MIN);
}
