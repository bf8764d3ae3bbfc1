import { boundingBox, middleOf, pointInPolygon } from '../../geometry/index.ts';
import {
  fromWall,
  isSameEdge,
  outlineOf,
  wallOf,
  type Edge,
  type Fixture,
  type Heights,
  type Kitchen,
  type Opening,
  type Wall,
} from '../../kitchen/index.ts';
import { roomOutline } from '../shapes/room.ts';

/** What is seen of one thing by whoever stands before a wall; m from the left end of the wall and from the floor. */
export type FrontBox = {
  readonly id: string;
  readonly atM: number;
  readonly widthM: number;
  readonly fromM: number;
  readonly toM: number;
  /** False: nobody told its heights; these are usual. */
  readonly told: boolean;
  /** How far its front is from the wall: what is nearer to the viewer lies over the rest. */
  readonly frontM: number;
};

export type FrontOf = FrontBox & { readonly fixture: Fixture };
export type OpeningFront = FrontBox & { readonly opening: Opening };

export type Elevation = {
  readonly wall: Wall;
  readonly heightM: number;
  readonly openings: readonly OpeningFront[];
  /** Back to front. */
  readonly fronts: readonly FrontOf[];
};

/** A back farther from the wall than this does not stand at it, m. */
const AT_WALL_M = 0.25;
/** Top of a counter nobody measured, m. Common practice, no published source; so are all heights here. */
const COUNTER_TOP_M = 0.9;
/** A sink or hob is seen this far over its counter: its tap, its grates, m. */
const TAP_M = 0.25;
const HOB_M = 0.04;
/** A sink is seen this far down, m. */
const APRON_M = 0.12;

/** The counter, or cooktop, that a fixture is let into, stands on or is built under. */
function bearerOf(kitchen: Kitchen, fixture: Fixture): Fixture | undefined {
  const outline = outlineOf(fixture);
  if (!outline) return undefined;
  return kitchen.fixtures.find(
    (other) =>
      (other.kind === 'counter' || other.kind === 'table') &&
      other.id !== fixture.id &&
      pointInPolygon(middleOf(outline), other.outline),
  );
}

/** Heights that such a thing usually has in this kitchen, m above the floor. */
export function usualHeights(kitchen: Kitchen, fixture: Fixture): Heights {
  const bearer = bearerOf(kitchen, fixture);
  const topM = bearer?.heights?.toM ?? COUNTER_TOP_M;
  switch (fixture.kind) {
    case 'counter':
      return { fromM: 0, toM: COUNTER_TOP_M };
    case 'table':
      return { fromM: 0, toM: 0.75 };
    case 'sink':
      return { fromM: topM - APRON_M, toM: topM + TAP_M };
    case 'cooktop':
      return { fromM: topM, toM: topM + HOB_M };
    case 'oven':
      return { fromM: 0.1, toM: fixture.sharesRangeWith || bearer ? topM : 0.7 };
    case 'fridge':
    case 'freezer':
      return { fromM: 0, toM: 1.8 };
    case 'microwave':
      return { fromM: topM, toM: topM + 0.3 };
    case 'hood':
      return { fromM: 1.55, toM: 1.95 };
    case 'dishwasher':
      return { fromM: 0.05, toM: topM - 0.04 };
    case 'warming-drawer':
      return { fromM: 0.1, toM: 0.25 };
    case 'drawer':
      return { fromM: 0.6, toM: topM - 0.04 };
    case 'cupboard':
      if (fixture.place === 'over-counter') return { fromM: 1.4, toM: 2.1 };
      return { fromM: 0.1, toM: fixture.place === 'under-counter' ? topM - 0.04 : 2 };
  }
}

/** Whether the heights that are drawn follow from what was told. */
function heightsOf(kitchen: Kitchen, fixture: Fixture): Heights & { readonly told: boolean } {
  if (fixture.heights) return { ...fixture.heights, told: true };
  const onTold = bearerOf(kitchen, fixture)?.heights !== undefined;
  const told = onTold && (fixture.kind === 'sink' || fixture.kind === 'cooktop');
  return { ...usualHeights(kitchen, fixture), told };
}

function frontOf(kitchen: Kitchen, wall: Wall, fixture: Fixture): FrontOf | undefined {
  const heights = heightsOf(kitchen, fixture);
  const place = 'wallPlace' in fixture ? fixture.wallPlace : undefined;
  if (place) {
    if (!isSameEdge(place.wall, wall.edge)) return undefined;
    const { atM, widthM, depthM } = place;
    return { id: fixture.id, fixture, atM, widthM, frontM: depthM, ...heights };
  }
  const outline = outlineOf(fixture);
  if (!outline) return undefined;
  const box = boundingBox(outline.map((corner) => fromWall(wall, corner)));
  const isBeside = box.xMaxM <= 0 || box.xMinM >= wall.lengthM;
  if (box.yMinM > AT_WALL_M || isBeside) return undefined;
  const atM = Math.max(0, box.xMinM);
  const widthM = Math.min(wall.lengthM, box.xMaxM) - atM;
  return { id: fixture.id, fixture, atM, widthM, frontM: box.yMaxM, ...heights };
}

/** Heights of an opening nobody measured, m. */
const USUAL_OPENING: Readonly<Record<Opening['kind'], Heights>> = {
  door: { fromM: 0, toM: 2 },
  passage: { fromM: 0, toM: 2 },
  window: { fromM: 1, toM: 2 },
};

/** What lies in another's place, and is seen before it: a counter's sink, a counter's oven. */
const ORDER: Readonly<Partial<Record<Fixture['kind'], number>>> = { counter: 0, table: 1 };

/** One wall as seen from inside the room; undefined where there is no such wall. */
export function elevationOf(kitchen: Kitchen, edge: Edge): Elevation | undefined {
  const wall = wallOf(roomOutline(kitchen), edge);
  if (!wall) return undefined;
  const openings = (kitchen.room.openings ?? [])
    .filter((opening) => isSameEdge(opening.wall, wall.edge))
    .map((opening): OpeningFront => {
      const { id, atM, widthM } = opening;
      const heights = opening.heights ?? USUAL_OPENING[opening.kind];
      return { id, opening, atM, widthM, ...heights, told: !!opening.heights, frontM: 0 };
    });
  const fronts = kitchen.fixtures
    .flatMap((fixture) => frontOf(kitchen, wall, fixture) ?? [])
    .toSorted(
      (a, b) => (ORDER[a.fixture.kind] ?? 2) - (ORDER[b.fixture.kind] ?? 2) || a.frontM - b.frontM,
    );
  return { wall, heightM: kitchen.room.heightM, openings, fronts };
}
