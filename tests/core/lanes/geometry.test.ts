import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import {
  convexHull,
  coverage,
  LanesRefusal,
  minimumWidth,
  planLanes,
  repairSurface,
} from '../../../src/core/lanes/index.ts';
import type { LanePoint, Ring, Surface } from '../../../src/core/lanes/index.ts';

const regular = (corners: number, radius: number): Ring =>
  Array.from({ length: corners }, (_, k) => [
    radius * Math.cos((2 * Math.PI * k) / corners + 0.1),
    radius * Math.sin((2 * Math.PI * k) / corners + 0.1),
  ]);

const square: Ring = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

const shoelace = (ring: Ring) =>
  Math.abs(
    ring.reduce((sum, [x, y], i) => {
      const [u, v] = ring[(i + 1) % ring.length] ?? [x, y];
      return sum + x * v - u * y;
    }, 0) / 2,
  );

const areaOf = (pieces: readonly Surface[]) =>
  pieces.reduce(
    (sum, { outer, holes }) => sum + shoelace(outer) - holes.reduce((s, h) => s + shoelace(h), 0),
    0,
  );

describe('least width', () => {
  // Widths of regular polygons: even n, twice the inradius; odd n, inradius plus circumradius
  // (elementary geometry, from memory). Tolerance 1e-9 m: rounding only.
  it.each([3, 4, 5, 6, 7, 12, 31])('of a regular polygon with %i corners', (corners) => {
    const inradius = Math.cos(Math.PI / corners);
    const expected = corners % 2 === 0 ? 2 * inradius : 1 + inradius;
    expect(minimumWidth(regular(corners, 1)).widthM).toBeCloseTo(expected, 9);
  });

  it('of a triangle with sides 3, 4, 5 is its least height, 12/5', () => {
    expect(
      minimumWidth([
        [0, 0],
        [3, 0],
        [0, 4],
      ]).widthM,
    ).toBeCloseTo(2.4, 12);
  });

  it('is never more than the extent seen from any side', () => {
    const place = fc.tuple(
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(place, { minLength: 3, maxLength: 20 }), (points) => {
        if (convexHull(points).length < 3 || shoelace(convexHull(points)) < 1e-6) return;
        const { widthM } = minimumWidth(points);
        let least = Infinity;
        for (let k = 0; k < 720; k += 1) {
          const angle = (Math.PI * k) / 720;
          const heights = points.map(([x, y]) => x * Math.cos(angle) + y * Math.sin(angle));
          least = Math.min(least, Math.max(...heights) - Math.min(...heights));
        }
        expect(widthM).toBeLessThanOrEqual(least + 1e-9);
        // A step of a quarter degree changes an extent by at most its diameter times that angle.
        expect(widthM).toBeGreaterThan(least - 1.5 * (Math.PI / 720));
      }),
      { seed: 7 },
    );
  });

  it('refuses points on a line', () => {
    expect(() =>
      minimumWidth([
        [0, 0],
        [1, 1],
        [2, 2],
      ]),
    ).toThrow(LanesRefusal);
  });
});

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

  it.each<[string, unknown, string, string]>([
    [
      'two corners',
      {
        outer: [
          [0, 0],
          [1, 1],
        ],
        holes: [],
      },
      'too-few-points',
      'outer',
    ],
    ['no outline', { outer: undefined, holes: [] }, 'too-few-points', 'outer'],
    [
      'a corner that is no number',
      {
        outer: [
          [0, 0],
          [1, NaN],
          [1, 1],
        ],
        holes: [],
      },
      'not-a-number',
      'outer[1]',
    ],
    [
      'words for corners',
      {
        outer: [
          [0, 0],
          ['1', 0],
          [1, 1],
        ],
        holes: [],
      },
      'not-a-number',
      'outer[1]',
    ],
    [
      'a hall in millimetres',
      {
        outer: [
          [0, 0],
          [2400, 0],
          [2400, 600],
        ],
        holes: [],
      },
      'too-large',
      'outer[1]',
    ],
    [
      'a line',
      {
        outer: [
          [0, 0],
          [1, 1],
          [2, 2],
        ],
        holes: [],
      },
      'no-area',
      'outer',
    ],
    [
      'one place three times',
      {
        outer: [
          [1, 1],
          [1, 1],
          [1, 1],
        ],
        holes: [],
      },
      'no-area',
      'outer',
    ],
    [
      'a cut-out as large as the surface',
      { outer: square, holes: [square] },
      'all-cut-away',
      'holes',
    ],
    [
      'a cut-out with two corners',
      {
        outer: square,
        holes: [
          [
            [0, 0],
            [1, 1],
          ],
        ],
      },
      'too-few-points',
      'holes[0]',
    ],
  ])('refuses %s by name', (_, surface, code, input) => {
    const refusal = (() => {
      try {
        return planLanes(surface as Surface, { swathM: 0.1 });
      } catch (error) {
        return error;
      }
    })();
    expect(refusal).toBeInstanceOf(LanesRefusal);
    expect(refusal).toMatchObject({ code, input });
    expect((refusal as LanesRefusal).message).toContain('allowed:');
  });

  it('refuses a swath or a back edge that cannot be', () => {
    const surface = { outer: square, holes: [] };
    expect(() => planLanes(surface, { swathM: 0 })).toThrow(/swathM is 0; allowed: 0.01 to 1/);
    expect(() => planLanes(surface, { swathM: Number.NaN })).toThrow(LanesRefusal);
    expect(() => planLanes(surface, { swathM: 0.1, backEdges: [[0, 9]] })).toThrow(
      /backEdges\[0\] is \[0, 9\]/,
    );
    expect(() => planLanes(surface, { swathM: 0.1, backEdges: [[2, 2]] })).toThrow(LanesRefusal);
  });
});

describe('the proof of coverage', () => {
  const surface = { outer: square, holes: [] };
  const line = (y: number) => ({
    points: [
      [0, y],
      [1, y],
    ] as const,
  });

  it('finds what one line through the middle leaves: two bands, 1 − swath', () => {
    const proof = coverage([line(0.5)], surface, 0.4);
    expect(proof.total).toBe(false);
    expect(proof.missedM2).toBeCloseTo(0.6, 4);
    expect(proof.farthestM).toBeCloseTo(0.5, 9);
    expect(proof.missedEdgeM).toBeCloseTo(1, 9);
  });

  it('is total at half a swath and not a tenth of a millimetre beyond', () => {
    const lanes = [line(0.25), line(0.75)];
    expect(coverage(lanes, surface, 0.5).total).toBe(true);
    expect(coverage(lanes, surface, 0.4998).total).toBe(false);
  });

  it('sees a corner cut off that no grid place falls on', () => {
    const short = {
      points: [
        [0, 0.25],
        [0.99, 0.25],
      ] as const,
    };
    expect(coverage([short, line(0.75)], surface, 0.5).total).toBe(false);
  });

  it('does not count what lies in a cut-out', () => {
    const hole: Ring = [
      [0.2, 0.4],
      [0.8, 0.4],
      [0.8, 0.6],
      [0.2, 0.6],
    ];
    const lanes = [
      line(0.2),
      line(0.8),
      {
        points: [
          [0.1, 0.2],
          [0.1, 0.8],
        ] as const,
      },
      {
        points: [
          [0.9, 0.2],
          [0.9, 0.8],
        ] as const,
      },
    ];
    expect(coverage(lanes, { outer: square, holes: [hole] }, 0.4).total).toBe(true);
    expect(coverage(lanes, surface, 0.4).total).toBe(false);
  });
});
