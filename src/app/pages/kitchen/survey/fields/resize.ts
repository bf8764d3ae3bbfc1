import { boundingBox, type Kitchen } from '../../../../../core/kitchen/index.ts';
import { moveFixture, resizeFixture, roomBox } from '../../../../../core/editing/index.ts';
import { fixtureOutline } from '../../editor/outline.ts';

/** Nearer to a wall than this stands at it, m. */
const AT_WALL_M = 0.02;

/**
 * A fixture of another size: the side at a wall stays at the wall, and what
 * stood within the room does not grow out of it.
 */
export function resizedAtWall(
  kitchen: Kitchen,
  id: string,
  lengthM: number,
  depthM: number,
): Kitchen {
  const outline = fixtureOutline(kitchen, id);
  if (!outline) return kitchen;
  const box = boundingBox(outline);
  const room = roomBox(kitchen);
  const begin = (least: number, most: number, wall: number, size: number): number => {
    if (Math.abs(most - wall) < AT_WALL_M) return most - size;
    return most < wall && least + size > wall ? wall - size : least;
  };
  return moveFixture(resizeFixture(kitchen, id, lengthM, depthM), id, [
    begin(box.xMinM, box.xMaxM, room.xMaxM, lengthM),
    begin(box.yMinM, box.yMaxM, room.yMaxM, depthM),
  ]);
}
