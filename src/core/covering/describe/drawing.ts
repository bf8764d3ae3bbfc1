import type { Cut, CutLine, Part, Rect } from '../../cutting/index.ts';
import type { Message } from '../../messages/index.ts';
import type { CoverGroup, CoverPiece } from '../model/types.ts';

/** One roll to scale: metres, x across from its left edge, y along from its beginning. */
export type RollDrawing = {
  readonly widthM: number;
  readonly lengthM: number;
  readonly pieces: readonly {
    readonly id: string;
    readonly name: Message;
    /** Which part of a joined piece, from 1; absent: the whole. */
    readonly part?: number;
    readonly at: Rect;
    readonly turned: boolean;
    readonly cutOuts: readonly Rect[];
  }[];
  /** In the order they are made. */
  readonly lines: readonly {
    readonly number: number;
    readonly from: readonly [number, number];
    readonly to: readonly [number, number];
  }[];
};

/** Below this two places on a roll are one, m. */
const SAME_M = 1e-6;

/** The part of a rectangle that lies in a part of a piece, in the part's own frame. */
function within({ xM, yM, widthM, lengthM }: Rect, part: Part): readonly Rect[] {
  const x0 = Math.max(xM, part.xM);
  const x1 = Math.min(xM + widthM, part.xM + part.widthM);
  const y0 = Math.max(yM, part.yM);
  const y1 = Math.min(yM + lengthM, part.yM + part.lengthM);
  if (x1 <= x0 || y1 <= y0) return [];
  return [{ xM: x0 - part.xM, yM: y0 - part.yM, widthM: x1 - x0, lengthM: y1 - y0 }];
}

/** A rectangle of a part where the roll has it. */
function onRoll({ xM, yM, widthM, lengthM }: Rect, cut: Cut): Rect {
  return cut.turned
    ? { xM: cut.xM + yM, yM: cut.yM + xM, widthM: lengthM, lengthM: widthM }
    : { xM: cut.xM + xM, yM: cut.yM + yM, widthM, lengthM };
}

function lineOf({ sheet, direction, atM }: CutLine, at: number): RollDrawing['lines'][number] {
  const { xM, yM, widthM, lengthM } = sheet;
  return direction === 'across'
    ? { number: at + 1, from: [xM, atM], to: [xM + widthM, atM] }
    : { number: at + 1, from: [atM, yM], to: [atM, yM + lengthM] };
}

function pieceOf(
  cut: Cut,
  parts: readonly Part[],
  pieces: ReadonlyMap<string, CoverPiece>,
): RollDrawing['pieces'] {
  const part = parts.find(({ piece }) => piece.id === cut.id);
  const piece = part && pieces.get(part.of);
  if (!part || !piece) return [];
  const siblings = parts.filter(({ of }) => of === part.of);
  return [
    {
      id: cut.id,
      name: piece.name,
      ...(siblings.length > 1 && { part: siblings.indexOf(part) + 1 }),
      at: { xM: cut.xM, yM: cut.yM, widthM: cut.widthM, lengthM: cut.lengthM },
      turned: cut.turned,
      cutOuts: piece.cutOuts
        .flatMap((cutOut) => within(cutOut, part))
        .map((cutOut) => onRoll(cutOut, cut)),
    },
  ];
}

/** The rolls of a group as they are drawn to scale, with the cuts numbered in their order. */
export function rollDrawings({ pieces, purchase }: CoverGroup): readonly RollDrawing[] {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  return purchase.rolls.map(({ rollWidthM, usedLengthM, cuts, lines }) => ({
    widthM: rollWidthM,
    lengthM: usedLengthM,
    pieces: cuts.flatMap((cut) => pieceOf(cut, purchase.parts, byId)),
    lines: lines.map(lineOf),
  }));
}

/** A length of a roll that is drawn by itself; no piece lies on two of them. */
export type Stretch = { readonly fromM: number; readonly toM: number };

/**
 * A long roll in stretches that can be drawn under each other. It is parted only where a cut goes
 * through its whole width, as late as `mostM` lets it.
 * @param mostM longest stretch wanted, m; one that no cut parts may be longer
 */
export function stretches(
  { widthM, lengthM, lines }: RollDrawing,
  mostM: number,
): readonly Stretch[] {
  const through = lines
    .filter(({ from, to }) => from[1] === to[1] && Math.abs(to[0] - from[0]) >= widthM - SAME_M)
    .map(({ from }) => from[1])
    .filter((atM) => atM > SAME_M && atM < lengthM - SAME_M)
    .toSorted((a, b) => a - b);
  const found: Stretch[] = [];
  let fromM = 0;
  while (lengthM - fromM > mostM) {
    const ahead = through.filter((atM) => atM > fromM);
    const toM = ahead.findLast((atM) => atM - fromM <= mostM) ?? ahead[0];
    if (toM === undefined) break;
    found.push({ fromM, toM });
    fromM = toM;
  }
  return [...found, { fromM, toM: lengthM }];
}
