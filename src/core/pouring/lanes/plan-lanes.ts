/**
 * Pouring lanes over a level surface: strips one swath deep parallel to the
 * back edge, the one at the back first, to and fro toward the front, round
 * the cut-outs. Every place of the surface lies within half a swath of a
 * lane by construction: each strip's row does that for its own strip.
 */
import { distanceM, edgesOf } from '../../geometry/index.ts';
import { backsOf } from './backs.ts';
import { blocksOf, type Block } from './blocks.ts';
import { minimumWidth } from './calipers.ts';
import { edgeLanesOf } from './edge-lanes.ts';
import { frameOn, surfaceIntoFrame, turned, type Frame } from './frame.ts';
import { legsOf, type Back, type Leg } from './legs.ts';
import { linker, type Linker } from './link.ts';
import { orderBlocks } from './order.ts';
import { pathLengthM, surfaceAreaM2, withoutIdle } from '../model/plane.ts';
import { qualityOf } from '../coverage/quality.ts';
import { LanesRefusal, within } from '../model/refusal.ts';
import { repairSurface } from '../coverage/repair.ts';
import { layRows, type Row } from './rows.ts';
import { sideEdges } from './slices.ts';
import { chooseStrips } from './strips.ts';
import type {
  Lane,
  LanePoint,
  LanesOptions,
  LanesPlan,
  LanesQuality,
  Surface,
} from '../model/types.ts';

/** Narrowest and widest pass that a kettle or a hose makes, metres. */
const SWATH_RANGE_M = [0.01, 1] as const;
/** Most lanes side by side that are still worth drawing. */
const MOST_ROWS = 1000;
/** Edge directions tried besides the narrowest way through. */
const TRIED_EDGES = 6;

type Course = { readonly lanes: readonly Lane[]; readonly quality: LanesQuality };

function rowsOnLeg(leg: Leg, frame: Frame, swathM: number): readonly Row[] {
  const seen = surfaceIntoFrame(frame, leg.surface);
  const depths = seen.outer.map((p) => p[1]);
  const rows = (Math.max(...depths) - Math.min(...depths)) / swathM;
  if (rows > MOST_ROWS) {
    const advice = 'Take a wider swath, or part the surface.';
    const found = `${Math.ceil(rows)} lanes side by side`;
    throw new LanesRefusal('too-fine', 'swathM', found, `up to ${MOST_ROWS} lanes`, advice);
  }
  const edges = sideEdges(seen);
  return layRows(edges, chooseStrips(seen, edges, swathM), swathM);
}

/** Joins lines into lanes: on to the next by a link that pours, else a new lane. */
function joined(lines: readonly (readonly LanePoint[])[], link: Linker): Lane[] {
  const paths: LanePoint[][] = [];
  for (const line of lines) {
    const [start] = line;
    const open = paths[paths.length - 1];
    const end = open?.[open.length - 1];
    const way = start && end ? link(end, start) : undefined;
    if (open && way?.pours) open.push(...way.points.slice(1), ...line.slice(1));
    else paths.push([...line]);
  }
  return paths.map((path) => {
    const points = withoutIdle(path);
    return { points, lengthM: pathLengthM(points) };
  });
}

function course(pieces: readonly Surface[], backs: readonly Back[], options: LanesOptions): Course {
  const { swathM } = options;
  const link = linker(pieces, swathM);
  const blocks: Block[] = [];
  pieces
    .flatMap((piece) => legsOf(piece, backs))
    .forEach((leg, number) => {
      const fromBack = frameOn(leg.back.a, leg.back.b, leg.back.inside);
      const frame = options.startAt === 'front' ? turned(fromBack) : fromBack;
      const rows = rowsOnLeg(leg, frame, swathM);
      blocks.push(...blocksOf(rows, frame, number, link, blocks.length));
    });
  const lanes = joined(
    orderBlocks(blocks, link).flatMap((pour) => pour.lines),
    link,
  );
  const areaM2 = pieces.reduce((sum, piece) => sum + surfaceAreaM2(piece), 0);
  return { lanes, quality: qualityOf(lanes, areaM2, swathM) };
}

