import { describe, expect, it } from 'vitest';
import { coverage } from '../../../src/core/pouring/index.ts';
import type { Ring } from '../../../src/core/pouring/index.ts';
import { square } from './shapes.ts';

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
