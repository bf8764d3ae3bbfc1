import { describe, expect, it } from 'vitest';
import { openSides } from '../../../src/core/pouring/index.ts';
import type { Ring, StandSide } from '../../../src/core/pouring/index.ts';

const rectangle = (x: number, y: number, w: number, h: number): Ring => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];

describe('where one can stand', () => {
  const outer = rectangle(0, 0, 2, 1);
  const surface = { outer, holes: [] };
  const at = (sides: readonly StandSide[]) => sides.map(({ edge }) => edge[0]);

  it('is in front of walls, round an island everywhere, and as told before all', () => {
    const none = { inTheWay: [] };
    expect(at(openSides(surface, { backEdges: [[2, 3]], ...none }))).toEqual([0]);
    expect(at(openSides(surface, { backEdges: [], ...none }))).toEqual([0, 1, 2, 3]);
    expect(at(openSides(surface, { backEdges: [[2, 3]], told: [[1, 2]], ...none }))).toEqual([1]);
  });

  it('is not where something else stands', () => {
    const range = rectangle(0.5, -0.7, 0.6, 0.7);
    const [near, second, ...others] = openSides(surface, {
      backEdges: [[2, 3]],
      inTheWay: [range],
    });
    expect(others).toEqual([]);
    expect(near?.b[0]).toBeCloseTo(0.5, 1);
    expect(second?.a[0]).toBeCloseTo(1.1, 1);
    // A gap of half a metre is enough, one of a foot is none.
    const beside = (gapM: number) => [rectangle(0, -0.6 - gapM, 2, 0.6)];
    expect(openSides(surface, { backEdges: [[2, 3]], inTheWay: beside(0.5) })).toHaveLength(1);
    expect(openSides(surface, { backEdges: [[2, 3]], inTheWay: beside(0.3) })).toHaveLength(0);
  });

  it('takes each leg of a corner in front', () => {
    const corner: Ring = [
      [0, 0],
      [2.6, 0],
      [2.6, 0.62],
      [0.62, 0.62],
      [0.62, 2],
      [0, 2],
    ];
    const backEdges = [
      [0, 1],
      [5, 0],
    ] as const;
    expect(at(openSides({ outer: corner, holes: [] }, { backEdges, inTheWay: [] }))).toEqual([
      2, 3,
    ]);
  });
});
