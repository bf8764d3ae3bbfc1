/**
 * The rows of one strip. A row is a chain of trapezoids with a line through
 * it that stays in the surface and at most half a swath from every place of
 * the chain: straight in the middle of the strip where that is possible,
 * drawn aside only where an edge comes in.
 */
import { between, distanceM, distanceToEdgeM } from '../../geometry/index.ts';
import { pathLengthM, withoutIdle } from '../model/plane.ts';
import { sliceStrip, type SideEdge, type Trapezoid } from './slices.ts';
import type { Spans } from '../model/spans.ts';
import { tautLine } from './funnel-path.ts';
import type { LanePoint } from '../model/types.ts';

export type Row = {
  /** Number of the strip, from the back. */
  readonly strip: number;
  readonly cells: readonly Trapezoid[];
  /** From left to right, in the frame. */
  readonly line: readonly LanePoint[];
  /** Where the row meets the strip behind it and the one before it. */
  readonly backSpans: Spans;
  readonly frontSpans: Spans;
};

/** Touching by less than this is not touching, metres. */
const TOUCH_M = 1e-7;
/** A lane is not shortened below this share of a swath. */
const SHORTEST_SWATHS = 0.25;
/** Cutting off less than this is not worth it, metres. */
const LEAST_CUT_M = 1e-3;
/** Only rows shorter than this, in swaths, are tried for leaving out. */
const SPARE_SWATHS = 1.5;

/** Trapezoids that hang together from left to right, one a slab. */
function chains(slabs: readonly (readonly Trapezoid[])[]): Trapezoid[][] {
  const done: Trapezoid[][] = [];
  let open: Trapezoid[][] = [];
  for (const slab of slabs) {
    const free = new Set(slab);
    const next: Trapezoid[][] = [];
    for (const chain of open) {
      const end = chain[chain.length - 1];
      let best: Trapezoid | undefined;
      let bestTouch = TOUCH_M;
      for (const t of free) {
        if (!end || Math.abs(t.x0 - end.x1) > TOUCH_M) continue;
        const touch = Math.min(end.hi1, t.hi0) - Math.max(end.lo1, t.lo0);
        if (touch > bestTouch) [best, bestTouch] = [t, touch];
      }
      if (best) {
        free.delete(best);
        next.push([...chain, best]);
      } else done.push(chain);
    }
    for (const t of free) next.push([t]);
    open = next;
  }
  return [...done, ...open];
}

function corners(t: Trapezoid): readonly LanePoint[] {
  return [
    [t.x0, t.lo0],
    [t.x0, t.hi0],
    [t.x1, t.lo1],
    [t.x1, t.hi1],
  ];
}

/** Cuts the right end of a line back as far as one place at its end still reaches everything beyond. */
function cutBack(
  line: readonly LanePoint[],
  cells: readonly Trapezoid[],
  swathM: number,
  flip: 1 | -1,
): readonly LanePoint[] {
  const end = line[line.length - 1];
  if (!end) return line;
  const reach = swathM / 2;
  const tooFar = (p: LanePoint) =>
    cells.some((t) => {
      const [near, far] = flip === 1 ? [t.x0, t.x1] : [t.x1, t.x0];
      if ((far - p[0]) * flip <= TOUCH_M) return false;
      const whole = (near - p[0]) * flip >= -TOUCH_M;
      return corners(t).some((c) => (whole || c[0] === far) && distanceM(c, p) > reach);
    });
  const roomM = Math.min(reach, pathLengthM(line) - SHORTEST_SWATHS * swathM);
  let kept = line;
  for (let low = 0, high = roomM, i = 0; i < 24 && high > 0; i += 1) {
    const cutM = i === 0 ? high : (low + high) / 2;
    const shorter = shortened(line, cutM);
    const last = shorter[shorter.length - 1];
    if (last && !tooFar(last)) {
      kept = shorter;
      low = cutM;
      if (i === 0) break;
    } else high = cutM;
  }
  return pathLengthM(line) - pathLengthM(kept) < LEAST_CUT_M ? line : kept;
}

