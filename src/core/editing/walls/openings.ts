import { boundingBox, tidy, type Point } from '../../geometry/index.ts';
import {
  fromWall,
  isSameEdge,
  LIMITS,
  outlineOf,
  wallsOf,
  type Kitchen,
  type Opening,
  type OpeningKind,
  type Wall,
} from '../../kitchen/index.ts';
import type { Edited } from '../fixtures/add.ts';
import { roomOutline } from '../shapes/room.ts';
import { freeId, idsOf } from '../tables/names.ts';
import { tellWalls, withinWall } from './walls.ts';

/** What a new one is at first, m. Common practice, no published source; the household puts it right. */
const USUAL: Readonly<Record<OpeningKind, Omit<Opening, 'id' | 'kind' | 'wall' | 'atM'>>> = {
  door: { widthM: 0.8, heights: { fromM: 0, toM: 2 }, hinge: 'left' },
  window: { widthM: 1, heights: { fromM: 1, toM: 2.1 } },
  passage: { widthM: 0.9, heights: { fromM: 0, toM: 2 } },
};
/** Places along a wall are looked for in such steps, and dragged ones come to rest on them, m. */
export const WALL_STEP_M = 0.05;
/** Nearer to a wall than this a fixture stands before it, m. */
const AT_WALL_M = 0.3;

/** The opening with an id. */
export function openingOf(kitchen: Kitchen, id: string): Opening | undefined {
  return kitchen.room.openings?.find((opening) => opening.id === id);
}

function withOpening(kitchen: Kitchen, changed: Opening): Kitchen {
  const openings = (kitchen.room.openings ?? []).map((old) =>
    old.id === changed.id ? changed : old,
  );
  return { ...kitchen, room: { ...kitchen.room, openings } };
}

/** Stretches of a wall that something stands before or opens in, m from its left end. */
function taken(kitchen: Kitchen, wall: Wall, kind: OpeningKind): readonly Point[] {
  const openings = (kitchen.room.openings ?? [])
    .filter((other) => isSameEdge(other.wall, wall.edge))
    .map(({ atM, widthM }): Point => [atM, atM + widthM]);
  // A window may be over a counter.
  if (kind === 'window') return openings;
  const before = kitchen.fixtures.flatMap((fixture): readonly Point[] => {
    const outline = outlineOf(fixture);
    if (!outline) return [];
    const box = boundingBox(outline.map((corner) => fromWall(wall, corner)));
    return box.yMinM > AT_WALL_M ? [] : [[box.xMinM, box.xMaxM]];
  });
  return [...openings, ...before];
}

function freeAtM(kitchen: Kitchen, wall: Wall, kind: OpeningKind): number | undefined {
  const { widthM } = USUAL[kind];
  const stretches = taken(kitchen, wall, kind);
  const middleM = (wall.lengthM - widthM) / 2;
  const starts: number[] = [];
  for (let at = 0; at <= wall.lengthM - widthM + 1e-6; at += WALL_STEP_M) starts.push(tidy(at));
  const off = (at: number) => Math.abs(at - middleM);
  return starts
    .toSorted((a, b) => off(a) - off(b))
    .find((at) => stretches.every(([from, to]) => at + widthM <= from || at >= to));
}

/**
 * A door, window or passage in a wall that has room for it: a window in the far
 * wall if it can be, the others in the near one; the walls are told from then on.
 * @returns its id; the same kitchen and an empty id where no wall has room
 */
export function addOpening(kitchen: Kitchen, kind: OpeningKind): Edited {
  const told = tellWalls(kitchen);
  const all = told.room.openings ?? [];
  if (all.length >= LIMITS.openings.most) return { kitchen, id: '' };
  const facing = kind === 'window' ? -1 : 1;
  const walls = wallsOf(roomOutline(told)).toSorted((a, b) => facing * (b.inward[1] - a.inward[1]));
  for (const wall of walls) {
    const atM = freeAtM(told, wall, kind);
    if (atM === undefined) continue;
    const id = freeId(idsOf(told), kind);
    const opening: Opening = { id, kind, wall: wall.edge, atM, ...USUAL[kind] };
    return { kitchen: { ...told, room: { ...told.room, openings: [...all, opening] } }, id };
  }
  return { kitchen, id: '' };
}

/** Another place in its wall, another width, other heights; what no file may hold is kept as typed. */
export function changeOpening(
  kitchen: Kitchen,
  id: string,
  change: Partial<Omit<Opening, 'id' | 'kind'>>,
): Kitchen {
  const old = openingOf(kitchen, id);
  return old ? withOpening(kitchen, { ...old, ...change }) : kitchen;
}

/** So far along its wall that its middle is nearest a point of the plan; onto another wall where that one is nearer. */
export function moveOpening(kitchen: Kitchen, id: string, to: Point): Kitchen {
  const old = openingOf(kitchen, id);
  const outline = roomOutline(kitchen);
  if (!old) return kitchen;
  const reach = (wall: Wall): number => {
    const [alongM, inM] = fromWall(wall, to);
    return Math.hypot(Math.max(-alongM, 0, alongM - wall.lengthM), inM);
  };
  const wall = wallsOf(outline)
    .filter(({ lengthM }) => lengthM >= old.widthM)
    .toSorted((a, b) => reach(a) - reach(b))[0];
  if (!wall) return kitchen;
  const startM = fromWall(wall, to)[0] - old.widthM / 2;
  const atM = Math.round(startM / WALL_STEP_M) * WALL_STEP_M;
  const next = withinWall(outline, { ...old, wall: wall.edge, atM });
  const isSame = next.atM === old.atM && isSameEdge(next.wall, old.wall);
  return isSame ? kitchen : withOpening(kitchen, next);
}

/** Along its wall, and wider, m; it stays within the wall. */
export function shiftOpening(kitchen: Kitchen, id: string, byM: number, widerM = 0): Kitchen {
  const old = openingOf(kitchen, id);
  if (!old) return kitchen;
  const widthM = Math.max(LIMITS.openingWidthM.least, old.widthM + widerM);
  return withOpening(
    kitchen,
    withinWall(roomOutline(kitchen), { ...old, atM: old.atM + byM, widthM }),
  );
}

/** A door hangs on the other side, then opens the other way; nothing for a window. */
export function turnOpening(kitchen: Kitchen, id: string): Kitchen {
  const old = openingOf(kitchen, id);
  if (old?.kind !== 'door') return kitchen;
  const hinge = old.hinge === 'left' ? 'right' : 'left';
  const swing =
    hinge === 'right' || old.hinge === undefined ? old.swing : old.swing === 'out' ? 'in' : 'out';
  return withOpening(kitchen, { ...old, hinge, ...(swing && { swing }) });
}

export function removeOpening(kitchen: Kitchen, id: string): Kitchen {
  const openings = kitchen.room.openings?.filter((opening) => opening.id !== id) ?? [];
  if (openings.length === kitchen.room.openings?.length) return kitchen;
  return { ...kitchen, room: { ...kitchen.room, openings } };
}
