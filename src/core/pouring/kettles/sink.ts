/**
 * A sink unfolded, in the order it is poured: spout and tap, handles, rim,
 * walls from their top, floor — high before low, so that nothing clean is
 * splashed from above (common practice, no published source).
 */
import { planLanes } from '../planner/plan-lanes.ts';
import { pathLengthM } from '../model/plane.ts';
import { LanesRefusal, within } from '../model/refusal.ts';
import type { Lane, LanePoint, Ring } from '../model/types.ts';

export type BowlSize = {
  /** Along the back, metres, 0.1 to 3. */
  readonly lengthM: number;
  /** From back to front, metres, 0.1 to 2. */
  readonly widthM: number;
  /** Metres, 0.03 to 1. */
  readonly depthM: number;
};

export type SinkOptions = {
  readonly swathM: number;
  readonly spout?: boolean;
  readonly tap?: boolean;
  /** Number of handles, 0 to 8. */
  readonly handles?: number;
  readonly rim?: boolean;
  /** How far down a wall the film from one pass reaches, metres; the whole depth unless given. */
  readonly wallReachM?: number;
};

/** A part of a sink: a fitting poured by the piece, or a surface with its lanes. */
export type SinkPart = {
  readonly kind: 'fitting' | 'rim' | 'wall' | 'floor';
  /** Which fitting; surfaces have none. */
  readonly fitting?: 'spout' | 'tap' | 'spout-and-tap' | 'handles';
  /** Pieces, for fittings. */
  readonly pieces: number;
  /** Number of the bowl, from 1; fittings have none. */
  readonly bowl?: number;
  /** Surface in the unfolded picture, metres: the floor in the middle, walls laid outward, back at the top. */
  readonly outlines: readonly Ring[];
  readonly lanes: readonly Lane[];
  readonly areaM2: number;
  readonly lengthM: number;
};

/** Gap between bowls in the unfolded picture, metres. */
const GAP_M = 0.1;

type Place = { readonly size: BowlSize; readonly x: number; readonly y: number };

function rectangle(x: number, y: number, w: number, h: number): Ring {
  return [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ];
}

function lane(points: readonly LanePoint[]): Lane {
  return { points, lengthM: pathLengthM(points) };
}

function fittingPart(fitting: SinkPart['fitting'] & string, pieces: number): SinkPart {
  return { kind: 'fitting', fitting, pieces, outlines: [], lanes: [], areaM2: 0, lengthM: 0 };
}

function surfacePart(
  kind: 'rim' | 'wall' | 'floor',
  bowl: number,
  outlines: readonly Ring[],
  lanes: readonly Lane[],
  areaM2: number,
): SinkPart {
  const lengthM = lanes.reduce((sum, l) => sum + l.lengthM, 0);
  return { kind, pieces: 0, bowl, outlines, lanes, areaM2, lengthM };
}

function rim({ size, x, y }: Place, bowl: number): SinkPart {
  const { lengthM, widthM, depthM } = size;
  // The unfolded walls' outer edges are the rim; round the bowl it is one closed lane.
  const round: LanePoint[] = [...rectangle(x, y, lengthM, widthM), [x, y]];
  const edges: Ring[] = [
    [
      [x, y - depthM],
      [x + lengthM, y - depthM],
    ],
    [
      [x + lengthM + depthM, y],
      [x + lengthM + depthM, y + widthM],
    ],
    [
      [x + lengthM, y + widthM + depthM],
      [x, y + widthM + depthM],
    ],
    [
      [x - depthM, y + widthM],
      [x - depthM, y],
    ],
  ];
  return surfacePart('rim', bowl, edges, [lane(round)], 0);
}

/** Each wall from its top: a pass along the top edge, and one lower for every further reach of the film. */
function walls({ size, x, y }: Place, bowl: number, reachM: number): SinkPart {
  const { lengthM, widthM, depthM } = size;
  const passes = Math.ceil(depthM / reachM - 1e-9);
  const lanes: Lane[] = [];
  for (let pass = 0; pass < passes; pass += 1) {
    const up = depthM * (1 - pass / passes);
    const far = { x: x + lengthM, y: y + widthM };
    lanes.push(
      lane([
        [x, y - up],
        [far.x, y - up],
      ]),
      lane([
        [far.x + up, y],
        [far.x + up, far.y],
      ]),
      lane([
        [far.x, far.y + up],
        [x, far.y + up],
      ]),
      lane([
        [x - up, far.y],
        [x - up, y],
      ]),
    );
  }
  const outlines = [
    rectangle(x, y - depthM, lengthM, depthM),
    rectangle(x + lengthM, y, depthM, widthM),
    rectangle(x, y + widthM, lengthM, depthM),
    rectangle(x - depthM, y, depthM, widthM),
  ];
  return surfacePart('wall', bowl, outlines, lanes, 2 * (lengthM + widthM) * depthM);
}

function floor({ size, x, y }: Place, bowl: number, swathM: number): SinkPart {
  const outer = rectangle(x, y, size.lengthM, size.widthM);
  const { lanes } = planLanes({ outer, holes: [] }, { swathM, backEdges: [[0, 1]] });
  return surfacePart('floor', bowl, [outer], lanes, size.lengthM * size.widthM);
}

function checkedBowls(bowls: readonly BowlSize[]): void {
  if (bowls.length < 1) {
    const advice = 'Give each bowl its length, width and depth.';
    throw new LanesRefusal('size-out-of-range', 'bowls', bowls.length, '1 or more bowls', advice);
  }
  bowls.forEach((size, i) => {
    within('size-out-of-range', `bowls[${i}].lengthM`, size.lengthM, 0.1, 3);
    within('size-out-of-range', `bowls[${i}].widthM`, size.widthM, 0.1, 2);
    within('size-out-of-range', `bowls[${i}].depthM`, size.depthM, 0.03, 1);
  });
}

/**
 * The parts of a sink in the order they are poured.
 * @throws LanesRefusal size-out-of-range, swath-out-of-range
 */
export function sinkLanes(bowls: readonly BowlSize[], options: SinkOptions): readonly SinkPart[] {
  checkedBowls(bowls);
  const { spout = true, tap = true, handles = 2 } = options;
  within('size-out-of-range', 'handles', handles, 0, 8);
  let x = 0;
  const places = bowls.map((size): Place => {
    const place = { size, x: x + size.depthM, y: size.depthM };
    x += size.lengthM + 2 * size.depthM + GAP_M;
    return place;
  });
  const parts: SinkPart[] = [];
  if (spout || tap) {
    const both = spout ? 'spout-and-tap' : 'tap';
    parts.push(fittingPart(tap ? both : 'spout', Number(spout) + Number(tap)));
  }
  if (handles > 0) parts.push(fittingPart('handles', handles));
  const each = (part: (place: Place, bowl: number) => SinkPart) =>
    parts.push(...places.map((place, i) => part(place, i + 1)));
  if (options.rim ?? true) each(rim);
  each((place, bowl) =>
    walls(
      place,
      bowl,
      within('size-out-of-range', 'wallReachM', options.wallReachM ?? place.size.depthM, 0.02, 1),
    ),
  );
  each((place, bowl) => floor(place, bowl, options.swathM));
  return parts;
}
