import { distanceM, edgesOf, insideRings, signedAreaM2 } from '../../geometry/index.ts';
import type { Back } from './legs.ts';
import { LanesRefusal } from '../model/refusal.ts';
import type { EdgeOfOuter, LanePoint, Ring } from '../model/types.ts';

/** How far inside an edge its side is tried, metres. */
const PROBE_M = 1e-4;

function centroid(ring: Ring): LanePoint {
  let x = 0;
  let y = 0;
  for (const [a, b] of edgesOf(ring)) {
    const cross = a[0] * b[1] - b[0] * a[1];
    x += (a[0] + b[0]) * cross;
    y += (a[1] + b[1]) * cross;
  }
  const six = 6 * signedAreaM2(ring);
  return six === 0 ? (ring[0] ?? [0, 0]) : [x / six, y / six];
}

/** An edge as a back: the surface's side is found beside its middle, or by its centre. */
function backOn(a: LanePoint, b: LanePoint, outer: Ring): Back {
  const lengthM = distanceM(a, b);
  const normal: LanePoint = [-(b[1] - a[1]) / lengthM, (b[0] - a[0]) / lengthM];
  const beside = (m: number): LanePoint => [
    (a[0] + b[0]) / 2 + normal[0] * m,
    (a[1] + b[1]) / 2 + normal[1] * m,
  ];
  const left = insideRings(beside(PROBE_M), [outer]);
  const right = insideRings(beside(-PROBE_M), [outer]);
  if (left !== right) return { a, b, inside: beside(left ? PROBE_M : -PROBE_M) };
  return { a, b, inside: centroid(outer) };
}

function longestEdge(outer: Ring): readonly [LanePoint, LanePoint] {
  let best: readonly [LanePoint, LanePoint] = [
    [0, 0],
    [0, 0],
  ];
  for (const edge of edgesOf(outer)) {
    if (distanceM(...edge) > distanceM(...best) + 1e-9) best = edge;
  }
  return best;
}

/**
 * Back edges by the corner numbers of the outline as it was given; the longest
 * edge of the cleaned outline when none are given.
 * @throws LanesRefusal no-such-edge
 */
export function backsOf(
  outer: Ring,
  cleanOuter: Ring,
  given: readonly EdgeOfOuter[] | undefined,
): readonly Back[] {
  if (!given || given.length === 0) return [backOn(...longestEdge(cleanOuter), cleanOuter)];
  return given.map((edge, k) => {
    const [i, j] = edge;
    const [a, b] = [outer[i], outer[j]];
    if (!a || !b || distanceM(a, b) < PROBE_M) {
      throw new LanesRefusal(
        'no-such-edge',
        `backEdges[${k}]`,
        `[${String(i)}, ${String(j)}]`,
        `two different corner numbers, 0 to ${outer.length - 1}`,
        'Name the corners at the two ends of the edge at the wall.',
      );
    }
    return backOn(a, b, outer);
  });
}
