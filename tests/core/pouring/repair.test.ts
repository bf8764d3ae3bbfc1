import { describe, expect, it } from 'vitest';
import { coverage, planLanes, repairSurface } from '../../../src/core/pouring/index.ts';
import type { LanePoint, Surface } from '../../../src/core/pouring/index.ts';
import { areaOf, regular, square } from './shapes.ts';

describe('repair', () => {
  it('leaves a clean surface alone', () => {
    expect(repairSurface({ outer: square, holes: [] }).repairs).toEqual([]);
    expect(repairSurface({ outer: square.toReversed(), holes: [] }).repairs).toEqual([]);
  });

  it('takes an overhanging round cut-out as the circle segment that lies inside', () => {
    // Half a circle of radius 0.3 hangs over the edge. Area of a regular polygon ½ n r² sin(2π/n):
    // elementary. Tolerance 1e-5 m²: the clipper's grid.
    const corners = 360;
    const circle = regular(corners, 0.3).map(([x, y]): LanePoint => [x + 0.5, y]);
    const { pieces, repairs } = repairSurface({ outer: square, holes: [circle] });
    const half = (corners * 0.09 * Math.sin((2 * Math.PI) / corners)) / 4;
    expect(repairs).toEqual(['hole-crosses-edge']);
    expect(areaOf(pieces)).toBeCloseTo(1 - half, 5);
  });

  it('joins cut-outs that overlap: two circles with the lens between them counted once', () => {
    // Lens of two circles of radius r at distance r: r² (2π/3 − √3/2) (elementary, from memory).
    // Tolerance 0.1 % of the lens: 400-cornered circles.
    const circle = (x: number) =>
      regular(400, 0.2).map(([px, py]): LanePoint => [px + x, py + 0.5]);
    const { pieces, repairs } = repairSurface({ outer: square, holes: [circle(0.4), circle(0.6)] });
    const lens = 0.04 * ((2 * Math.PI) / 3 - Math.sqrt(3) / 2);
    expect(repairs).toEqual(['holes-overlap']);
    expect(areaOf(pieces)).toBeCloseTo(1 - (2 * Math.PI * 0.04 - lens), 4);
  });

  it.each<[string, Surface, string]>([
    [
      'a bow tie',
      {
        outer: [
          [0, 0],
          [1, 1],
          [1, 0],
          [0, 1],
        ],
        holes: [],
      },
      'self-crossing',
    ],
    [
      'doubled corners',
      {
        outer: [
          [0, 0],
          [0, 0],
          [1, 0],
          [1, 1],
          [0, 1],
          [0, 0],
        ],
        holes: [],
      },
      'duplicate-points',
    ],
    [
      'a cut-out elsewhere',
      { outer: square, holes: [square.map(([x, y]): LanePoint => [x + 5, y])] },
      'hole-outside',
    ],
    [
      'a cut-out from side to side',
      {
        outer: square,
        holes: [
          [
            [-1, 0.4],
            [2, 0.4],
            [2, 0.5],
            [-1, 0.5],
          ],
        ],
      },
      'several-pieces',
    ],
    [
      'a cut-out that leaves a thread',
      {
        outer: square,
        holes: [
          [
            [0.2, 0.000004],
            [0.8, 0.000004],
            [0.8, 2],
            [0.2, 2],
          ],
        ],
      },
      'hole-crosses-edge',
    ],
  ])('mends %s and covers it', (_, surface, repair) => {
    expect(repairSurface(surface).repairs).toContain(repair);
    const plan = planLanes(surface, { swathM: 0.1 });
    expect(coverage(plan.lanes, surface, 0.1).total).toBe(true);
  });

  it.each<[string, Surface, string]>([
    [
      'one millimetre jogs',
      {
        outer: [
          [0, 0],
          [1, 0],
          [1, 0.001],
          [2, 0.001],
          [2, 0.6],
          [0.9, 0.6],
          [0.9, 0.599],
          [0, 0.599],
        ],
        holes: [],
      },
      '',
    ],
    [
      'a sliver',
      {
        outer: [
          [0, 0],
          [2, 0],
          [2, 0.001],
          [0, 0.002],
        ],
        holes: [],
      },
      '',
    ],
    [
      'a cut-out touching the edge',
      {
        outer: square,
        holes: [
          [
            [0.2, 0],
            [0.5, 0],
            [0.5, 0.5],
          ],
        ],
      },
      '',
    ],
    [
      'a cut-out touching the edge in one place',
      {
        outer: square,
        holes: [
          [
            [0.5, 0],
            [0.7, 0.3],
            [0.3, 0.3],
          ],
        ],
      },
      '',
    ],
    [
      'a spike',
      {
        outer: [
          [0, 0],
          [1, 0],
          [3, 0],
          [1, 0],
          [1, 1],
          [0, 1],
        ],
        holes: [],
      },
      '',
    ],
    [
      'an island in a moat',
      {
        outer: square,
        holes: [
          [
            [0.1, 0.1],
            [0.9, 0.1],
            [0.9, 0.9],
            [0.1, 0.9],
          ],
        ],
      },
      '',
    ],
    [
      'corners a micrometre apart',
      {
        outer: [
          [0, 0],
          [1, 0],
          [1.000001, 0.000001],
          [1, 1],
          [0, 1],
        ],
        holes: [],
      },
      '',
    ],
  ])('covers %s', (_, surface) => {
    const plan = planLanes(surface, { swathM: 0.12 });
    const proof = coverage(plan.lanes, surface, 0.12);
    expect(proof.total, JSON.stringify(proof)).toBe(true);
  });
});
