import type { Counter, Kitchen, Point, Polygon } from '../kitchen/index.ts';
import { MOST_BACK_EDGES, MOST_FIXTURES } from './limits.ts';
import { put, type Edited } from './add.ts';
import { freeId, freeName, idsOf } from './names.ts';
import { outlineOf, shiftBy, tidyPoint } from './plane.ts';
import { roomBox } from './room.ts';
import { isSoundOutline, shareSurface } from './sound-shape.ts';
import { counterDepthM, NEW_KITCHEN } from './usual.ts';

/** A stretch of counter along a wall, and the turn at its end into the next one. */
export type RunPiece = {
  /** Along the wall, into the corner, metres. */
  readonly lengthM: number;
  readonly turn: 'left' | 'right' | 'straight';
};

/** Gap to what is already drawn, metres. */
const APART_M = 0.3;

function turned([dx, dy]: Point, turn: RunPiece['turn']): Point {
  if (turn === 'right') return [dy, -dx];
  return turn === 'left' ? [-dy, dx] : [dx, dy];
}

/** The wall line from the origin, going right first, and the front line at `depthM` from it. */
function outlineFor(pieces: readonly RunPiece[], depthM: number): Polygon {
  let at: Point = [0, 0];
  let way: Point = [1, 0];
  const wall: Point[] = [at];
  const front: Point[] = [[0, -depthM]];
  for (const [i, { lengthM, turn }] of pieces.entries()) {
    const last = i === pieces.length - 1;
    const next = last ? way : turned(way, turn);
    at = [at[0] + way[0] * lengthM, at[1] + way[1] * lengthM];
    wall.push(at);
    // The counter lies to the right of a person who walks along with the wall at the left hand.
    const [inX, inY] = [way[1], -way[0]];
    const straight = next[0] === way[0] && next[1] === way[1];
    if (last) front.push([at[0] + inX * depthM, at[1] + inY * depthM]);
    else if (!straight) {
      front.push([at[0] + (inX + next[1]) * depthM, at[1] + (inY - next[0]) * depthM]);
    }
    way = next;
  }
  return [...wall, ...front.toReversed()].map(tidyPoint);
}

/** Where the run begins: the far left corner of the room, or beside what is drawn there. */
function placed(kitchen: Kitchen, outline: Polygon): Polygon {
  const room = roomBox(kitchen);
  const drawn = kitchen.fixtures.flatMap((fixture) => {
    const other = outlineOf(fixture);
    return other ? [other] : [];
  });
  const left = Math.min(...outline.map(([x]) => x));
  const tries = [
    room.xMinM,
    ...drawn.map((other) => Math.max(...other.map(([x]) => x)) - left + APART_M),
  ];
  const at = (x: number) => outline.map(shiftBy(x, room.yMaxM));
  const free = tries
    .toSorted((a, b) => a - b)
    .map(at)
    .find((place) => isSoundOutline(place) && drawn.every((other) => !shareSurface(place, other)));
  return free ?? at(room.xMinM);
}

/**
 * One counter along several walls, as lengths are read off one after the other:
 * the first along the far wall from left to right, each with the turn made at
 * its end ("right" into an inner corner). Every length is the length along the
 * wall. Lengths are kept as typed, each wall edge is a back edge.
 * @param o depthM: the country's usual depth unless told
 * @returns the id; an empty id and the same kitchen when such a run would lie
 *   over itself, has no or more than 20 pieces, or is out of the plan
 */
export function counterRun(
  kitchen: Kitchen,
  pieces: readonly RunPiece[],
  o: { readonly depthM?: number; readonly name?: string } = {},
): Edited {
  const fits =
    pieces.length > 0 &&
    pieces.length <= MOST_BACK_EDGES &&
    pieces.every(({ lengthM }) => lengthM > 0) &&
    kitchen.fixtures.length < MOST_FIXTURES;
  if (!fits) return { kitchen, id: '' };
  const shape = outlineFor(pieces, o.depthM ?? counterDepthM(kitchen.country));
  if (!isSoundOutline(shape)) return { kitchen, id: '' };
  const outline = placed(kitchen, shape);
  if (!isSoundOutline(outline)) return { kitchen, id: '' };
  const names = kitchen.fixtures.map(({ name }) => name);
  const counter: Counter = {
    kind: 'counter',
    id: freeId(idsOf(kitchen), 'counter'),
    name: o.name ?? freeName(names, 'Counter'),
    designation: 'undecided',
    outline,
    holes: [],
    backEdges: pieces.map((_, i) => [i, i + 1]),
    material: 'unknown',
    condition: 'unknown',
    backsplashHeightM: NEW_KITCHEN.backsplashHeightM,
  };
  return put(kitchen, counter);
}
