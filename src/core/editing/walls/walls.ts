import {
  areaM2,
  signedAreaM2,
  tidy,
  tidyPoint,
  type Point,
  type Polygon,
} from '../../geometry/index.ts';
import {
  atWall,
  fromWall,
  isSameEdge,
  LIMITS,
  outlineHolds,
  wallOf,
  wallsOf,
  type Edge,
  type Kitchen,
  type Room,
} from '../../kitchen/index.ts';
import { roomOutline } from '../shapes/room.ts';

/** Something that lies in a wall or hangs on it. */
type OnWall = { readonly wall: Edge; readonly atM: number; readonly widthM: number };

/** No finger pushes walls nearer together, m. */
const SHORTEST_WALL_M = 0.3;

/** The walls that were only likely are told from now on. */
export function tellWalls(kitchen: Kitchen): Kitchen {
  if (kitchen.room.outline) return kitchen;
  return { ...kitchen, room: { ...kitchen.room, outline: roomOutline(kitchen) } };
}

/** Within its wall: no farther than its end, no longer than the wall. */
export function withinWall<T extends OnWall>(outline: Polygon, one: T): T {
  const lengthM = wallOf(outline, one.wall)?.lengthM ?? 0;
  const widthM = tidy(Math.min(one.widthM, lengthM));
  const atM = tidy(Math.min(Math.max(0, one.atM), lengthM - widthM));
  return { ...one, atM, widthM };
}

/** Walls of another shape with the same corners in order: what is in them stays where it is. */
function withOutline(kitchen: Kitchen, before: Polygon, outline: Polygon): Kitchen {
  const kept = <T extends OnWall>(one: T): T => {
    const old = wallOf(before, one.wall);
    const now = wallOf(outline, one.wall);
    if (!old || !now) return one;
    const [atM] = fromWall(now, atWall(old, one.atM, 0));
    return withinWall(outline, { ...one, atM });
  };
  const { openings } = kitchen.room;
  const room: Room = {
    ...kitchen.room,
    outline,
    floorAreaM2: Math.max(
      LIMITS.floorAreaM2.least,
      Math.round((kitchen.room.floorAreaM2 + areaM2(outline) - areaM2(before)) * 100) / 100,
    ),
    ...(openings && { openings: openings.map(kept) }),
  };
  const fixtures = kitchen.fixtures.map((fixture) =>
    'wallPlace' in fixture && fixture.wallPlace
      ? { ...fixture, wallPlace: kept(fixture.wallPlace) }
      : fixture,
  );
  return { ...kitchen, room, fixtures };
}

/**
 * Puts a wall farther out (or in, below zero), m, its neighbours following; the
 * told floor area, which may hold an open room beside it, grows by as much. The same kitchen where they would cross.
 */
export function moveWall(kitchen: Kitchen, edge: Edge, outM: number): Kitchen {
  const told = tellWalls(kitchen);
  const before = roomOutline(told);
  const wall = wallOf(before, edge);
  if (!wall || outM === 0) return kitchen;
  const moved = (corner: Point): Point =>
    tidyPoint([corner[0] - wall.inward[0] * outM, corner[1] - wall.inward[1] * outM]);
  const outline = before.map((corner, i) => (edge.includes(i) ? moved(corner) : corner));
  const turnsOver = signedAreaM2(outline) * signedAreaM2(before) <= 0;
  const isShort = wallsOf(outline).some(({ lengthM }) => lengthM < SHORTEST_WALL_M);
  if (turnsOver || isShort || !outlineHolds(outline)) return kitchen;
  return withOutline(told, before, outline);
}

/** The wall with the same corners; the first of the room where there is none. */
export function wallAt(kitchen: Kitchen, edge: Edge): number {
  const count = roomOutline(kitchen).length;
  const index = Array.from({ length: count }, (_, i) => i).find((i) =>
    isSameEdge([i, (i + 1) % count], edge),
  );
  return index ?? 0;
}
