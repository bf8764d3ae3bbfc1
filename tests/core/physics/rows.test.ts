import { afterAll, describe, expect, it } from 'vitest';
import { BOILING_ROWS } from './rows/boiling.ts';
import { HEAT_ROWS } from './rows/heat.ts';
import { IMMERSION_ROWS } from './rows/immersion.ts';
import { KETTLE_ROWS } from './rows/kettle.ts';
import { POUR_ROWS } from './rows/pour.ts';
import { ROOM_ROWS } from './rows/room.ts';
import type { Row } from './rows/row.ts';
import { SURFACE_ROWS } from './rows/surface.ts';
import { WATER_ROWS } from './rows/water.ts';

const ALL: readonly Row[] = [
  ...BOILING_ROWS,
  ...WATER_ROWS,
  ...KETTLE_ROWS,
  ...IMMERSION_ROWS,
  ...POUR_ROWS,
  ...SURFACE_ROWS,
  ...HEAT_ROWS,
  ...ROOM_ROWS,
];

/** Difference as a share of what is allowed: 1 is the limit. */
function strain(row: Row): number {
  return Math.abs(row.computed() - row.expected) / row.tolerance;
}

function summary(): string {
  const nameOf = ({ group, confidence }: Row) => `${group} | ${confidence}`;
  const lines = [...new Set(ALL.map(nameOf))].map((name) => {
    const members = ALL.filter((row) => nameOf(row) === name);
    const worst = members.toSorted((a, b) => strain(b) - strain(a))[0];
    if (!worst) return name;
    const miss = worst.computed() - worst.expected;
    return `${name} | ${members.length} | ${miss.toPrecision(2)} of ±${worst.tolerance.toPrecision(2)} | ${worst.check}`;
  });
  const missed = ALL.filter(({ misses }) => misses).map(
    ({ group, check, source, misses }) =>
      `MISS ${group}: ${check} (${source}) by ${misses?.by}: ${misses?.why}`,
  );
  return ['group | confidence | rows | worst error | where', ...lines, ...missed].join('\n');
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

  afterAll(() => console.log(`\n${summary()}\n`));
});
