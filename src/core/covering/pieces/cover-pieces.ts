import type { Rect } from '../../cutting/index.ts';
import { chooseMethod, type CoverMaterial } from '../../custom/index.ts';
import type { Counter, Cupboard, Fixture, Kitchen, Table } from '../../kitchen/index.ts';
import { boundingBox, type Polygon } from '../../geometry/index.ts';
import { asWritten, message, type Message } from '../../messages/index.ts';
import type { Plan } from '../../plan/index.ts';
import type { CoverPiece, CoverPlan } from '../model/types.ts';
import { withAllowances, type Allowances } from './allowances.ts';
import { blocksOf } from './blocks.ts';
import { framed, isRectilinear, wholeBox, type Block, type Framed } from './frame.ts';

/** What covers reach beyond, unless told; common practice, no published source. */
export const USUAL_ALLOWANCES: Allowances = { overhangM: 0.05, wallM: 0.02, overlapM: 0.05 };

/** Nothing is cut for these: they are put in as they are bought. */
const PUT_IN: ReadonlySet<CoverMaterial> = new Set<CoverMaterial>([
  'rack-in-bowls',
  'basin-on-rack',
  'insert',
]);

export type CoverPieces = Pick<CoverPlan, 'unmeasured'> & {
  readonly pieces: readonly CoverPiece[];
};

/** Lengths are told to the millimetre, never short. */
function upToMm(metres: number): number {
  return Math.ceil(metres * 1000 - 1e-6) / 1000;
}

/** The part of a cut-out that lies in a block, in the frame of its piece: x its depth, y its length. */
function cutOutIn(hole: Polygon, block: Block): readonly Rect[] {
  const box = boundingBox(hole);
  const x0 = Math.max(box.xMinM, block.x0);
  const x1 = Math.min(box.xMaxM, block.x1);
  const y0 = Math.max(box.yMinM, block.y0);
  const y1 = Math.min(box.yMaxM, block.y1);
  if (x1 <= x0 || y1 <= y0) return [];
  return [{ xM: y0 - block.y0, yM: x0 - block.x0, widthM: y1 - y0, lengthM: x1 - x0 }];
}

type Told = {
  readonly fixture: Fixture;
  readonly coverWith: CoverMaterial;
};

function nameOf({ name }: Fixture, number: number, count: number): Message {
  return count === 1
    ? asWritten(name)
    : message('covers.piece', { name: asWritten(name), number, count });
}

function surfacePieces(
  { fixture, coverWith }: Told,
  surface: Framed,
  joins: boolean,
  allowances: Allowances,
): readonly CoverPiece[] {
  const straight = isRectilinear(surface.outline);
  const blocks = straight && joins ? blocksOf(surface) : [wholeBox(surface)];
  const trimmed = blocks.length === 1 && surface.outline.length > 4;
  return blocks.map((block, at) => {
    const wide = withAllowances(block, surface, allowances);
    const cutOuts = surface.holes.flatMap((hole) => cutOutIn(hole, wide));
    return {
      id: blocks.length === 1 ? fixture.id : `${fixture.id}-${at + 1}`,
      fixture: fixture.id,
      name: nameOf(fixture, at + 1, blocks.length),
      coverWith,
      widthM: upToMm(wide.y1 - wide.y0),
      lengthM: upToMm(wide.x1 - wide.x0),
      // A print would run along the counter.
      turns: false,
      noJoin: cutOuts,
      cutOuts,
      trimmed,
    };
  });
}

function shelfPieces({ fixture, coverWith }: Told, shelves: Cupboard['shelves']) {
  return shelves.map(({ lengthM, widthM }, at): CoverPiece => ({
    id: shelves.length === 1 ? fixture.id : `${fixture.id}-${at + 1}`,
    fixture: fixture.id,
    name: nameOf(fixture, at + 1, shelves.length),
    coverWith,
    widthM: upToMm(widthM),
    lengthM: upToMm(lengthM),
    turns: false,
    cutOuts: [],
    trimmed: false,
  }));
}

function framedSurface(fixture: Counter | Table): Framed {
  return fixture.kind === 'counter'
    ? framed(fixture.outline, fixture.holes, fixture.backEdges)
    : framed(fixture.outline, [], []);
}

/** Pieces of one fixture; none where nobody told how large it is. */
function piecesOf(told: Told, joins: boolean, allowances: Allowances): readonly CoverPiece[] {
  const { fixture } = told;
  switch (fixture.kind) {
    case 'counter':
    case 'table':
      return surfacePieces(told, framedSurface(fixture), joins, allowances);
    case 'cupboard':
    case 'drawer':
      return shelfPieces(told, fixture.shelves);
    default:
      return [];
  }
}

/**
 * The pieces that cover and line a kitchen as its plan says: counters and
 * tables with overhang and cut-outs, shelves and drawers as they are measured.
 * @param joins a surface that is no rectangle may be covered by several pieces
 */
export function coverPieces(
  kitchen: Kitchen,
  plan: Pick<Plan, 'methods'>,
  joins = true,
  allowances = USUAL_ALLOWANCES,
): CoverPieces {
  const covered = new Set(plan.methods.filter(({ cover }) => cover).map(({ fixture }) => fixture));
  const told = kitchen.fixtures
    .filter(({ id }) => covered.has(id))
    .map((fixture): Told => ({ fixture, coverWith: chooseMethod(fixture, kitchen).coverWith }))
    .filter(({ coverWith }) => !PUT_IN.has(coverWith))
    .map((one) => ({ ...one, pieces: piecesOf(one, joins, allowances) }));
  return {
    pieces: told.flatMap(({ pieces }) => pieces),
    unmeasured: told
      .filter(({ pieces }) => pieces.length === 0)
      .map(({ fixture }) => ({ fixture: fixture.id, name: fixture.name })),
  };
}
