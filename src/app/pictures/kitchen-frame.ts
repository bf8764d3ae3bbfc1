import {
  boundingBox,
  distanceToEdgeM,
  edgesOf,
  pointInPolygon,
  type Point,
  type Polygon,
} from '../../core/geometry/index.ts';
import type { Fixture, Kitchen } from '../../core/kitchen/index.ts';

/** One unit of the drawing is a centimetre; y grows downwards, so the plan is mirrored top to bottom. */
const CM_PER_M = 100;

export type Frame = {
  readonly viewBox: string;
  readonly widthCm: number;
  readonly heightCm: number;
  readonly at: (p: Point) => readonly [number, number];
};

export function outlineOf(fixture: Fixture): Polygon | undefined {
  return 'outline' in fixture ? fixture.outline : undefined;
}

/** A frame round polygons, with a margin in centimetres. */
export function frameOf(polygons: readonly Polygon[], marginCm = 14): Frame {
  const points = polygons.flat();
  if (points.length === 0) return { viewBox: '0 0 1 1', widthCm: 1, heightCm: 1, at: () => [0, 0] };
  const xs = points.map((p) => p[0]);
  const ys = points.map((p) => p[1]);
  const left = Math.min(...xs);
  const top = Math.max(...ys);
  const widthCm = (Math.max(...xs) - left) * CM_PER_M;
  const heightCm = (top - Math.min(...ys)) * CM_PER_M;
  return {
    viewBox: `${-marginCm} ${-marginCm} ${widthCm + 2 * marginCm} ${heightCm + 2 * marginCm}`,
    widthCm,
    heightCm,
    at: ([x, y]) => [(x - left) * CM_PER_M, (top - y) * CM_PER_M],
  };
}

export function kitchenFrame(kitchen: Kitchen): Frame {
  return frameOf(kitchen.fixtures.map(outlineOf).filter((o) => o !== undefined));
}

export function pathOf(frame: Frame, polygon: Polygon): string {
  return `${polygon.map((p, i) => `${i === 0 ? 'M' : 'L'}${frame.at(p).join(' ')}`).join('')}Z`;
}

/** Points tried along each side of the box round a polygon. */
const TRIES = 15;
/** Among places with equal room the middle looks right: a metre off it costs this share of a metre of room. */
const OFF_CENTRE_COST = 0.2;
/** A word for what is wholly under something else stands this far in front of it, m. */
const IN_FRONT_M = 0.14;

/**
 * Where a word about a polygon stands best: inside it, outside what lies on
 * top, far from every edge and near the middle.
 */
export function wordPointOf(polygon: Polygon, onTop: readonly Polygon[]): Point {
  const box = boundingBox(polygon);
  const middle: Point = [(box.xMinM + box.xMaxM) / 2, (box.yMinM + box.yMaxM) / 2];
  const edges = [polygon, ...onTop].flatMap(edgesOf);
  let best: Point = [middle[0], box.yMinM - IN_FRONT_M];
  let bestScore = -Infinity;
  for (let i = 1; i < TRIES; i += 1)
    for (let j = 1; j < TRIES; j += 1) {
      const point: Point = [
        box.xMinM + ((box.xMaxM - box.xMinM) * i) / TRIES,
        box.yMinM + ((box.yMaxM - box.yMinM) * j) / TRIES,
      ];
      if (!pointInPolygon(point, polygon) || onTop.some((o) => pointInPolygon(point, o))) continue;
      const roomM = Math.min(...edges.map(([a, b]) => distanceToEdgeM(point, a, b)));
      const offM = Math.hypot(point[0] - middle[0], point[1] - middle[1]);
      const score = roomM - OFF_CENTRE_COST * offM;
      if (score > bestScore) {
        best = point;
        bestScore = score;
      }
    }
  return best;
}
