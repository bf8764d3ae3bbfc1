import { afterAll, describe, expect, it } from 'vitest';
import { BASIS } from '../../../src/core/physics/index.ts';
import { BOILING_ROWS } from './rows/boiling.ts';
import { HEAT_ROWS } from './rows/heat.ts';
import { IMMERSION_ROWS } from './rows/immersion.ts';
import { KETTLE_ROWS } from './rows/kettle.ts';
import { LIBRARY_ROWS } from './rows/library.ts';
import { POUR_ROWS } from './rows/pour.ts';
import { POURED_ROWS } from './rows/poured.ts';
import { ROOM_LIMIT_ROWS } from './rows/room-limits.ts';
import { ROOM_ROWS } from './rows/room.ts';
import { kindOf, type Row, type RowKind } from './rows/row.ts';
import { SURFACE_ROWS } from './rows/surface.ts';
import { TOUCH_ROWS } from './rows/touch.ts';
import { WATER_ROWS } from './rows/water.ts';

const ALL: readonly Row[] = [
  ...BOILING_ROWS,
  ...WATER_ROWS,
  ...KETTLE_ROWS,
  ...IMMERSION_ROWS,
  ...POUR_ROWS,
  ...POURED_ROWS,
  ...SURFACE_ROWS,
  ...HEAT_ROWS,
  ...TOUCH_ROWS,
  ...ROOM_ROWS,
  ...ROOM_LIMIT_ROWS,
  ...LIBRARY_ROWS,
];

const KINDS: readonly RowKind[] = ['published', 'reference library', 'computed', 'judgement'];

/** Difference as a share of what is allowed: 1 is the limit. */
function strain(row: Row): number {
  return Math.abs(row.computed() - row.expected) / row.tolerance;
}

const GROUPS = [...new Set(ALL.map(({ group }) => group))];
const kindsOf = (group: string) => new Set(ALL.filter((row) => row.group === group).map(kindOf));

/** "12, worst 0.3 of ±1 (check)" of the rows of one kind in a group. */
function worstOf(group: string, kind: RowKind): string {
  const members = ALL.filter((row) => row.group === group && kindOf(row) === kind);
  const worst = members.toSorted((a, b) => strain(b) - strain(a))[0];
  if (!worst) return `${group} | ${kind} | 0`;
  const miss = worst.computed() - worst.expected;
  const from = [...new Set(members.map(({ confidence }) => confidence))].join(', ');
  const named = from === kind ? kind : `${kind} (${from})`;
  return `${group} | ${named} | ${members.length} | ${miss.toPrecision(2)} of ±${worst.tolerance.toPrecision(2)} | ${worst.check}`;
}

/** Every group with its rows by kind; groups without any stand as judgement. */
function summary(): string {
  const lines = GROUPS.flatMap((group) =>
    KINDS.filter((kind) => kindsOf(group).has(kind)).map((kind) => worstOf(group, kind)),
  );
  const judged = BASIS.filter(({ kind }) => kind === 'judgement').map(
    ({ group }) => `${group} | judgement | 0`,
  );
  const missed = ALL.filter(({ misses }) => misses).map(
    ({ group, check, source, misses }) =>
      `MISS ${group}: ${check} (${source}) by ${misses?.by}: ${misses?.why}`,
  );
  return ['group | kind | rows | worst error | where', ...lines, ...judged, ...missed].join('\n');
}

describe('published values', () => {
  it.each(ALL.map((row) => [`${row.group}: ${row.check} (${row.source})`, row] as const))(
    '%s',
    (_, row) => {
      const found = row.computed();
      const missedBy = Math.abs(found - row.expected);
      if (row.misses) {
        expect(missedBy).toBeGreaterThan(row.tolerance);
        expect(found - row.expected).toBeCloseTo(row.misses.by, 2);
        return;
      }
      expect(missedBy, `found ${found}, published ${row.expected}`).toBeLessThanOrEqual(
        row.tolerance,
      );
    },
  );

  it('names every check once', () => {
    const names = ALL.map(({ group, check, source }) => `${group} ${check} ${source}`);
    expect(new Set(names).size).toBe(names.length);
  });

  it('shows as judgement or as computed whatever no published figure holds, and nothing else', () => {
    for (const group of GROUPS) {
      const held = kindsOf(group).has('published') || kindsOf(group).has('reference library');
      const listed = BASIS.find((one) => one.group === group)?.kind;
      const advice = held
        ? `${group} has such a row: take it out of core/physics/basis`
        : `${group} has none: add it to core/physics/basis, with a sentence plan.basis.<id>`;
      expect(listed, advice).toBe(held ? undefined : 'computed');
    }
    for (const { group, kind } of BASIS) {
      if (kind === 'judgement') expect(GROUPS, `${group} has rows now`).not.toContain(group);
      else expect(GROUPS, `${group} has no row: it is judgement`).toContain(group);
    }
  });

  afterAll(() => console.log(`\n${summary()}\n`));
});
