/**
 * Rows that follow each other with nothing beside them form a block, poured
 * from back to front to and fro. Within a block the way each row runs is
 * chosen so that the links are shortest, for either way of beginning and ending.
 */
import type { Frame } from './frame.ts';
import { outOfFrame } from './frame.ts';
import type { Linker } from './link.ts';
import type { Row } from './rows.ts';
import { bothSpans, spansLength } from '../model/spans.ts';
import type { LanePoint } from '../model/types.ts';

/** 0: from left to right, 1: from right to left. */
type Way = 0 | 1;
const WAYS: readonly Way[] = [0, 1];

type Line = readonly LanePoint[];

/** One way of pouring a block: the lines of its rows, each turned the way it runs. */
export type Pour = {
  readonly leg: number;
  readonly lines: readonly Line[];
  readonly linksM: number;
  readonly start: LanePoint;
  readonly end: LanePoint;
};

export type Block = {
  readonly leg: number;
  /** Blocks behind this one, poured before it. */
  readonly after: readonly number[];
  /** By the way of the first row. */
  readonly pours: readonly Pour[];
};

/** Rows that meet by less than this are not neighbours, metres. */
const MEETS_M = 1e-4;

/** For each row the rows of the next strip that it meets. */
function nextRows(rows: readonly Row[]): readonly number[][] {
  const byStrip = new Map<number, number[]>();
  rows.forEach((row, i) => byStrip.set(row.strip, [...(byStrip.get(row.strip) ?? []), i]));
  return rows.map((row) =>
    (byStrip.get(row.strip + 1) ?? []).filter((j) => {
      const meets = bothSpans(row.frontSpans, rows[j]?.backSpans ?? []);
      return spansLength(meets) > MEETS_M;
    }),
  );
}

/** Row numbers of each block, and which blocks lie behind which. */
function groups(rows: readonly Row[]): { members: number[][]; after: Set<number>[] } {
  const next = nextRows(rows);
  const before = rows.map((): number[] => []);
  next.forEach((list, i) => list.forEach((j) => before[j]?.push(i)));
  const members: number[][] = [];
  const blockOf = new Map<number, number>();
  rows.forEach((_, i) => {
    const behind = before[i] ?? [];
    const [only] = behind;
    const joins = behind.length === 1 && only !== undefined && next[only]?.length === 1;
    const block = joins ? blockOf.get(only) : undefined;
    if (block === undefined) members.push([i]);
    else members[block]?.push(i);
    blockOf.set(i, block ?? members.length - 1);
  });
  const after = members.map((list, block) => {
    const behind = list.flatMap((i) => before[i] ?? []).map((i) => blockOf.get(i) ?? block);
    return new Set(behind.filter((b) => b !== block));
  });
  return { members, after };
}

function ends(line: Line): readonly [LanePoint, LanePoint] {
  const start = line[0] ?? [0, 0];
  return [start, line[line.length - 1] ?? start];
}

/** Best pours of the lines in order, one for each way of the first row and way of the last. */
function pours(lines: readonly Line[], leg: number, link: Linker): Pour[] {
  const turnedLines = lines.map((line): readonly [Line, Line] => [line, line.toReversed()]);
  return WAYS.flatMap((first) => {
    let states: (Pour | undefined)[] = WAYS.map((way) => {
      const line = turnedLines[0]?.[way] ?? [];
      const [start, end] = ends(line);
      return way === first ? { leg, lines: [line], linksM: 0, start, end } : undefined;
    });
    for (const both of turnedLines.slice(1)) {
      const before = states;
      states = WAYS.map((way) => {
        const line = both[way];
        const [start, end] = ends(line);
        let best: Pour | undefined;
        for (const state of before) {
          if (!state) continue;
          const linksM = state.linksM + link(state.end, start).costM;
          if (best && best.linksM <= linksM) continue;
          best = { leg, lines: [...state.lines, line], linksM, start: state.start, end };
        }
        return best;
      });
    }
    return states.filter((state) => state !== undefined);
  });
}

/** Blocks of one leg by its number; numbers in `after` count from `firstNumber`. */
export function blocksOf(
  rows: readonly Row[],
  frame: Frame,
  leg: number,
  link: Linker,
  firstNumber: number,
): readonly Block[] {
  const { members, after } = groups(rows);
  return members.map((list, i) => {
    const lines = list.map((r) => (rows[r]?.line ?? []).map((p) => outOfFrame(frame, p)));
    return {
      leg,
      after: [...(after[i] ?? [])].map((b) => b + firstNumber),
      pours: pours(lines, leg, link),
    };
  });
}
