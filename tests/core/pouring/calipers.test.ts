import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { convexHull, LanesRefusal, minimumWidth } from '../../../src/core/pouring/index.ts';
import { regular, shoelace } from './shapes.ts';

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
