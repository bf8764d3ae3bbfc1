import { boundingBox, isUpright, type Point } from '../../geometry/index.ts';
import { fixtureOf, outlineOf, type Kitchen } from '../../kitchen/index.ts';
import { moveCorner } from './corners.ts';
import { moveFixture, resizeFixture } from './move.ts';
import { roomBox } from './room.ts';

/** Nearer to a wall than this stands at it, m. */
const AT_WALL_M = 0.02;
/** Shortest side a finger can make, m. */
const SHORTEST_SIDE_M = 0.05;

/**
 * A fixture of another size: the side at a wall stays at the wall, and what
 * stood within the room does not grow out of it.
 */
export function resizeAtWall(
  kitchen: Kitchen,
  id: string,
  lengthM: number,
  depthM: number,
): Kitchen {
  const fixture = fixtureOf(kitchen, id);
  const outline = fixture && outlineOf(fixture);
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

/** Pulls one corner of an upright outline; the corner across from it stays where it is. */
export function pullCorner(kitchen: Kitchen, id: string, corner: number, to: Point): Kitchen {
  const fixture = fixtureOf(kitchen, id);
  const outline = fixture && outlineOf(fixture);
  const across = outline?.[(corner + 2) % 4];
  if (!outline || !across || !isUpright(outline)) return moveCorner(kitchen, id, corner, to);
  const lengthM = Math.max(SHORTEST_SIDE_M, Math.abs(to[0] - across[0]));
  const depthM = Math.max(SHORTEST_SIDE_M, Math.abs(to[1] - across[1]));
  const at: Point = [
    to[0] < across[0] ? across[0] - lengthM : across[0],
    to[1] < across[1] ? across[1] - depthM : across[1],
  ];
  return moveFixture(resizeFixture(kitchen, id, lengthM, depthM), id, at);
}
