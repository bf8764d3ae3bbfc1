import {
  areaM2,
  boundingBox,
  distanceToEdgeM,
  netAreaM2,
  perimeterM,
  pointInPolygon,
  signedAreaM2,
  type Point,
  type Polygon,
} from '../../../src/core/geometry/index.ts';
import { area, pointInPolygon as clipperPointInPolygon, PointInPolygonResult } from 'clipper2-ts';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { starPolygon } from './polygon-arbitrary.ts';

const SQUARE: Polygon = [
  [0, 0],
  [2, 0],
  [2, 1],
  [0, 1],
];

function regular(corners: number, radiusM: number): Polygon {
  return Array.from({ length: corners }, (_, i): Point => {
    const turn = (2 * Math.PI * i) / corners;
    return [3 + radiusM * Math.cos(turn), -1 + radiusM * Math.sin(turn)];
  });
}

describe('area, perimeter and box', () => {
  it('take either direction of the corners', () => {
    expect(areaM2(SQUARE)).toBe(2);
    expect(areaM2(SQUARE.toReversed())).toBe(2);
    expect(signedAreaM2(SQUARE)).toBe(2);
    expect(signedAreaM2(SQUARE.toReversed())).toBe(-2);
    expect(perimeterM(SQUARE)).toBe(6);
    expect(boundingBox(SQUARE)).toEqual({ xMinM: 0, yMinM: 0, xMaxM: 2, yMaxM: 1 });
  });

  it('subtract cut-outs', () => {
    expect(netAreaM2(SQUARE, [regular(4, Math.SQRT1_2)])).toBeCloseTo(1, 12);
  });

  // Closed forms for a regular polygon: ½·n·r²·sin(2π/n) and 2·n·r·sin(π/n) (Euclid's elements
  // of it; any table of mensuration). Confidence: from memory. Tolerance: rounding, 1e-12.
  it.each([3, 4, 5, 6, 17, 200])('agree with the closed form for %i equal sides', (n) => {
    const polygon = regular(n, 0.7);
    expect(areaM2(polygon)).toBeCloseTo(0.5 * n * 0.49 * Math.sin((2 * Math.PI) / n), 12);
    expect(perimeterM(polygon)).toBeCloseTo(2 * n * 0.7 * Math.sin(Math.PI / n), 12);
  });

  // Reference: the polygon library clipper2-ts. Confidence: computed. Tolerance: rounding.
  it('agree with a polygon library on random outlines', () => {
    fc.assert(
      fc.property(starPolygon(), (polygon) => {
        const theirs = area(polygon.map(([x, y]) => ({ x, y })));
        expect(signedAreaM2(polygon)).toBeCloseTo(theirs, 9);
      }),
    );
  });
});

describe('point in polygon', () => {
  it('counts points near an edge in when asked to', () => {
    expect(pointInPolygon([1, 0.5], SQUARE)).toBe(true);
    expect(pointInPolygon([1, 1.0005], SQUARE)).toBe(false);
    expect(pointInPolygon([1, 1.0005], SQUARE, 0.001)).toBe(true);
    expect(pointInPolygon([2.5, 0.5], SQUARE, 0.001)).toBe(false);
  });

  // Reference: clipper2-ts on a grid of whole micrometres. Confidence: computed; exact answer.
  it('agrees with a polygon library away from edges', () => {
    const coordinate = fc.double({ min: -2, max: 2, noNaN: true });
    fc.assert(
      fc.property(starPolygon(), fc.tuple(coordinate, coordinate), (polygon, point) => {
        const closest = Math.min(
          ...polygon.map((a, i) =>
            distanceToEdgeM(point, a, polygon[(i + 1) % polygon.length] ?? a),
          ),
        );
        fc.pre(closest > 1e-4);
        const micro = ([x, y]: Point) => ({ x: Math.round(x * 1e6), y: Math.round(y * 1e6) });
        const theirs = clipperPointInPolygon(micro(point), polygon.map(micro));
        expect(pointInPolygon(point, polygon)).toBe(theirs !== PointInPolygonResult.IsOutside);
      }),
    );
  });

  it('measures the distance to a stretch, not to its line', () => {
    expect(distanceToEdgeM([0, 3], [-1, 0], [1, 0])).toBe(3);
    expect(distanceToEdgeM([4, 4], [-1, 0], [1, 0])).toBe(5);
    expect(distanceToEdgeM([3, 4], [0, 0], [0, 0])).toBe(5);
  });
});
