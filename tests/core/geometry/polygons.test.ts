import { type Point, type Polygon } from '../../../src/core/geometry/index.ts';
import { area, FillRule, intersect } from 'clipper2-ts';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { liesInside, overlap } from '../../../src/core/geometry/index.ts';
import { polygonFault } from '../../../src/core/kitchen/checks/polygons.ts';
import { starPolygon } from './polygon-arbitrary.ts';

/** Reference: intersections by clipper2-ts in whole tenths of a millimetre. Confidence: computed. */
function sharedAreaM2(one: Polygon, other: Polygon): number {
  const scaled = (polygon: Polygon) =>
    polygon.map(([x, y]) => ({ x: Math.round(x * 1e4), y: Math.round(y * 1e4) }));
  const pieces = intersect([scaled(one)], [scaled(other)], FillRule.EvenOdd);
  return pieces.reduce((sum, piece) => sum + Math.abs(area(piece)), 0) / 1e8;
}

/** Rectangles on a coarse grid: edges and corners often fall on each other. */
const gridRectangle = fc
  .tuple(fc.nat(4), fc.nat(4), fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 }))
  .map(([x, y, w, h]): Polygon => [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ]);

/** L shapes on the same grid. */
const gridL = fc
  .tuple(fc.nat(4), fc.nat(4), fc.integer({ min: 1, max: 2 }), fc.integer({ min: 1, max: 2 }))
  .map(([x, y, w, h]): Polygon => [
    [x, y],
    [x + w + 1, y],
    [x + w + 1, y + h],
    [x + w, y + h],
    [x + w, y + h + 1],
    [x, y + h + 1],
  ]);

const gridShape = fc.oneof(gridRectangle, gridL);

describe('outlines', () => {
  it('that are simple have no fault', () => {
    fc.assert(
      fc.property(fc.oneof(starPolygon(), gridShape), (polygon) => {
        expect(polygonFault(polygon)).toBeUndefined();
        expect(polygonFault(polygon.toReversed())).toBeUndefined();
      }),
    );
  });

  it('with two corners exchanged cross themselves', () => {
    fc.assert(
      fc.property(gridRectangle, ([a, b, c, d]) => {
        const exchanged = [a, c, b, d].filter((p): p is Point => p !== undefined);
        expect(polygonFault(exchanged)).toBeDefined();
      }),
    );
  });

  it('that touch themselves at a corner are refused', () => {
    const bowTie: Polygon = [
      [0, 0],
      [1, 1],
      [2, 0],
      [2, 2],
      [1, 1],
      [0, 2],
    ];
    expect(polygonFault(bowTie)?.found.key).toBe('problems.crossing.found');
  });
});

describe('two outlines', () => {
  it('overlap when they share a surface, by a polygon library', () => {
    fc.assert(
      fc.property(gridShape, gridShape, (one, other) => {
        expect(overlap(one, other)).toBe(sharedAreaM2(one, other) > 1e-6);
      }),
      { numRuns: 2000 },
    );
  });

  it('lie inside each other when they share all of one, by a polygon library', () => {
    const areaOf = (polygon: Polygon) => sharedAreaM2(polygon, polygon);
    fc.assert(
      fc.property(gridShape, gridShape, (inner, outer) => {
        const shared = sharedAreaM2(inner, outer);
        expect(liesInside(inner, outer)).toBe(Math.abs(shared - areaOf(inner)) < 1e-6);
      }),
      { numRuns: 2000 },
    );
  });

  it('of any form: no shared surface is overlooked', () => {
    const moved = fc
      .tuple(starPolygon(), fc.double({ min: -2, max: 2, noNaN: true }))
      .map(([polygon, dx]): Polygon => polygon.map(([x, y]): Point => [x + dx, y]));
    fc.assert(
      fc.property(starPolygon(), moved, (one, other) => {
        const shared = sharedAreaM2(one, other);
        // Below a few square centimetres the tape measure's millimetre decides.
        fc.pre(shared === 0 || shared > 1e-3);
        expect(overlap(one, other)).toBe(shared > 0);
      }),
      { numRuns: 500 },
    );
  });
});
