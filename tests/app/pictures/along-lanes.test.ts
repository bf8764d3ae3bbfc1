import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pouredUpTo } from '../../../src/app/pictures/pour-progress.ts';
import type { Stretch } from '../../../src/core/plan/index.ts';

const stretch = (...points: [number, number][]): Stretch => ({
  kettle: 1,
  points,
  litres: 1,
  lengthM: 0,
});
const TWO = [stretch([0, 0], [1, 0], [1, 1]), stretch([3, 0], [3, 2])];

function lengthOf(lines: readonly (readonly (readonly [number, number])[])[]): number {
  return lines
    .flatMap((line) =>
      line
        .slice(1)
        .map((p, i) => Math.hypot(p[0] - (line[i]?.[0] ?? 0), p[1] - (line[i]?.[1] ?? 0))),
    )
    .reduce((a, b) => a + b, 0);
}

describe('where the stream is', () => {
  it('starts at the first point and ends at the last', () => {
    expect(pouredUpTo(TWO, 0).at).toEqual([0, 0]);
    expect(pouredUpTo(TWO, 1).at).toEqual([3, 2]);
  });
  it('goes round a corner and over a lift', () => {
    expect(pouredUpTo(TWO, 0.375).at).toEqual([1, 0.5]);
    expect(pouredUpTo(TWO, 0.75).at).toEqual([3, 1]);
    expect(pouredUpTo(TWO, 0.75).lines).toHaveLength(2);
  });
  it('has poured just its share of the length, whatever the share', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.5, max: 1.5, noNaN: true }), (share) => {
        const wanted = Math.min(1, Math.max(0, share)) * 4;
        expect(lengthOf(pouredUpTo(TWO, share).lines)).toBeCloseTo(wanted, 9);
      }),
    );
  });
  it('has nowhere to be without stretches', () => {
    expect(pouredUpTo([], 0.5)).toEqual({ lines: [], at: undefined });
  });
});
