/**
 * Pouring lanes over a level surface: strips one swath deep parallel to the
 * back edge, the one at the back first, to and fro toward the front, round
 * the cut-outs. Every place of the surface lies within half a swath of a
 * lane by construction: each strip's row does that for its own strip.
 */
import { distanceM, edgesOf } from '../../geometry/index.ts';
import { backsOf } from '../lanes/backs.ts';
import { blocksOf, type Block, type Pour } from '../lanes/blocks.ts';
import { minimumWidth } from '../lanes/calipers.ts';
import { edgeLanesOf } from '../lanes/edge-lanes.ts';
import { frameOn, surfaceIntoFrame, turned } from '../lanes/frame.ts';
import { legsOf, type Back } from '../lanes/legs.ts';
import { linker, linkWithin, type Linker } from '../lanes/link.ts';
import { orderBlocks } from '../lanes/order.ts';
import { pathLengthM, surfaceAreaM2, withoutIdle } from '../model/plane.ts';
import { qualityOf } from '../coverage/quality.ts';
import { LanesRefusal, within } from '../model/refusal.ts';
import { repairSurface } from '../coverage/repair.ts';
import { ARM_M, ARM_RANGE_M, inReach, partsInReach, standAt } from '../reach/arm.ts';
import { unreachedBy } from '../reach/unreached.ts';
import { zonesOf, type RowLayer, type Zone } from '../reach/zones.ts';
import { layRows } from '../lanes/rows.ts';
import { sideEdges } from '../lanes/slices.ts';
import { chooseStrips } from '../lanes/strips.ts';
import type {
  EdgeLane,
  Lane,
  LanePoint,
  LanesOptions,
  LanesPlan,
  LanesQuality,
  Ring,
  StandSide,
  Surface,
  Unreached,
} from '../model/types.ts';

/** Narrowest and widest pass that a kettle or a hose makes, metres. */
const SWATH_RANGE_M = [0.01, 1] as const;
/** Most lanes side by side that are still worth drawing. */
const MOST_ROWS = 1000;
/** Edge directions tried besides the narrowest way through. */
const TRIED_EDGES = 6;

type Course = {
  readonly lanes: readonly Lane[];
  readonly unreached: readonly Unreached[];
  readonly quality: LanesQuality;
};

/** @throws LanesRefusal too-fine */
function rowLayer(swathM: number): RowLayer {
  return (surface, frame, firstWhole) => {
    const seen = surfaceIntoFrame(frame, surface);
    const depths = seen.outer.map((p) => p[1]);
    const rows = (Math.max(...depths) - Math.min(...depths)) / swathM;
    if (rows > MOST_ROWS) {
      const advice = 'Take a wider swath, or part the surface.';
      const found = `${Math.ceil(rows)} lanes side by side`;
      throw new LanesRefusal('too-fine', 'swathM', found, `up to ${MOST_ROWS} lanes`, advice);
    }
    const edges = sideEdges(seen);
    return layRows(edges, chooseStrips(seen, edges, swathM, firstWhole), swathM);
  };
}

/** Joins lines into lanes: on to the next by a link that pours, else a new lane; a new one too where one has to stand elsewhere. */
function joined(pours: readonly Pour[], parts: readonly Part[]): Lane[] {
  const paths: { points: LanePoint[]; side: StandSide | undefined }[] = [];
  for (const { leg, lines } of pours) {
    const part = parts[leg];
    if (!part) continue;
    const { link, zone } = part;
    for (const line of lines) {
      const [start] = line;
      const open = paths[paths.length - 1];
      const end = open?.side === zone.side ? open?.points.at(-1) : undefined;
      const way = start && end ? link(end, start) : undefined;
      if (open && way?.pours) open.points.push(...way.points.slice(1), ...line.slice(1));
      else paths.push({ points: [...line], side: zone.side });
    }
  }
  return paths.map((path) => {
    const points = withoutIdle(path.points);
    const stand = path.side && { stand: standAt(points, path.side) };
    return { points, lengthM: pathLengthM(points), ...stand };
  });
}

/** A zone with the linker that keeps within its reach. */
type Part = { readonly zone: Zone; readonly link: Linker };

function partsOf(
  { pieces, outline }: Prepared,
  backs: readonly Back[],
  options: LanesOptions,
): { readonly parts: readonly Part[]; readonly wholly: boolean } {
  const { swathM, sides, armM = ARM_M } = options;
  const layer = rowLayer(swathM);
  const fromFront = options.startAt === 'front';
  const link = linker(pieces, swathM);
  const parts: Part[] = [];
  let wholly = true;
  for (const leg of pieces.flatMap((piece) => legsOf(piece, backs))) {
    const fromBack = frameOn(leg.back.a, leg.back.b, leg.back.inside);
    if (!sides) {
      const frame = fromFront ? turned(fromBack) : fromBack;
      parts.push({ zone: { surface: leg.surface, frame, rows: layer(leg.surface, frame) }, link });
      continue;
    }
    const free = options.direction === 'shortest';
    const reach = { sides, armM, swathM, outline, layRows: layer, free, fromFront };
    const found = zonesOf(leg, fromBack, reach);
    if (!found.wholly) wholly = false;
    for (const zone of found.zones) {
      const { side } = zone;
      const within = side && linkWithin(link, swathM, (points) => inReach(points, side, armM));
      parts.push({ zone, link: within ?? link });
    }
  }
  return { parts, wholly };
}

