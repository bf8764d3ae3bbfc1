import { boundingBox, tidy, type Point } from '../../geometry/index.ts';
import { fixtureOf, outlineOf, type Kitchen } from '../../kitchen/index.ts';
import { movingWith } from './move.ts';
import { roomBox } from './room.ts';

/** The farthest a dragged thing is moved to line up, metres. */
export const SNAP_M = 0.06;
/** Reach in x and in y, so that both together stay within {@link SNAP_M}. */
const REACH_M = SNAP_M / Math.SQRT2;
/** The grid where nothing is near to line up with, metres. */
const GRID_M = 0.05;
/** Closer than this is lined up already, metres. */
const ALIGNED_M = 1e-6;

export type Snapped = {
  readonly at: Point;
  /** Stretches to draw while dragging: what it lines up with. */
  readonly guides: readonly (readonly [Point, Point])[];
};

type Axis = { readonly atM: number; readonly line?: { readonly M: number; readonly mark: Point } };

/**
 * Lines one coordinate up: to a mark first, then to the grid, unless that would
 * bring it within reach of a mark; so snapping twice is snapping once.
 * @param offsets edges of the dragged thing, from its own coordinate
 */
function snapAxis(
  value: number,
  offsets: readonly number[],
  marks: readonly Point[],
  axis: 0 | 1,
): Axis {
  const from = tidy(value);
  const nearest = (at: number) => {
    let best: { readonly offM: number; readonly mark: Point } | undefined;
    for (const mark of marks) {
      for (const offset of offsets) {
        const offM = mark[axis] - (at + offset);
        if (Math.abs(offM) <= REACH_M && (!best || Math.abs(offM) < Math.abs(best.offM))) {
          best = { offM, mark };
        }
      }
    }
    return best;
  };
  const near = nearest(from);
  if (near) {
    const atM = Math.abs(near.offM) < ALIGNED_M ? from : tidy(from + near.offM);
    return { atM, line: { M: near.mark[axis], mark: near.mark } };
  }
  const grid = tidy(Math.round(from / GRID_M) * GRID_M);
  return { atM: nearest(grid) ? from : grid };
}

function guidesFor(x: Axis, y: Axis, [yMin, yMax]: Point, [xMin, xMax]: Point): Snapped['guides'] {
  const guides: (readonly [Point, Point])[] = [];
  if (x.line) {
    const { M, mark } = x.line;
    guides.push([
      [M, Math.min(yMin, mark[1])],
      [M, Math.max(yMax, mark[1])],
    ]);
  }
  if (y.line) {
    const { M, mark } = y.line;
    guides.push([
      [Math.min(xMin, mark[0]), M],
      [Math.max(xMax, mark[0]), M],
    ]);
  }
  return guides;
}

/** Corners of everything that does not move along, and of the room. */
function marksFor(kitchen: Kitchen, moving: ReadonlySet<string>): readonly Point[] {
  const room = roomBox(kitchen, moving);
  const still = kitchen.fixtures.filter(({ id }) => !moving.has(id));
  return [
    ...still.flatMap((fixture) => outlineOf(fixture) ?? []),
    [room.xMinM, room.yMinM],
    [room.xMaxM, room.yMaxM],
  ];
}

/**
 * Where the lower-left corner of a dragged fixture's box comes to rest: edges in
 * line with corners and edges of other outlines and the walls, else on a grid of 5 cm.
 */
export function snapMove(kitchen: Kitchen, id: string, to: Point): Snapped {
  const fixture = fixtureOf(kitchen, id);
  const outline = fixture && outlineOf(fixture);
  const box = outline ? boundingBox(outline) : { xMinM: 0, yMinM: 0, xMaxM: 0, yMaxM: 0 };
  const lengthM = box.xMaxM - box.xMinM;
  const depthM = box.yMaxM - box.yMinM;
  const marks = marksFor(kitchen, new Set([...movingWith(kitchen, id), id]));
  const x = snapAxis(to[0], [0, lengthM], marks, 0);
  const y = snapAxis(to[1], [0, depthM], marks, 1);
  const guides = guidesFor(x, y, [y.atM, y.atM + depthM], [x.atM, x.atM + lengthM]);
  return { at: [x.atM, y.atM], guides };
}

/** Where a dragged corner comes to rest: in line with other corners, its own outline's too. */
export function snapCorner(kitchen: Kitchen, id: string, corner: number, to: Point): Snapped {
  const fixture = fixtureOf(kitchen, id);
  const own = ((fixture && outlineOf(fixture)) ?? []).filter((_, i) => i !== corner);
  const marks = [...marksFor(kitchen, new Set([id])), ...own];
  const x = snapAxis(to[0], [0], marks, 0);
  const y = snapAxis(to[1], [0], marks, 1);
  return { at: [x.atM, y.atM], guides: guidesFor(x, y, [y.atM, y.atM], [x.atM, x.atM]) };
}
