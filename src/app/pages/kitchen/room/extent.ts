import type { Point } from '../../../../core/geometry/index.ts';
import { atWall, drawnOutlines, wallOf, type Kitchen } from '../../../../core/kitchen/index.ts';
import { roomOutline } from '../../../../core/editing/index.ts';

/** How thick a wall is drawn, m: nobody measures it. */
export const WALL_M = 0.1;

/** Points that a picture of the whole kitchen must hold: walls, what is drawn, open doors. */
export function extentOf(kitchen: Kitchen): readonly Point[] {
  const outline = roomOutline(kitchen);
  const leaves = (kitchen.room.openings ?? []).flatMap(({ wall, atM, widthM, swing }) => {
    const at = wallOf(outline, wall);
    return at && swing === 'out' ? [atWall(at, atM, -WALL_M - widthM)] : [];
  });
  return [...outline, ...drawnOutlines(kitchen).flat(), ...leaves];
}
