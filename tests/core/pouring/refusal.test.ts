import { describe, expect, it } from 'vitest';
import { LanesRefusal, planLanes } from '../../../src/core/pouring/index.ts';
import type { Surface } from '../../../src/core/pouring/index.ts';
import { square } from './shapes.ts';

describe('refusals', () => {
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
