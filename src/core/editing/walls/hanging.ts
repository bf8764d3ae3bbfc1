import { boundingBox, lowerLeft, tidy } from '../../geometry/index.ts';
import {
  fixtureOf,
  fromWall,
  LIMITS,
  mayBeUndrawn,
  outlineOf,
  wallOf,
  type Edge,
  type Fixture,
  type Heights,
  type Kitchen,
  type WallPlace,
} from '../../kitchen/index.ts';
import { moveFixture } from '../shapes/move.ts';
import { roomOutline } from '../shapes/room.ts';
import { SNAP_M } from '../shapes/snap.ts';
import { withFixtures } from '../tables/names.ts';
import { elevationOf, usualHeights, type FrontBox } from './elevation.ts';
import { changeOpening, openingOf, WALL_STEP_M } from './openings.ts';
import { tellWalls, withinWall } from './walls.ts';

/** A box on a wall: m from its left end and from the floor. */
export type WallBox = {
  readonly atM: number;
  readonly widthM: number;
  readonly fromM: number;
  readonly toM: number;
};

/** Depth from the wall of what is hung there first, m. Common practice, no published source. */
const HANGS_DEEP_M = 0.35;
const STANDS_DEEP_M = 0.6;
/** Width of what has no shelves to tell it, m. */
const USUAL_WIDTH_M = 0.6;
/** Least side of a box, m. */
const LEAST_M = 0.05;

type Placed = Extract<Fixture, { wallPlace?: WallPlace }>;

/** Kinds that can hang on a wall, or be built in where the plan view leaves them out. */
export function canHang(fixture: Fixture): fixture is Placed {
  return mayBeUndrawn(fixture.kind);
}

const BELOW: readonly Fixture['kind'][] = ['drawer', 'dishwasher', 'warming-drawer'];

/** Where a hood belongs: over the middle of the first cooktop at the wall, m from its left end. */
function overCooktopM(kitchen: Kitchen, edge: Edge, widthM: number): number | undefined {
  const wall = wallOf(roomOutline(kitchen), edge);
  for (const fixture of kitchen.fixtures) {
    if (fixture.kind !== 'cooktop' || !wall) continue;
    const box = boundingBox(fixture.outline.map((corner) => fromWall(wall, corner)));
    if (box.yMinM < HANGS_DEEP_M) return (box.xMinM + box.xMaxM - widthM) / 2;
  }
  return undefined;
}

/** Hangs or builds in, at a wall, what is not drawn; the walls are told from then on. */
export function hangFixture(kitchen: Kitchen, id: string, edge: Edge): Kitchen {
  const told = tellWalls(kitchen);
  const fixture = fixtureOf(told, id);
  if (!fixture || !canHang(fixture)) return kitchen;
  const widthM =
    'shelves' in fixture && fixture.shelves[0] ? fixture.shelves[0].lengthM : USUAL_WIDTH_M;
  const isLow =
    BELOW.includes(fixture.kind) || ('place' in fixture && fixture.place === 'under-counter');
  const atM = (fixture.kind === 'hood' && overCooktopM(told, edge, widthM)) || 0;
  const wallPlace = withinWall(roomOutline(told), {
    wall: edge,
    atM: tidy(atM),
    widthM,
    depthM: isLow ? STANDS_DEEP_M : HANGS_DEEP_M,
  });
  return withFixtures(told, [{ ...fixture, wallPlace }]);
}

function step(metres: number): number {
  return tidy(Math.round(metres / WALL_STEP_M) * WALL_STEP_M);
}

/** Heights within the room that keep their distance. */
function raised(kitchen: Kitchen, { fromM, toM }: Heights, byM: number): Heights {
  const highM = Math.min(kitchen.room.heightM, LIMITS.aboveFloorM.most) - (toM - fromM);
  const next = Math.max(0, Math.min(highM, fromM + byM));
  return { fromM: tidy(next), toM: tidy(next + toM - fromM) };
}

/**
 * Moves what is seen at a wall along it and up, m: a hanging thing or an
 * opening goes both ways, what stands in the plan view only along.
 */