/** Single backs that may give a shorter path: the narrowest way through and the longest edges. */
function otherBacks(pieces: readonly Surface[]): readonly Back[] {
  const points = pieces.flatMap((piece) => piece.outer);
  const narrow = minimumWidth(points);
  const edges = pieces
    .flatMap((piece) => edgesOf(piece.outer))
    .toSorted((p, q) => distanceM(...q) - distanceM(...p));
  const tried: Back[] = [{ a: narrow.a, b: narrow.b, inside: narrow.opposite }];
  for (const [a, b] of edges) {
    const along = Math.atan2(b[1] - a[1], b[0] - a[0]);
    const isNew = tried.every((t) => {
      const other = Math.atan2(t.b[1] - t.a[1], t.b[0] - t.a[0]);
      return Math.abs(Math.sin(along - other)) > 0.02;
    });
    const middle: LanePoint = points.reduce<LanePoint>(
      (sum, p) => [sum[0] + p[0] / points.length, sum[1] + p[1] / points.length],
      [0, 0],
    );
    if (isNew && tried.length <= TRIED_EDGES) tried.push({ a, b, inside: middle });
  }
  return tried;
}

type Prepared = {
  readonly pieces: readonly Surface[];
  readonly repairs: LanesPlan['repairs'];
  readonly backs: readonly Back[];
};

function prepared(surface: Surface, options: LanesOptions): Prepared {
  within('swath-out-of-range', 'swathM', options.swathM, ...SWATH_RANGE_M);
  const { pieces, repairs } = repairSurface(surface);
  const largest = pieces.toSorted((p, q) => surfaceAreaM2(q) - surfaceAreaM2(p))[0] ?? surface;
  return { pieces, repairs, backs: backsOf(surface.outer, largest.outer, options.backEdges) };
}

function shortestCourse({ pieces, backs }: Prepared, options: LanesOptions) {
  let best = { course: course(pieces, backs, options), back: backs[0] };
  for (const back of otherBacks(pieces)) {
    const tried = course(pieces, [back], options);
    if (tried.quality.pathLengthM < best.course.quality.pathLengthM - 1e-9) {
      best = { course: tried, back };
    }
  }
  return best;
}

/**
 * Draws the lanes of a surface.
 * @param surface outline and cut-outs in metres; what is broken is repaired and named in `repairs`
 * @returns lanes in the order to pour, edge lanes to follow them, and how good they are
 * @throws LanesRefusal swath-out-of-range, no-such-edge, too-fine, and those of `repairSurface`
 */
export function planLanes(surface: Surface, options: LanesOptions): LanesPlan {
  const ready = prepared(surface, options);
  const { lanes, quality } =
    options.direction === 'shortest'
      ? shortestCourse(ready, options).course
      : course(ready.pieces, ready.backs, options);
  const { pieces, repairs, backs } = ready;
  return { lanes, edgeLanes: edgeLanesOf(pieces, backs), pieces, repairs, quality };
}

/** What custom's direction costs against the shortest of the directions tried. */
export type DirectionFacts = {
  readonly customLengthM: number;
  readonly shortestLengthM: number;
  /** Path saved by leaving custom's direction, metres; 0 when custom's is the shortest. */
  readonly savedM: number;
  /** Angle of the shortest lanes to the x axis, 0 to 180 degrees. */
  readonly shortestAngleDeg: number;
  /** Narrowest width of the surface's hull, metres. */
  readonly minimumWidthM: number;
};

/**
 * Compares custom's direction with the one of the narrowest way through and
 * with those of the longest edges.
 * @throws LanesRefusal as `planLanes`
 */
export function compareDirections(surface: Surface, options: LanesOptions): DirectionFacts {
  const ready = prepared(surface, options);
  const custom = course(ready.pieces, ready.backs, options).quality.pathLengthM;
  const { course: shortest, back } = shortestCourse(ready, options);
  const angle = back ? Math.atan2(back.b[1] - back.a[1], back.b[0] - back.a[0]) : 0;
  return {
    customLengthM: custom,
    shortestLengthM: shortest.quality.pathLengthM,
    savedM: custom - shortest.quality.pathLengthM,
    shortestAngleDeg: ((((angle * 180) / Math.PI) % 180) + 180) % 180,
    minimumWidthM: minimumWidth(ready.pieces.flatMap((piece) => piece.outer)).widthM,
  };
}
