import { type Point, type Polygon } from '../../../src/core/geometry/index.ts';
import * as fc from 'fast-check';

const radius = fc.integer({ min: 30, max: 150 }).map((centimetres) => centimetres / 100);

/** A simple polygon round the origin: corners at growing angles, 0.3 to 1.5 m out. */
export function starPolygon(): fc.Arbitrary<Polygon> {
  return fc.array(radius, { minLength: 3, maxLength: 14 }).map((radii) =>
    radii.map((radiusM, i): Point => {
      const turn = (2 * Math.PI * i) / radii.length;
      return [radiusM * Math.cos(turn), radiusM * Math.sin(turn)];
    }),
  );
}
