import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldedScale } from '../../../../src/core/plan/index.ts';

const hours = fc.integer({ min: 0, max: 400_000 });
const stretch = fc.tuple(hours, hours).map(([a, b]) => ({
  fromS: Math.min(a, b),
  toS: Math.max(a, b) + 1,
}));

describe('an axis on which nights take less room', () => {
  it('gives a folded stretch its share of the usual room', () => {
    const scale = foldedScale({ fromS: 0, toS: 30 }, [{ fromS: 10, toS: 20 }], 0.5);
    expect(scale.at(10)).toBeCloseTo(10 / 25, 9);
    expect(scale.at(15)).toBeCloseTo(12.5 / 25, 9);
    expect(scale.at(20)).toBeCloseTo(15 / 25, 9);
    expect(scale.back(12.5 / 25)).toBeCloseTo(15, 9);
  });

  it('goes always forward from 0 to 1, and back again', () => {
    fc.assert(
      fc.property(
        stretch,
        fc.array(stretch, { maxLength: 6 }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (whole, folds, share) => {
          const scale = foldedScale(whole, folds, share);
          expect(scale.at(whole.fromS)).toBe(0);
          expect(scale.at(whole.toS)).toBeCloseTo(1, 9);
          expect(scale.at(whole.fromS - 50)).toBe(0);
          expect(scale.at(whole.toS + 50)).toBeCloseTo(1, 9);
          let last = -1;
          for (let n = 0; n <= 40; n += 1) {
            const atS = whole.fromS + ((whole.toS - whole.fromS) * n) / 40;
            const at = scale.at(atS);
            expect(at).toBeGreaterThan(last);
            expect(Math.abs(scale.back(at) - atS)).toBeLessThan(1e-3);
            last = at;
          }
        },
      ),
    );
  });
});
