import { boundingBox, boxMeets, type Polygon } from '../../../../core/geometry/index.ts';
import { atWall, fromWall, wallsOf, type Wall } from '../../../../core/kitchen/index.ts';
import type { Frame } from '../../../pictures/kitchen-frame.ts';

/** A box in a picture with its own axes: x from left to right of whoever stands before it, y towards that person; cm. */
export type Stance = {
  readonly widthCm: number;
  readonly depthCm: number;
  /** Puts a drawing about its middle where the box is. */
  readonly transform: string;
};

const CM_PER_M = 100;
/** Two walls as near as this are as good, m. */
const AS_NEAR_M = 0.12;
/** Whoever uses it needs this much room in front, m. */
const ROOM_IN_FRONT_M = 0.3;

function boxAt(wall: Wall, outline: Polygon) {
  return boundingBox(outline.map((corner) => fromWall(wall, corner)));
}

/** How much in front of it stands in the way. */
function inTheWay(wall: Wall, outline: Polygon, others: readonly Polygon[]): number {
  const box = boxAt(wall, outline);
  const front = [
    atWall(wall, box.xMinM, box.yMaxM),
    atWall(wall, box.xMaxM, box.yMaxM + ROOM_IN_FRONT_M),
  ];
  return others.filter((other) => other !== outline && boxMeets(boundingBox(front), other)).length;
}

/** The wall a thing has its back to: the nearest; of two in a corner the one that leaves its front free. */
function wallBehind(outline: Polygon, room: Polygon, others: readonly Polygon[]): Wall | undefined {
  const gapM = (wall: Wall) => Math.abs(boxAt(wall, outline).yMinM);
  const [nearest, ...rest] = wallsOf(room).toSorted((a, b) => gapM(a) - gapM(b));
  if (!nearest) return undefined;
  const asNear = [nearest, ...rest.filter((wall) => gapM(wall) - gapM(nearest) < AS_NEAR_M)];
  return asNear.toSorted((a, b) => inTheWay(a, outline, others) - inTheWay(b, outline, others))[0];
}

/** How something that takes an outline stands: its back to a wall. `others`: whatever else stands there. */
export function stanceOf(
  outline: Polygon,
  room: Polygon,
  frame: Frame,
  others: readonly Polygon[],
): Stance {
  const wall = wallBehind(outline, room, others);
  const along = wall?.along ?? [1, 0];
  const box = wall ? boxAt(wall, outline) : boundingBox(outline);
  const seen = boundingBox(outline.map((corner) => frame.at(corner)));
  // From left to right before the wall; y grows downwards in the picture.
  const turn = (Math.atan2(-along[1], along[0]) * 180) / Math.PI;
  return {
    widthCm: (box.xMaxM - box.xMinM) * CM_PER_M,
    depthCm: (box.yMaxM - box.yMinM) * CM_PER_M,
    transform: `translate(${(seen.xMinM + seen.xMaxM) / 2} ${(seen.yMinM + seen.yMaxM) / 2}) rotate(${turn})`,
  };
}
