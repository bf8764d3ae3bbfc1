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
export const CM_PER_M = 100;
/** Round the drawing, cm. */
const MARGIN_CM = 14;

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
export function frameOf(polygons: readonly Polygon[], marginCm = MARGIN_CM): Frame {
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
 * Where a word about a polygon may stand, the best first: inside it, outside
 * what lies on top, far from every edge and near the middle; at last in front
 * of it, and behind it.
 */
function wordPoints(polygon: Polygon, onTop: readonly Polygon[]): readonly Point[] {
  const box = boundingBox(polygon);
  const middle: Point = [(box.xMinM + box.xMaxM) / 2, (box.yMinM + box.yMaxM) / 2];
  const edges = [polygon, ...onTop].flatMap(edgesOf);
  const scored: { readonly point: Point; readonly score: number }[] = [];
  for (let i = 1; i < TRIES; i += 1)
    for (let j = 1; j < TRIES; j += 1) {
      const point: Point = [
        box.xMinM + ((box.xMaxM - box.xMinM) * i) / TRIES,
        box.yMinM + ((box.yMaxM - box.yMinM) * j) / TRIES,
      ];
      if (!pointInPolygon(point, polygon) || onTop.some((o) => pointInPolygon(point, o))) continue;
      const roomM = Math.min(...edges.map(([a, b]) => distanceToEdgeM(point, a, b)));
      const offM = Math.hypot(point[0] - middle[0], point[1] - middle[1]);
      scored.push({ point, score: roomM - OFF_CENTRE_COST * offM });
    }
  return [
    ...scored.toSorted((a, b) => b.score - a.score).map(({ point }) => point),
    [middle[0], box.yMinM - IN_FRONT_M],
    [middle[0], box.yMaxM + IN_FRONT_M],
  ];
}

type Reckoned = { readonly onTop: readonly Polygon[]; readonly points: readonly Point[] };
const reckoned = new WeakMap<Polygon, Reckoned>();

/** `wordPoints`, reckoned once: a kitchen of a run is drawn anew with each press, and none of it moves. */
function knownPoints(polygon: Polygon, onTop: readonly Polygon[]): readonly Point[] {
  const known = reckoned.get(polygon);
  const isSame =
    known?.onTop.length === onTop.length && known.onTop.every((o, i) => o === onTop[i]);
  if (known && isSame) return known.points;
  const points = wordPoints(polygon, onTop);
  reckoned.set(polygon, { onTop, points });
  return points;
}

/** A word about a fixture, and what it is about. */
export type WordOn = {
  readonly id: string;
  readonly text: string;
  readonly polygon: Polygon;
  readonly onTop: readonly Polygon[];
};

/** Where a word stands, and how high its letters are, m. */
export type PlacedWord = { readonly at: Point; readonly sizeM: number };

/** Left, top, right and bottom of a word in the drawing, cm. */
type WordBox = readonly [number, number, number, number];

/** The share of the places of a fixture that are as good as its best. */
const GOOD_SHARE = 0.3;
/** Width of a bold letter, its share of the size; wide enough for most words. */
const LETTER_WIDTH = 0.62;
const LINE_HEIGHT = 1.32;
/** A word that finds no place is tried smaller, then left out: its pattern and the list say it too. */
const SHRINKS = [1, 0.85, 0.7] as const;

/**
 * A place for each word so that no two overlap and none leaves the picture:
 * what has the fewest places goes first. `sizeM`: the usual size, m. A word
 * for which there is no place is not in the answer.
 */
export function placeWords(
  words: readonly WordOn[],
  sizeM: number,
  frame: Frame,
): Readonly<Record<string, PlacedWord>> {
  const taken: WordBox[] = [];
  const placed: Record<string, PlacedWord> = {};
  const ranked = words
    .filter(({ text }) => text !== '')
    .map((word) => ({ ...word, points: knownPoints(word.polygon, word.onTop) }))
    .toSorted((a, b) => a.points.length - b.points.length);
  for (const { id, text, points } of ranked) {
    const boxAt = (point: Point, size: number): WordBox => {
      const [x, y] = frame.at(point);
      const halfWidth = (text.length * size * LETTER_WIDTH * CM_PER_M) / 2;
      const halfHeight = (size * LINE_HEIGHT * CM_PER_M) / 2;
      return [x - halfWidth, y - halfHeight, x + halfWidth, y + halfHeight];
    };
    const isFree = (box: WordBox): boolean =>
      liesIn(frame, box) && taken.every((other) => !boxesMeet(box, other));
    // Smaller in a good place goes before large where it could be about a neighbour.
    const good = points.slice(0, Math.ceil(points.length * GOOD_SHARE));
    const tries = [good, points].flatMap((among) =>
      SHRINKS.flatMap((shrink) => among.map((at) => ({ at, sizeM: sizeM * shrink }))),
    );
    const found = tries.find(({ at, sizeM: size }) => isFree(boxAt(at, size)));
    if (!found) continue;
    taken.push(boxAt(found.at, found.sizeM));
    placed[id] = found;
  }
  return placed;
}

function liesIn({ widthCm, heightCm }: Frame, [left, top, right, bottom]: WordBox): boolean {
  const isWithin = left >= -MARGIN_CM && right <= widthCm + MARGIN_CM && top >= -MARGIN_CM;
  return isWithin && bottom <= heightCm + 2 * MARGIN_CM;
}

function boxesMeet(a: WordBox, b: WordBox): boolean {
  return a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];
}
