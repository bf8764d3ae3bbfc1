import {
  boundingBox,
  distanceToEdgeM,
  edgesOf,
  pointInPolygon,
  type Fixture,
  type Kitchen,
  type Point,
  type Polygon,
} from '../../core/kitchen/index.ts';

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

/**
 * Where a word about a polygon stands best: the point inside it, outside what
 * lies on top, that is farthest from every edge.
 */
export function wordPointOf(polygon: Polygon, onTop: readonly Polygon[]): Point {
  const box = boundingBox(polygon);
  let best: Point = [(box.xMinM + box.xMaxM) / 2, (box.yMinM + box.yMaxM) / 2];
  let bestM = -1;
  const edges = [polygon, ...onTop].flatMap(edgesOf);
  for (let i = 1; i < TRIES; i += 1)
    for (let j = 1; j < TRIES; j += 1) {
      const point: Point = [
        box.xMinM + ((box.xMaxM - box.xMinM) * i) / TRIES,
        box.yMinM + ((box.yMaxM - box.yMinM) * j) / TRIES,
      ];
      if (!pointInPolygon(point, polygon) || onTop.some((o) => pointInPolygon(point, o))) continue;
      const roomM = Math.min(...edges.map(([a, b]) => distanceToEdgeM(point, a, b)));
      if (roomM > bestM + 1e-6) {
        best = point;
        bestM = roomM;
      }
    }
  return best;
}