function course(ready: Prepared, backs: readonly Back[], options: LanesOptions): Course {
  const { swathM } = options;
  const { pieces } = ready;
  const { parts, wholly } = partsOf(ready, backs, options);
  const blocks: Block[] = [];
  parts.forEach(({ zone, link }, number) => {
    blocks.push(...blocksOf(zone.rows, zone.frame, number, link, blocks.length));
  });
  const between = parts[0]?.link ?? linker(pieces, swathM);
  const lanes = joined(orderBlocks(blocks, between), parts);
  const unreached = wholly ? [] : unreachedBy(lanes, pieces, swathM);
  const areaM2 =
    pieces.reduce((sum, piece) => sum + surfaceAreaM2(piece), 0) -
    unreached.reduce((sum, spot) => sum + spot.areaM2, 0);
  return { lanes, unreached, quality: qualityOf(lanes, areaM2, swathM) };
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
  readonly outline: Ring;
  readonly pieces: readonly Surface[];
  readonly repairs: LanesPlan['repairs'];
  readonly backs: readonly Back[];
};

function prepared(surface: Surface, options: LanesOptions): Prepared {
  within('swath-out-of-range', 'swathM', options.swathM, ...SWATH_RANGE_M);
  const { sides, armM = ARM_M } = options;
  within('arm-out-of-range', 'armM', armM, ...ARM_RANGE_M);
  if (sides?.length === 0) {
    const advice = 'Tell at which sides one can stand, or leave them out.';
    throw new LanesRefusal('nowhere-to-stand', 'sides', 'none', 'one side or more', advice);
  }
  const { pieces, repairs } = repairSurface(surface);
  const largest = pieces.toSorted((p, q) => surfaceAreaM2(q) - surfaceAreaM2(p))[0] ?? surface;
  const backs = backsOf(surface.outer, largest.outer, options.backEdges);
  return { outline: surface.outer, pieces, repairs, backs };
}

function unreachedM2({ unreached }: Course): number {
  return unreached.reduce((sum, { areaM2 }) => sum + areaM2, 0);
}

function shortestCourse(ready: Prepared, options: LanesOptions) {
  const { pieces, backs } = ready;
  let best = { course: course(ready, backs, options), back: backs[0] };
  for (const back of otherBacks(pieces)) {
    const tried = course(ready, [back], options);
    const reaches = unreachedM2(tried) <= unreachedM2(best.course) + 1e-6;
    if (reaches && tried.quality.pathLengthM < best.course.quality.pathLengthM - 1e-9) {
      best = { course: tried, back };
    }
  }
  return best;
}

/** Front edges and rims; each from where one stands, and round an island every side that is open. */
function edges({ pieces, backs }: Prepared, options: LanesOptions): readonly EdgeLane[] {
  const { sides, armM = ARM_M, backEdges = [] } = options;
  const plain = edgeLanesOf(pieces, backs);
  if (!sides) return plain;
  const fronts =
    backEdges.length > 0
      ? plain.filter(({ kind }) => kind === 'front')
      : sides.map(({ a, b }) => ({ points: [a, b] }));
  const rims = plain.filter(({ kind }) => kind === 'rim');
  return [
    ...fronts.flatMap(({ points }) =>
      partsInReach(points, sides, armM).map((lane) => ({ ...lane, kind: 'front' as const })),
    ),
    ...rims.flatMap(({ points }) =>
      partsInReach(points, sides, armM).map((lane) => ({ ...lane, kind: 'rim' as const })),
    ),
  ];
}

/**
 * Draws the lanes of a surface.
 * @param surface outline and cut-outs in metres; what is broken is repaired and named in `repairs`
 * @returns lanes in the order to pour, edge lanes to follow them, and how good they are
 * @throws LanesRefusal swath-out-of-range, no-such-edge, too-fine, and those of `repairSurface`
 */
export function planLanes(surface: Surface, options: LanesOptions): LanesPlan {
  const ready = prepared(surface, options);
  const { lanes, unreached, quality } =
    options.direction === 'shortest'
      ? shortestCourse(ready, options).course
      : course(ready, ready.backs, options);
  const { pieces, repairs } = ready;
  return { lanes, edgeLanes: edges(ready, options), pieces, unreached, repairs, quality };
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
  const custom = course(ready, ready.backs, options).quality.pathLengthM;
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
