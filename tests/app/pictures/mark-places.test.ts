import { describe, expect, it } from 'vitest';
import { markPlaces } from '../../../src/app/pictures/mark-places.ts';
import type { Stretch } from '../../../src/core/plan/index.ts';

/** Lanes of 1 m beside each other, one a kettle. */
function lanes(many: number, apartM: number): readonly Stretch[] {
  return Array.from({ length: many }, (_, i) => ({
    kettle: i + 1,
    points: [
      [0, i * apartM],
      [1, i * apartM],
    ],
    litres: 1,
    lengthM: 1,
  }));
}
const numbers = (many: number) => Array.from({ length: many }, (_, i) => i + 1);

describe('numbers of kettles in the picture of a pour', () => {
  it('stand clear of each other, each on the way of its own kettle', () => {
    const halfM = 0.08;
    const marks = markPlaces(lanes(4, 0.05), numbers(4), halfM);
    expect(marks.map(({ first }) => first)).toEqual([1, 2, 3, 4]);
    for (const [i, a] of marks.entries()) {
      expect(a.at[1]).toBeCloseTo(i * 0.05, 9);
      for (const b of marks.slice(i + 1)) {
        const apart = [Math.abs(a.at[0] - b.at[0]), Math.abs(a.at[1] - b.at[1])];
        expect(Math.max(...apart)).toBeGreaterThan(2 * halfM);
      }
    }
  });
  it('of many kettles are told in runs, every kettle in one of them', () => {
    const marks = markPlaces(lanes(16, 0.2), numbers(16), 0.05);
    expect(marks.length).toBeLessThanOrEqual(7);
    expect(marks.flatMap(({ first, last }) => numbers(last).slice(first - 1))).toEqual(numbers(16));
  });
});
