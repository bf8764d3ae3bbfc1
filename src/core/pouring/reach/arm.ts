/**
 * What a hand reaches over an edge at which one stands: everything within an
 * arm of the stretch that one can walk, straight ahead or aside.
 */
import { between, distanceM, distanceToEdgeM, nearestShare } from '../../geometry/index.ts';
import { edgeInReach } from '../coverage/coverage.ts';
import { pathLengthM } from '../model/plane.ts';
import type { Lane, LanePoint, Stand, StandSide } from '../model/types.ts';

/**
 * How far a hand with a kettle reaches over the edge of a counter, metres:
 * common practice, no published source (kitchen planners keep daily work
 * within 0.6 to 0.7 m of the front edge).
 */
export const ARM_M = 0.65;
/** Shortest and longest arm that is believed, metres. */
export const ARM_RANGE_M = [0.3, 1.2] as const;
/** Rounding allowed to the arm, metres: a hundredth of a millimetre. */
export const ARM_ROUNDING_M = 1e-5;
/** Parts of a line shorter than this are rounding, metres. */
const NO_LENGTH_M = 1e-4;

/** Whether every place of a path lies within an arm of a side: distance to a stretch is convex, so corners tell. */
export function inReach(points: readonly LanePoint[], side: StandSide, armM: number): boolean {
  return points.every((p) => distanceToEdgeM(p, side.a, side.b) <= armM + ARM_ROUNDING_M);
}

/** Where one stands along `stretch` to pour a path that lies in reach of it. */
export function standAlong(
  points: readonly LanePoint[],
  stretch: Pick<Stand, 'edge' | 'from' | 'to'>,
): Stand {
  const { edge, from, to } = stretch;
  const shares = points.map((p) => nearestShare(p, from, to));
  return {
    edge,
    at: between(from, to, shares[0] ?? 0),
    from: between(from, to, Math.min(...shares)),
    to: between(from, to, Math.max(...shares)),
  };
}

export function standAt(points: readonly LanePoint[], { edge, a, b }: StandSide): Stand {
  return standAlong(points, { edge, from: a, to: b });
}

type Part = { readonly points: LanePoint[]; readonly side: StandSide };

/**
 * A path cut where one has to stand at another side, each part as long as a
 * side allows; what no side reaches is left out.
 */
export function partsInReach(
  points: readonly LanePoint[],
  sides: readonly StandSide[],
  armM: number,
): readonly Lane[] {
  const whole = sides.find((side) => inReach(points, side, armM));
  const parts = whole ? [{ points, side: whole }] : cutAtReach(points, sides, armM);
  return parts.map((part) => ({
    points: part.points,
    lengthM: pathLengthM(part.points),
    stand: standAt(part.points, part.side),
  }));
}

function cutAtReach(
  points: readonly LanePoint[],
  sides: readonly StandSide[],
  armM: number,
): readonly Part[] {
  const parts: Part[] = [];
  for (let i = 1; i < points.length; i += 1) {
    const [p, q] = [points[i - 1], points[i]];
    if (!p || !q) continue;
    for (let from = 0; from < 1;) {
      const open = parts[parts.length - 1];
      const end = open?.points[open.points.length - 1];
      const here = between(p, q, from);
      const goesOn = open && end && distanceM(end, here) < NO_LENGTH_M;
      const next = nextPart(p, q, from, sides, armM, goesOn ? open.side : undefined);
      if (!next) break;
      const place = between(p, q, next.to);
      if (goesOn && next.side === open.side) open.points.push(place);
      else parts.push({ points: [between(p, q, next.from), place], side: next.side });
      from = next.to;
    }
  }
  return parts;
}

/** The next stretch of the line `p` to `q` that some side reaches, from a share on: the longest, or on with the side that is poured from. */
function nextPart(
  p: LanePoint,
  q: LanePoint,
  from: number,
  sides: readonly StandSide[],
  armM: number,
  kept: StandSide | undefined,
): { side: StandSide; from: number; to: number } | undefined {
  const least = NO_LENGTH_M / Math.max(distanceM(p, q), NO_LENGTH_M);
  let best: { side: StandSide; from: number; to: number } | undefined;
  for (const side of sides) {
    const [span] = edgeInReach(p, q, [side.a, side.b], armM + ARM_ROUNDING_M / 2);
    if (!span || span[1] - Math.max(from, span[0]) < least / 2) continue;
    const found = { side, from: Math.max(from, span[0]), to: span[1] };
    if (side === kept && found.from === from) return found;
    const sooner = best && found.from < best.from - least;
    const longer = best && found.from < best.from + least && found.to > best.to;
    if (!best || sooner || longer) best = found;
  }
  return best;
}
