import table from '../../../../shared/cleaning.json';
import { partsOf, type Fixture, type FixtureKind, type PartId } from '../../kitchen/index.ts';
import { areaM2, netAreaM2 } from '../../geometry/index.ts';
import { message, type Message, type PlainKey } from '../../messages/index.ts';
import { mapBand, SECONDS_PER_MINUTE, type Band } from '../../units/index.ts';

// Work that people do with their hands, from shared/cleaning.json (minutes). Its
// words stand in the catalogue under the ids of the rows; a test walks both.

type PerUnit = Band & { readonly of: string };

type Cleaning = {
  /** 1 is cleaned first: high before low. */
  readonly level: number;
  readonly checklist: readonly Message[];
  /** Key of a source. */
  readonly source: string;
};

type PreparingTask = 'ask' | 'gather' | 'alarms' | 'clear';
type PreparingRow = {
  readonly id: PreparingTask;
  readonly minutes: Band;
  /** Number of lines in the catalogue. */
  readonly lines: number;
  /** Key of a source. */
  readonly source: string;
};
type Handwork = (typeof table.finishing)[number]['id'];

export const PREPARING = table.preparing as readonly PreparingRow[];

function lines(count: number, key: (line: number) => string): readonly Message[] {
  return Array.from({ length: count }, (_, at) => message(key(at + 1) as PlainKey));
}

/** What is to be done in a task of preparing, line by line. */
export function preparingLines({ id, lines: count }: PreparingRow): readonly Message[] {
  return lines(count, (line) => `steps.prepare.${id}.line-${line}`);
}

function rowOf(kind: FixtureKind) {
  const row = table.rows.find((one) => one.kind === kind);
  if (!row) throw new RangeError(`kind is "${kind}"; allowed: a row of cleaning. Add it.`);
  return row;
}

/** What must be there for a line; an absent field holds for everything. */
type LineWhen = {
  /** Any of these parts, which is kept. */
  readonly parts?: readonly PartId[];
  readonly surfaces?: readonly string[];
  /** In one appliance with a cooktop. */
  readonly inRange?: boolean;
};

function isThere(
  { parts, surfaces, inRange }: LineWhen,
  fixture: Fixture,
  kept: readonly PartId[],
): boolean {
  const ranged = fixture.kind === 'oven' && fixture.sharesRangeWith !== undefined;
  return (
    (parts === undefined || parts.some((part) => kept.includes(part))) &&
    (surfaces === undefined ||
      (fixture.kind === 'cooktop' && surfaces.includes(fixture.surface))) &&
    (inRange === undefined || inRange === ranged)
  );
}

/**
 * Checklist and order of cleaning a fixture: only what it has.
 * @param kept parts of it that are not replaced
 */
export function cleaningOf(fixture: Fixture, kept: readonly PartId[] = partsOf(fixture)): Cleaning {
  const { kind } = fixture;
  const row = rowOf(kind);
  const whens = row.lines as readonly LineWhen[];
  const checklist = lines(whens.length, (line) => `steps.clean.${kind}.line-${line}`);
  return {
    level: row.level,
    checklist: checklist.filter((_, at) => isThere(whens[at] ?? {}, fixture, kept)),
    source: row.source,
  };
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
  const at = (end: keyof Band): number =>
    SECONDS_PER_MINUTE * (base[end] + (perUnit?.[end] ?? 0) * units);
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

/** Seconds that a task of preparing takes. */
export function preparingS(row: PreparingRow): Band {
  return mapBand(row.minutes, (minutes) => minutes * SECONDS_PER_MINUTE);
}
