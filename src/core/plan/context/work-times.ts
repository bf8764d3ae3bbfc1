import table from '../../../../shared/cleaning.json';
import {
  hoodTold,
  partsOf,
  windowTold,
  type Fixture,
  type FixtureKind,
  type Kitchen,
  type PartId,
} from '../../kitchen/index.ts';
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
  readonly lines: readonly PreparingLine[];
  /** Key of a source. */
  readonly source: string;
};
type Handwork = (typeof table.finishing)[number]['id'];

export const PREPARING = table.preparing as readonly PreparingRow[];

/** Number of its sentence in the catalogue, and what of the kitchen must be there for it. */
type PreparingLine = {
  readonly line: number;
  /** To the outside. */
  readonly hood?: true;
  /** That opens. */
  readonly window?: true;
};

/** What is to be done in a task of preparing, line by line: only what the kitchen has. */
export function preparingLines({ id, lines }: PreparingRow, kitchen: Kitchen): readonly Message[] {
  return lines
    .filter(({ hood }) => hood === undefined || hoodTold(kitchen))
    .filter(({ window }) => window === undefined || windowTold(kitchen))
    .map(({ line }) => message(`steps.prepare.${id}.line-${line}` as PlainKey));
}

function rowOf(kind: FixtureKind) {
  const row = table.rows.find((one) => one.kind === kind);
  if (!row) throw new RangeError(`kind is "${kind}"; allowed: a row of cleaning. Add it.`);
  return row;
}

/** Number of its sentence in the catalogue, and what must be there for it; an absent field holds for everything. */
type CleaningLine = {
  readonly line: number;
  /** Any of these parts, which is kept. */
  readonly parts?: readonly PartId[];
  readonly surfaces?: readonly string[];
  /** In one appliance with a cooktop. */
  readonly inRange?: boolean;
  /** Not a plate that is put away. */
  readonly builtIn?: boolean;
  /** At the tap. */
  readonly handles?: boolean;
  readonly drainboard?: boolean;
  /** At a wall behind it. */
  readonly backsplash?: boolean;
  readonly shelves?: boolean;
  readonly place?: string;
};

/** What of a fixture the lines may ask for; a question that does not fit its kind is answered no. */
function featuresOf(fixture: Fixture): Omit<Required<CleaningLine>, 'line' | 'parts' | 'surfaces'> {
  const { kind } = fixture;
  return {
    inRange: kind === 'oven' && fixture.sharesRangeWith !== undefined,
    builtIn: kind === 'cooktop' && fixture.burners.some(({ type }) => type !== 'portable-plate'),
    handles: kind === 'sink' && fixture.tap.handles > 0,
    drainboard: kind === 'sink' && fixture.drainboard,
    backsplash: kind === 'counter' && fixture.backEdges.length > 0 && fixture.backsplashHeightM > 0,
    shelves: 'shelves' in fixture && fixture.shelves.length > 0,
    place: ('place' in fixture && fixture.place) || '',
  };
}

function isThere(
  { line: _line, parts, surfaces, ...asked }: CleaningLine,
  fixture: Fixture,
  kept: readonly PartId[],
): boolean {
  const features = featuresOf(fixture);
  return (
    (parts === undefined || parts.some((part) => kept.includes(part))) &&
    (surfaces === undefined ||
      (fixture.kind === 'cooktop' && surfaces.includes(fixture.surface))) &&
    Object.entries(asked).every(([name, value]) => features[name as keyof typeof asked] === value)
  );
}

/**
 * Checklist and order of cleaning a fixture: only what it has.
 * @param kept parts of it that are not replaced
 */
export function cleaningOf(fixture: Fixture, kept: readonly PartId[] = partsOf(fixture)): Cleaning {
  const { kind } = fixture;
  const row = rowOf(kind);
  const lines = row.lines as readonly CleaningLine[];
  return {
    level: row.level,
    checklist: lines
      .filter((line) => isThere(line, fixture, kept))
      .map(({ line }) => message(`steps.clean.${kind}.line-${line}` as PlainKey)),
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
