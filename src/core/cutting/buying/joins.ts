import { CutsRefusal, type Piece, type Rect } from '../model/types.ts';

/** A piece that may have to be joined from parts. */
export type WantedPiece = Piece & {
  /** Where no join may run: cut-outs of a sink or hob, in the piece's own frame, m. */
  readonly noJoin?: readonly Rect[];
};

export type Joins = {
  /** How far one part lies over the next, m. */
  readonly overlapM: number;
  /** How far a join stays away from a cut-out, m. */
  readonly clearM: number;
};

/** A part of a wanted piece, in the frame of that piece. */
export type Part = Rect & { readonly piece: Piece; readonly of: string };

type Sheet = { readonly widthM: number; readonly lengthM: number };
type Span = readonly [fromM: number, toM: number];

/** Below this two lengths are one, m. */
const SAME_M = 1e-9;

/**
 * Parts of a side, each at most `most` long, one over the next by the overlap;
 * no join lies in a closed span. Each part reaches as far as it may: no other
 * choice needs fewer.
 */
function spansOf(
  sideM: number,
  mostM: number,
  closed: readonly Span[],
  overlapM: number,
): readonly Span[] | undefined {
  const spans: Span[] = [];
  let startM = 0;
  while (sideM - startM > mostM + SAME_M) {
    let endM = startM + mostM;
    // The next part begins an overlap before this one's end: both edges of the join stay clear.
    for (let moved = true; moved;) {
      moved = false;
      for (const [fromM, toM] of closed) {
        if (endM > fromM + SAME_M && endM - overlapM < toM - SAME_M) {
          endM = fromM;
          moved = true;
        }
      }
    }
    if (endM - overlapM <= startM + SAME_M) return undefined;
    spans.push([startM, endM]);
    startM = endM - overlapM;
  }
  return [...spans, [startM, sideM]];
}

function closedSpans(
  { noJoin = [] }: WantedPiece,
  side: 'width' | 'length',
  clearM: number,
): readonly Span[] {
  return noJoin.map(({ xM, yM, widthM, lengthM }) =>
    side === 'width' ? [xM - clearM, xM + widthM + clearM] : [yM - clearM, yM + lengthM + clearM],
  );
}

/** Parts of a piece when its width lies across the roll, or, turned, along it. */
function grid(
  piece: WantedPiece,
  sheet: Sheet,
  turned: boolean,
  { overlapM, clearM }: Joins,
): readonly Rect[] | undefined {
  const mostWidthM = turned ? sheet.lengthM : sheet.widthM;
  const mostLengthM = turned ? sheet.widthM : sheet.lengthM;
  const across = spansOf(piece.widthM, mostWidthM, closedSpans(piece, 'width', clearM), overlapM);
  const along = spansOf(piece.lengthM, mostLengthM, closedSpans(piece, 'length', clearM), overlapM);
  if (!across || !along) return undefined;
  return across.flatMap(([x0, x1]) =>
    along.map(([y0, y1]) => ({ xM: x0, yM: y0, widthM: x1 - x0, lengthM: y1 - y0 })),
  );
}

function partsOf(piece: WantedPiece, rects: readonly Rect[], turns: boolean): readonly Part[] {
  const one = rects.length === 1;
  return rects.map((rect, at) => ({
    ...rect,
    of: piece.id,
    piece: {
      id: one ? piece.id : `${piece.id}/${at + 1}`,
      widthM: rect.widthM,
      lengthM: rect.lengthM,
      turns,
    },
  }));
}

/**
 * A wanted piece in the fewest parts that lie on the roll.
 * @param joins absent: a piece must lie on the roll whole
 * @throws CutsRefusal when it does not, or when every join would run over a cut-out
 */
export function partsFor(
  piece: WantedPiece,
  sheet: Sheet,
  mayTurn: boolean,
  joins: Joins | undefined,
): readonly Part[] {
  const whole: Joins = { overlapM: 0, clearM: 0 };
  const found = (mayTurn ? [false, true] : [false])
    .flatMap((turned) => {
      const rects = grid(piece, sheet, turned, joins ?? whole);
      return rects ? [rects] : [];
    })
    .filter((rects) => joins !== undefined || rects.length === 1)
    .toSorted((a, b) => a.length - b.length);
  const [best] = found;
  if (best) return partsOf(piece, best, mayTurn);
  const { id, widthM, lengthM } = piece;
  const why =
    joins === undefined ? 'in one piece' : 'in parts whose joins keep away from its cut-outs';
  throw new CutsRefusal(
    'too-large',
    'pieces',
    { id, widthM, lengthM },
    `what lies ${why} on ${sheet.widthM} by ${sheet.lengthM} m`,
    joins === undefined ? 'Take a wider roll, or allow joins.' : 'Take a wider roll.',
  );
}
