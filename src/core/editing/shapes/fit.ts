import {
  areaM2,
  boundingBox,
  distanceToEdgeM,
  edgesOf,
  insidePoint,
  pointInPolygon,
  sizeOf,
  tidy,
  tidyPoint,
  type Point,
  type Polygon,
} from '../../geometry/index.ts';
import { LIMITS, type Bowl, type Burner } from '../../kitchen/index.ts';

/** Bowls no longer, no wider and together no larger than the sink; those that fit stay as told. */
export function fitBowls(outline: Polygon, bowls: readonly Bowl[]): readonly Bowl[] {
  const { lengthM, depthM } = sizeOf(outline);
  const [short, long] = [Math.min(lengthM, depthM), Math.max(lengthM, depthM)];
  const share = Math.min(
    1,
    Math.sqrt(areaM2(outline) / bowls.reduce((sum, b) => sum + b.lengthM * b.widthM, 0)),
    ...bowls.map((b) => long / Math.max(b.lengthM, b.widthM)),
    ...bowls.map((b) => short / Math.min(b.lengthM, b.widthM)),
  );
  if (share === 1) return bowls;
  const fit = (metres: number) =>
    Math.max(LIMITS.bowlWidthM.least, Math.floor(metres * share * 1000) / 1000);
  return bowls.map((b) => ({ ...b, lengthM: fit(b.lengthM), widthM: fit(b.widthM) }));
}

/** Burners whose middle is no longer on the cooktop are brought back onto it. */
export function pullIn(outline: Polygon, burners: readonly Burner[]): readonly Burner[] {
  if (burners.every(({ at }) => pointInPolygon(at, outline))) return burners;
  const inner = tidyPoint(insidePoint(outline));
  return burners.map((burner) =>
    pointInPolygon(burner.at, outline)
      ? burner
      : { ...burner, at: towards(burner.at, inner, outline) },
  );
}

/** The first point on the way from outside to an inner point that is on the surface. */
function towards(from: Point, inner: Point, outline: Polygon): Point {
  const STEPS = 20;
  for (let i = 1; i < STEPS; i += 1) {
    const share = i / STEPS;
    const at: Point = [
      tidy(from[0] + (inner[0] - from[0]) * share),
      tidy(from[1] + (inner[1] - from[1]) * share),
    ];
    if (pointInPolygon(at, outline)) return at;
  }
  return inner;
}

/** Grid on which a free place for a burner is looked for, points each way. */
const GRID = 9;

/** The place on a cooktop that is farthest from its burners and its rim. */
export function freePlace(outline: Polygon, burners: readonly Burner[]): Point {
  const box = boundingBox(outline);
  let best = tidyPoint(insidePoint(outline));
  let widest = -1;
  for (let i = 1; i < GRID; i += 1) {
    for (let j = 1; j < GRID; j += 1) {
      const at: Point = [
        tidy(box.xMinM + ((box.xMaxM - box.xMinM) * i) / GRID),
        tidy(box.yMinM + ((box.yMaxM - box.yMinM) * j) / GRID),
      ];
      if (!pointInPolygon(at, outline)) continue;
      const toRim = Math.min(...edgesOf(outline).map(([a, b]) => distanceToEdgeM(at, a, b)));
      const toBurner = Math.min(
        ...burners.map((b) => Math.hypot(b.at[0] - at[0], b.at[1] - at[1]) / 2),
      );
      const clear = Math.min(toRim, toBurner);
      if (clear > widest) [widest, best] = [clear, at];
    }
  }
  return best;
}
