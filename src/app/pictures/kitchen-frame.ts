import type { Fixture, Kitchen, Point, Polygon } from '../../core/kitchen/index.ts';

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

export function middleOf(frame: Frame, polygon: Polygon): readonly [number, number] {
  const points = polygon.map((p) => frame.at(p));
  const xs = points.map((p) => p[0]);
  const ys = points.map((p) => p[1]);
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
}
