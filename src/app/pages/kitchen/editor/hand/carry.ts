import { lowerLeft, type Point, type Polygon } from '../../../../../core/geometry/index.ts';
import {
  atWall,
  fixtureOf,
  outlineOf,
  wallOf,
  wallsOf,
  type Edge,
  type Kitchen,
} from '../../../../../core/kitchen/index.ts';
import {
  elevationOf,
  moveAtWall,
  moveCorner,
  moveFixture,
  moveOpening,
  moveWall,
  openingOf,
  pullCorner,
  resizeAtWallFront,
  roomOutline,
  shiftOpening,
  snapAtWall,
  snapCorner,
  snapMove,
  type FrontBox,
} from '../../../../../core/editing/index.ts';
import { message, type Message } from '../../../../../core/messages/index.ts';
import { t } from '../../../../context/language.ts';
import type { Grip } from './gesture.ts';

export type Guides = readonly (readonly [Point, Point])[];

/** What became of a kitchen under a finger, with the lines that what is held has caught on. */
type Carried = { readonly next: Kitchen; readonly guides: Guides; readonly done: Message };

/** Carries what is held by a way in metres from where it stood when the finger came down: nothing drifts. */
export type Carry = (base: Kitchen, grip: Grip, byM: Point) => Carried;

const STEP_M = 0.05;
const step = (metres: number): number => Math.round(metres / STEP_M) * STEP_M;

/** What a fixture or an opening is called. */
export function nameOf(kitchen: Kitchen, id: string): string {
  const opening = openingOf(kitchen, id);
  return opening ? t(`survey.opening.${opening.kind}`) : (fixtureOf(kitchen, id)?.name ?? id);
}

/** The outline of a fixture by its id, where it is drawn. */
export function fixtureOutline(kitchen: Kitchen, id: string): Polygon | undefined {
  const fixture = fixtureOf(kitchen, id);
  return fixture && outlineOf(fixture);
}

function moved(base: Kitchen, id: string): Message {
  return message('survey.done.moved', { fixture: nameOf(base, id) });
}

function resized(base: Kitchen, id: string): Message {
  return message('survey.done.resized', { fixture: nameOf(base, id) });
}

const still = (base: Kitchen): Carried => ({
  next: base,
  guides: [],
  done: message('survey.done.changed'),
});

function carryFixture(base: Kitchen, id: string, byM: Point): Carried {
  const outline = fixtureOutline(base, id);
  if (!outline) return still(base);
  const [x, y] = lowerLeft(outline);
  const { at, guides } = snapMove(base, id, [x + byM[0], y + byM[1]]);
  return { next: moveFixture(base, id, at), guides, done: moved(base, id) };
}

function carryOpening(base: Kitchen, id: string, byM: Point): Carried {
  const opening = openingOf(base, id);
  const wall = opening && wallOf(roomOutline(base), opening.wall);
  if (!opening || !wall) return still(base);
  const [x, y] = atWall(wall, opening.atM + opening.widthM / 2, 0);
  const next = moveOpening(base, id, [x + byM[0], y + byM[1]]);
  return { next, guides: [], done: moved(base, id) };
}

/** Pulls the left (0) or right side of an opening along its wall. */
function pullOpening(base: Kitchen, id: string, side: number, byM: Point): Carried {
  const opening = openingOf(base, id);
  const wall = opening && wallOf(roomOutline(base), opening.wall);
  if (!wall) return still(base);
  const alongM = step(byM[0] * wall.along[0] + byM[1] * wall.along[1]);
  const next =
    side === 0 ? shiftOpening(base, id, alongM, -alongM) : shiftOpening(base, id, 0, alongM);
  return { next, guides: [], done: resized(base, id) };
}

function carryWall(base: Kitchen, index: number, byM: Point): Carried {
  const wall = wallsOf(roomOutline(base))[index];
  if (!wall) return still(base);
  const outM = -step(byM[0] * wall.inward[0] + byM[1] * wall.inward[1]);
  return {
    next: moveWall(base, wall.edge, outM),
    guides: [],
    done: message('survey.done.walls'),
  };
}

/** From above; with `oneByOne` pulling a corner moves no other. */
export function carryAbove(oneByOne: () => boolean): Carry {
  return (base, grip, byM) => {
    switch (grip.kind) {
      case 'fixture':
        return carryFixture(base, grip.id, byM);
      case 'opening':
        return carryOpening(base, grip.id, byM);
      case 'wall':
        return carryWall(base, grip.wall, byM);
      case 'corner': {
        if (openingOf(base, grip.id)) return pullOpening(base, grip.id, grip.corner, byM);
        const corner = fixtureOutline(base, grip.id)?.[grip.corner];
        if (!corner) return still(base);
        const to: Point = [corner[0] + byM[0], corner[1] + byM[1]];
        const { at, guides } = snapCorner(base, grip.id, grip.corner, to);
        const pull = oneByOne() ? moveCorner : pullCorner;
        return {
          next: pull(base, grip.id, grip.corner, at),
          guides,
          done: resized(base, grip.id),
        };
      }
      default:
        return still(base);
    }
  };
}

/** One box of an elevation by its id. */
export function frontOf(kitchen: Kitchen, edge: Edge, id: string): FrontBox | undefined {
  const seen = elevationOf(kitchen, edge);
  return [...(seen?.fronts ?? []), ...(seen?.openings ?? [])].find((one) => one.id === id);
}

/** Corners of a box from the lower left, as those of an outline. */
function pulledBox(box: FrontBox, corner: number, [dx, dy]: Point) {
  const isLeft = corner === 0 || corner === 3;
  const isLow = corner < 2;
  return {
    atM: isLeft ? Math.min(box.atM + dx, box.atM + box.widthM - STEP_M) : box.atM,
    widthM: Math.max(STEP_M, box.widthM + (isLeft ? -dx : dx)),
    fromM: isLow ? Math.min(box.fromM + dy, box.toM - STEP_M) : box.fromM,
    toM: isLow ? box.toM : box.toM + dy,
  };
}

/** Before one wall: along it and up. */
export function carryFront(edge: Edge): Carry {
  return (base, grip, byM) => {
    if (grip.kind !== 'fixture' && grip.kind !== 'opening' && grip.kind !== 'corner')
      return still(base);
    const box = frontOf(base, edge, grip.id);
    if (!box) return still(base);
    if (grip.kind === 'corner')
      return {
        next: resizeAtWallFront(base, grip.id, pulledBox(box, grip.corner, byM)),
        guides: [],
        done: resized(base, grip.id),
      };
    const next = moveAtWall(base, grip.id, edge, snapAtWall(base, edge, box, byM));
    return { next, guides: [], done: moved(base, grip.id) };
  };
}
