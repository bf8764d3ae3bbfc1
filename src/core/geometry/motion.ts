import { boundingBox, boxCorners } from './box.ts';
import type { Point, Polygon } from './types.ts';

/** Corners are kept to 0.1 µm, so that sixteenths of an inch stay what was typed. */
const PER_METRE = 1e7;

/** A length as it is kept: no tails of binary fractions, no minus zero. */
export function tidy(metres: number): number {
  return Math.round(metres * PER_METRE) / PER_METRE + 0;
}

export function tidyPoint([x, y]: Point): Point {
  return [tidy(x), tidy(y)];
}

/** Upright rectangle; corners counter-clockwise from the lower left: near, right, far, left edge. */
export function rectangle([x, y]: Point, lengthM: number, depthM: number): Polygon {
  const box = { xMinM: x, yMinM: y, xMaxM: x + lengthM, yMaxM: y + depthM };
  return boxCorners(box).map(tidyPoint);
}

/** How each point of a moved thing moves. */
export type Motion = (point: Point) => Point;

export function shiftBy(dxM: number, dyM: number): Motion {
  return ([x, y]) => tidyPoint([x + dxM, y + dyM]);
}

/** A quarter turn, counter-clockwise as seen from above. */
export function quarterTurnAbout([cx, cy]: Point): Motion {
  return ([x, y]) => tidyPoint([cx - (y - cy), cy + (x - cx)]);
}

/** Stretches the box round `polygon` to a new length and depth, its lower-left corner staying. */
export function stretchOf(polygon: Polygon, lengthM: number, depthM: number): Motion {
  const box = boundingBox(polygon);
  const along = lengthM / (box.xMaxM - box.xMinM);
  const across = depthM / (box.yMaxM - box.yMinM);
  return ([x, y]) =>
    tidyPoint([box.xMinM + (x - box.xMinM) * along, box.yMinM + (y - box.yMinM) * across]);
}
