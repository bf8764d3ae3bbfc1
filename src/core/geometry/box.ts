import type { Box, Point, Polygon } from './types.ts';

/** Smallest upright rectangle round the points; a list with no point gives a box turned inside out. */
export function boundingBox(points: readonly Point[]): Box {
  let box: Box = { xMinM: Infinity, yMinM: Infinity, xMaxM: -Infinity, yMaxM: -Infinity };
  for (const [x, y] of points) {
    box = {
      xMinM: Math.min(box.xMinM, x),
      yMinM: Math.min(box.yMinM, y),
      xMaxM: Math.max(box.xMaxM, x),
      yMaxM: Math.max(box.yMaxM, y),
    };
  }
  return box;
}

/** Corners of a box, counter-clockwise from the lower left. */
export function boxCorners({ xMinM, yMinM, xMaxM, yMaxM }: Box): Polygon {
  return [
    [xMinM, yMinM],
    [xMaxM, yMinM],
    [xMaxM, yMaxM],
    [xMinM, yMaxM],
  ];
}

/** Lower left corner of the box round a polygon. */
export function lowerLeft(polygon: Polygon): Point {
  const box = boundingBox(polygon);
  return [box.xMinM, box.yMinM];
}

/** Middle of the box round a polygon. */
export function middleOf(polygon: Polygon): Point {
  const box = boundingBox(polygon);
  return [(box.xMinM + box.xMaxM) / 2, (box.yMinM + box.yMaxM) / 2];
}

/** Length along x and depth along y of the box round a polygon, metres. */
export function sizeOf(polygon: Polygon): { readonly lengthM: number; readonly depthM: number } {
  const box = boundingBox(polygon);
  return { lengthM: box.xMaxM - box.xMinM, depthM: box.yMaxM - box.yMinM };
}

/** Corners nearer than this are one line, m: half a millimetre. */
const SAME_LINE_M = 0.0005;

/** Four corners, each on two sides of the box: what has a length and a depth and nothing else. */
export function isUpright(polygon: Polygon): boolean {
  const { xMinM, yMinM, xMaxM, yMaxM } = boundingBox(polygon);
  const on = (value: number, ends: readonly number[]) =>
    ends.some((end) => Math.abs(end - value) < SAME_LINE_M);
  return (
    polygon.length === 4 &&
    polygon.every(([x, y]) => on(x, [xMinM, xMaxM]) && on(y, [yMinM, yMaxM]))
  );
}
