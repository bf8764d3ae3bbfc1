import { distanceM } from '../../geometry/index.ts';
import type { Lane, LanePoint, LanesQuality } from '../model/types.ts';

/** A change of heading larger than this is a turn, radians: 45°. */
const TURN_RAD = Math.PI / 4;

function turnsIn(points: readonly LanePoint[]): number {
  let turns = 0;
  for (let i = 2; i < points.length; i += 1) {
    const [a, b, c] = [points[i - 2], points[i - 1], points[i]];
    if (!a || !b || !c) continue;
    const heading = Math.atan2(b[1] - a[1], b[0] - a[0]);
    const after = Math.atan2(c[1] - b[1], c[0] - b[0]);
    const change = Math.abs(after - heading);
    if (Math.min(change, 2 * Math.PI - change) > TURN_RAD) turns += 1;
  }
  return turns;
}

/** How good a set of lanes is, against the shortest path that could wet the area. */
export function qualityOf(lanes: readonly Lane[], areaM2: number, swathM: number): LanesQuality {
  const pathLengthM = lanes.reduce((sum, lane) => sum + lane.lengthM, 0);
  const idealLengthM = areaM2 / swathM;
  let carriedM = 0;
  lanes.forEach((lane, i) => {
    const [end, start] = [lanes[i - 1]?.points.at(-1), lane.points[0]];
    if (end && start) carriedM += distanceM(end, start);
  });
  return {
    pathLengthM,
    areaM2,
    idealLengthM,
    lengthRatio: pathLengthM / idealLengthM,
    overlap: pathLengthM > 0 ? Math.max(0, 1 - idealLengthM / pathLengthM) : 0,
    lifts: Math.max(0, lanes.length - 1),
    carriedM,
    turns: lanes.reduce((sum, lane) => sum + turnsIn(lane.points), 0),
  };
}
