import { boundingBox, edgesOf, pointInPolygon, type Box } from '../../kitchen/index.ts';
import type { Fixture, Point, Polygon } from '../../kitchen/index.ts';

/** Corners are kept to 0.1 µm, so that sixteenths of an inch stay what was typed. */
const PER_METRE = 1e7;
/** Things that touch do not stand in each other's way, metres. */
const TOUCH_M = 0.002;

/** A length as it is kept: no tails of binary fractions, no minus zero. */
export function tidy(metres: number): number {
  return Math.round(metres * PER_METRE) / PER_METRE + 0;
}

export function tidyPoint([x, y]: Point): Point {
  return [tidy(x), tidy(y)];
}

/** Upright rectangle; corners counter-clockwise from the lower left: near, right, far, left edge. */
export function rectangle([x, y]: Point, lengthM: number, depthM: number): Polygon {
  const corners: Polygon = [
    [x, y],
    [x + lengthM, y],
    [x + lengthM, y + depthM],
    [x, y + depthM],
  ];
  return corners.map(tidyPoint);
}

export function lowerLeft(polygon: Polygon): Point {
  const box = boundingBox(polygon);
  return [box.xMinM, box.yMinM];
}

export function middleOf(polygon: Polygon): Point {
  const box = boundingBox(polygon);
  return [(box.xMinM + box.xMaxM) / 2, (box.yMinM + box.yMaxM) / 2];
}

/** Length along x and depth along y of the box round a polygon, metres. */
export function sizeOf(polygon: Polygon): { readonly lengthM: number; readonly depthM: number } {
  const box = boundingBox(polygon);
  return { lengthM: box.xMaxM - box.xMinM, depthM: box.yMaxM - box.yMinM };
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

/** The outline of a fixture that is drawn in the plan view. */
export function outlineOf(fixture: Fixture): Polygon | undefined {
  return 'outline' in fixture ? fixture.outline : undefined;
}

function stretchMeetsBox([a, b]: readonly [Point, Point], box: Box): boolean {
  let [from, to] = [0, 1];
  const sides = [
    [a[0], b[0] - a[0], box.xMinM, box.xMaxM],
    [a[1], b[1] - a[1], box.yMinM, box.yMaxM],
  ] as const;
  for (const [start, run, min, max] of sides) {
    if (run === 0) {
      if (start < min || start > max) return false;
      continue;
    }
    const one = (min - start) / run;
    const other = (max - start) / run;
    from = Math.max(from, Math.min(one, other));
    to = Math.min(to, Math.max(one, other));
  }
  return from <= to;
}

/** Whether an upright box and a polygon share more than a touch. */
export function boxMeets(box: Box, polygon: Polygon): boolean {
  const inner: Box = {
    xMinM: box.xMinM + TOUCH_M,
    yMinM: box.yMinM + TOUCH_M,
    xMaxM: box.xMaxM - TOUCH_M,
    yMaxM: box.yMaxM - TOUCH_M,
  };
  if (edgesOf(polygon).some((edge) => stretchMeetsBox(edge, inner))) return true;
  return pointInPolygon(
    [(inner.xMinM + inner.xMaxM) / 2, (inner.yMinM + inner.yMaxM) / 2],
    polygon,
  );
}

/** Level lines on which a point inside is looked for, as shares of the depth. */
const LEVELS = [0.5, 0.3, 0.7, 0.1, 0.9, 0.23, 0.77, 0.017, 0.983];

/** A point well inside a simple polygon: the middle of its widest level stretch. */
export function insidePoint(polygon: Polygon): Point {
  const box = boundingBox(polygon);
  let best: Point = middleOf(polygon);
  let widest = 0;
  for (const level of LEVELS) {
    const y = box.yMinM + (box.yMaxM - box.yMinM) * level;
    const crossings = edgesOf(polygon)
      .filter(([a, b]) => a[1] > y !== b[1] > y)
      .map(([a, b]) => a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]))
      .toSorted((p, q) => p - q);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const [left = 0, right = 0] = crossings.slice(i, i + 2);
      if (right - left > widest) {
        widest = right - left;
        best = [(left + right) / 2, y];
      }
    }
  }
  return tidyPoint(best);
}
