import type { Cut, CutLine, Rect } from '../model/types.ts';
import { metresOf, unitsOf } from './lengths.ts';

/** A rectangle in micrometres; `cut` names the piece it is, if it is one. */
type Box = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly length: number;
};
type PieceBox = Box & { readonly cut: Cut };

function boxOf({ xM, yM, widthM, lengthM }: Rect): Box {
  return { x: unitsOf(xM), y: unitsOf(yM), width: unitsOf(widthM), length: unitsOf(lengthM) };
}

function rectOf({ x, y, width, length }: Box): Rect {
  return {
    xM: metresOf(x),
    yM: metresOf(y),
    widthM: metresOf(width),
    lengthM: metresOf(length),
  };
}

/** The first place where a straight cut through the sheet meets no piece; none when it would be its edge. */
function freePlace(
  from: number,
  to: number,
  spans: readonly (readonly [number, number])[],
): number | undefined {
  const places = spans.flat().filter((at) => at > from && at < to);
  return places
    .toSorted((a, b) => a - b)
    .find((at) => spans.every(([start, end]) => at <= start || at >= end));
}

function lineThrough(
  sheet: Box,
  pieces: readonly PieceBox[],
): { readonly direction: CutLine['direction']; readonly at: number } | undefined {
  const across = freePlace(
    sheet.y,
    sheet.y + sheet.length,
    pieces.map(({ y, length }) => [y, y + length] as const),
  );
  if (across !== undefined) return { direction: 'across', at: across };
  const along = freePlace(
    sheet.x,
    sheet.x + sheet.width,
    pieces.map(({ x, width }) => [x, x + width] as const),
  );
  return along === undefined ? undefined : { direction: 'along', at: along };
}

function halves(sheet: Box, direction: CutLine['direction'], at: number): readonly [Box, Box] {
  return direction === 'across'
    ? [
        { ...sheet, length: at - sheet.y },
        { ...sheet, y: at, length: sheet.y + sheet.length - at },
      ]
    : [
        { ...sheet, width: at - sheet.x },
        { ...sheet, x: at, width: sheet.x + sheet.width - at },
      ];
}

function lies({ x, y }: Box, sheet: Box): boolean {
  return x >= sheet.x && x < sheet.x + sheet.width && y >= sheet.y && y < sheet.y + sheet.length;
}

export type Cutting = { readonly lines: readonly CutLine[]; readonly freed: readonly Cut[] };

/**
 * Straight cuts, each through all of the sheet it divides, that free the
 * pieces from a sheet; across the roll first, from its beginning on.
 * @returns undefined when no such cuts exist
 */
export function cutLines(sheet: Rect, cuts: readonly Cut[]): Cutting | undefined {
  const lines: CutLine[] = [];
  const freed: Cut[] = [];
  // Each sheet waits with its pieces; the first half of a cut comes before the second.
  const waiting: { readonly sheet: Box; readonly pieces: readonly PieceBox[] }[] = [
    { sheet: boxOf(sheet), pieces: cuts.map((cut) => ({ ...boxOf(cut), cut })) },
  ];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const { sheet: one, pieces } = next;
    const [only] = pieces;
    if (!only) continue;
    const whole = pieces.length === 1 && only.width === one.width && only.length === one.length;
    if (whole) {
      freed.push(only.cut);
      continue;
    }
    const line = lineThrough(one, pieces);
    if (!line) return undefined;
    lines.push({ sheet: rectOf(one), direction: line.direction, atM: metresOf(line.at) });
    const [first, second] = halves(one, line.direction, line.at);
    const inFirst = pieces.filter((piece) => lies(piece, first));
    const inSecond = pieces.filter((piece) => !lies(piece, first));
    waiting.push({ sheet: second, pieces: inSecond }, { sheet: first, pieces: inFirst });
  }
  return { lines, freed };
}