export function moveAtWall(
  kitchen: Kitchen,
  id: string,
  edge: Edge,
  [alongM, upM]: readonly [number, number],
): Kitchen {
  const outline = roomOutline(kitchen);
  const wall = wallOf(outline, edge);
  const opening = openingOf(kitchen, id);
  if (opening) {
    const { atM, heights } = opening;
    const up = heights && opening.kind === 'window' && upM !== 0;
    const moved = withinWall(outline, { ...opening, atM: atM + alongM });
    return changeOpening(kitchen, id, {
      atM: moved.atM,
      ...(up && { heights: raised(kitchen, heights, upM) }),
    });
  }
  const fixture = fixtureOf(kitchen, id);
  if (!fixture || !wall) return kitchen;
  if (canHang(fixture) && fixture.wallPlace) {
    const { wallPlace } = fixture;
    const heights = fixture.heights ?? usualHeights(kitchen, fixture);
    const next = {
      ...fixture,
      wallPlace: withinWall(outline, { ...wallPlace, atM: wallPlace.atM + alongM }),
      ...(upM !== 0 && { heights: raised(kitchen, heights, upM) }),
    };
    return withFixtures(kitchen, [next]);
  }
  const drawn = outlineOf(fixture);
  if (!drawn || alongM === 0) return kitchen;
  const [x, y] = lowerLeft(drawn);
  const to = [x + wall.along[0] * alongM, y + wall.along[1] * alongM] as const;
  return moveFixture(kitchen, id, to);
}

/** The nearest of some marks to any side of a box that is moved, as what is still missing, m. */
function toMarks(sides: readonly number[], marks: readonly number[]): number | undefined {
  const ways = marks.flatMap((mark) => sides.map((side) => mark - side));
  const [nearest] = ways.toSorted((a, b) => Math.abs(a) - Math.abs(b));
  return nearest !== undefined && Math.abs(nearest) <= SNAP_M ? nearest : undefined;
}

/**
 * Where what is dragged before a wall comes to rest, as a way from where it is:
 * in line with what else is seen there, else on 5 cm.
 */
export function snapAtWall(
  kitchen: Kitchen,
  edge: Edge,
  box: FrontBox,
  [alongM, upM]: readonly [number, number],
): readonly [number, number] {
  const seen = elevationOf(kitchen, edge);
  const others = [...(seen?.fronts ?? []), ...(seen?.openings ?? [])].filter(
    ({ id }) => id !== box.id,
  );
  const snapped = (wayM: number, sides: readonly number[], marks: readonly number[]) => {
    const moved = sides.map((side) => side + wayM);
    const off = toMarks(moved, marks);
    return tidy(off === undefined ? step(moved[0] ?? 0) - (sides[0] ?? 0) : wayM + off);
  };
  const ends = others.flatMap(({ atM, widthM }) => [atM, atM + widthM]);
  const levels = others.flatMap(({ fromM, toM }) => [fromM, toM]);
  return [
    snapped(alongM, [box.atM, box.atM + box.widthM], [0, seen?.wall.lengthM ?? 0, ...ends]),
    snapped(upM, [box.fromM, box.toM], [0, ...levels]),
  ];
}

/** Gives a hanging thing or an opening another box on its wall; least side 5 cm. */
export function resizeAtWallFront(kitchen: Kitchen, id: string, box: WallBox): Kitchen {
  const outline = roomOutline(kitchen);
  const place = {
    atM: step(box.atM),
    widthM: Math.max(LIMITS.openingWidthM.least, step(box.widthM)),
  };
  const fromM = Math.max(0, step(box.fromM));
  const heights = { fromM, toM: Math.max(fromM + LEAST_M, step(box.toM)) };
  const opening = openingOf(kitchen, id);
  if (opening)
    return changeOpening(kitchen, id, {
      ...withinWall(outline, { ...opening, ...place }),
      heights,
    });
  const fixture = fixtureOf(kitchen, id);
  if (!fixture || !canHang(fixture) || !fixture.wallPlace) return kitchen;
  const wallPlace = withinWall(outline, { ...fixture.wallPlace, ...place });
  return withFixtures(kitchen, [{ ...fixture, wallPlace, heights }]);
}