function shortened(line: readonly LanePoint[], byM: number): readonly LanePoint[] {
  let left = byM;
  const points = [...line];
  while (points.length > 1) {
    const last = points.pop();
    const before = points[points.length - 1];
    if (!last || !before) break;
    const lengthM = distanceM(before, last);
    if (lengthM > left) {
      points.push(between(before, last, 1 - left / lengthM));
      return points;
    }
    left -= lengthM;
  }
  return line.slice(0, 1);
}

function spansAt(cells: readonly Trapezoid[], at: (t: Trapezoid) => boolean): Spans {
  return cells.filter(at).map((t) => [t.x0, t.x1]);
}

/** Whether one stretch of some other row's line reaches all of a trapezoid; halves it where none does. */
function reached(t: Trapezoid, others: readonly Row[], reachM: number, halvings: number): boolean {
  const ends = corners(t);
  for (const { line } of others) {
    for (let i = 1; i < line.length; i += 1) {
      const [a, b] = [line[i - 1], line[i]];
      if (a && b && ends.every((c) => distanceToEdgeM(c, a, b) <= reachM)) return true;
    }
  }
  if (halvings === 0) return false;
  const lo = (t.lo0 + t.lo1) / 2;
  const hi = (t.hi0 + t.hi1) / 2;
  const x = (t.x0 + t.x1) / 2;
  return (
    reached({ ...t, x1: x, lo1: lo, hi1: hi }, others, reachM, halvings - 1) &&
    reached({ ...t, x0: x, lo0: lo, hi0: hi }, others, reachM, halvings - 1)
  );
}

/** Leaves out short rows whose places, and those of rows left out before, other rows reach anyway. */
function withoutSpare(rows: readonly Row[], swathM: number): readonly Row[] {
  let kept = rows;
  const left: Row[] = [];
  const short = rows
    .map((row) => ({ row, lengthM: pathLengthM(row.line) }))
    .filter(({ lengthM }) => lengthM < SPARE_SWATHS * swathM)
    .toSorted((a, b) => a.lengthM - b.lengthM);
  for (const { row } of short) {
    const others = kept.filter((r) => r !== row);
    const stillReached = (lost: Row) => {
      const near = others.filter((r) => Math.abs(r.strip - lost.strip) <= 1);
      return lost.cells.every((t) => reached(t, near, swathM / 2, 3));
    };
    if (![...left.filter((r) => Math.abs(r.strip - row.strip) <= 2), row].every(stillReached))
      continue;
    left.push(row);
    kept = others;
  }
  return kept;
}

/** All rows of a surface in its frame, strips from back to front. */
export function layRows(
  edges: readonly SideEdge[],
  borders: readonly number[],
  swathM: number,
): readonly Row[] {
  const rows: Row[] = [];
  for (let strip = 0; strip + 1 < borders.length; strip += 1) {
    const from = borders[strip] ?? 0;
    const to = borders[strip + 1] ?? 0;
    for (const cells of chains(sliceStrip(edges, from, to))) {
      const wide = (cells[cells.length - 1]?.x1 ?? 0) - (cells[0]?.x0 ?? 0);
      if (wide < TOUCH_M) continue;
      const whole = withoutIdle(tautLine(cells, (from + to) / 2, swathM));
      const right = cutBack(whole, cells, swathM, 1);
      const line = cutBack(right.toReversed(), cells, swathM, -1).toReversed();
      rows.push({
        strip,
        cells,
        line,
        backSpans: spansAt(cells, (t) => Math.max(t.lo0, t.lo1) - from < TOUCH_M),
        frontSpans: spansAt(cells, (t) => to - Math.min(t.hi0, t.hi1) < TOUCH_M),
      });
    }
  }
  return withoutSpare(rows, swathM);
}
