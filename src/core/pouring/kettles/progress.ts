import { between, distanceM, nearestShare } from '../../geometry/index.ts';
import type { Lane, LanePoint } from '../model/types.ts';

/** The part of a path between two lengths along it, metres; corners in between are kept. */
export function partOf(points: readonly LanePoint[], fromM: number, toM: number): LanePoint[] {
  const part: LanePoint[] = [];
  let walked = 0;
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1], points[i]];
    if (!a || !b) continue;
    const lengthM = distanceM(a, b);
    const at = (m: number) => between(a, b, lengthM === 0 ? 0 : (m - walked) / lengthM);
    if (part.length === 0 && fromM < walked + lengthM) part.push(at(Math.max(fromM, walked)));
    if (part.length > 0) {
      if (toM <= walked + lengthM) {
        part.push(at(toM));
        return part;
      }
      part.push(b);
    }
    walked += lengthM;
  }
  return part;
}

/** How far along the lanes, one after the other, the nearest place to `p` lies, metres. */
export function nearestAlongM(lanes: readonly Pick<Lane, 'points'>[], p: LanePoint): number {
  let walked = 0;
  let best = { farM: Infinity, alongM: 0 };
  for (const { points } of lanes) {
    for (let i = 1; i < points.length; i += 1) {
      const [a, b] = [points[i - 1], points[i]];
      if (!a || !b) continue;
      const share = nearestShare(p, a, b);
      const farM = distanceM(p, between(a, b, share));
      const lengthM = distanceM(a, b);
      // The first of equally near places: better to pour a bit twice than to leave it out.
      if (farM < best.farM - 1e-9) best = { farM, alongM: walked + share * lengthM };
      walked += lengthM;
    }
  }
  return best.alongM;
}
