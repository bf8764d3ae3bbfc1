import {
  areaM2,
  crossingEdges,
  repeatedCorner,
  spikeCorner,
  type Polygon,
} from '../../geometry/index.ts';
import { message, type Message } from '../../messages/index.ts';

/** The smallest surface worth pouring: 5 cm × 5 cm. */
const SMALLEST_AREA_M2 = 0.0025;

export type PolygonFault = {
  readonly found: Message;
  readonly allowed: Message;
  readonly advice: Message;
};

/** What keeps a list of corners from being the outline of a surface, if anything does. */
export function polygonFault(polygon: Polygon): PolygonFault | undefined {
  const corner = repeatedCorner(polygon);
  if (corner !== undefined) {
    const next = (corner + 1) % polygon.length;
    return {
      found: message('problems.corner-twice.found', { corner, next }),
      allowed: message('problems.corner-twice.allowed'),
      advice:
        next === 0
          ? message('problems.corner-twice.closes')
          : message('problems.corner-twice.take-out', { corner: next }),
    };
  }
  const surfaceM2 = areaM2(polygon);
  if (surfaceM2 < SMALLEST_AREA_M2) {
    return {
      found: message('problems.surface.found', { surfaceM2 }),
      allowed: message('problems.surface.allowed', { leastM2: SMALLEST_AREA_M2 }),
      advice: message('problems.surface.advice'),
    };
  }
  const spike = spikeCorner(polygon);
  if (spike !== undefined) {
    return {
      found: message('problems.spike.found', { corner: spike }),
      allowed: message('problems.spike.allowed'),
      advice: message('problems.spike.advice', { corner: spike }),
    };
  }
  const pair = crossingEdges(polygon);
  if (pair === undefined) return undefined;
  const [first, second] = pair;
  return {
    found: message('problems.crossing.found', { first, second }),
    allowed: message('problems.crossing.allowed'),
    advice: message('problems.crossing.advice'),
  };
}
