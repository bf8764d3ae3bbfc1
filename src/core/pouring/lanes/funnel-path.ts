/**
 * The shortest line through a chain of trapezoids that keeps within half a
 * swath of both their sides (so that it wets the whole chain) and, where
 * there is room, a quarter swath off them (so that the stream does not run
 * along an edge).
 */
import type { Trapezoid } from './slices.ts';
import type { LanePoint } from '../model/types.ts';

/** An upright door that the line passes through. */
type Door = { readonly x: number; readonly lo: number; readonly hi: number };

/** Off the sides where there is room, in swaths. */
const CLEARANCE_SWATHS = 0.25;

/** Half the height of the door in a chain `high` metres deep: none where the chain is a full swath deep. */
function roomM(high: number, swathM: number): number {
  const keepsReach = (swathM - high) / 2;
  const keepsClear = high / 2 - CLEARANCE_SWATHS * swathM;
  return Math.max(0, Math.min(keepsReach, keepsClear));
}

function doorIn(t: Trapezoid, x: number, swathM: number): Door {
  const share = t.x1 > t.x0 ? (x - t.x0) / (t.x1 - t.x0) : 0;
  const lo = t.lo0 + (t.lo1 - t.lo0) * share;
  const hi = t.hi0 + (t.hi1 - t.hi0) * share;
  const middle = (lo + hi) / 2;
  const room = roomM(hi - lo, swathM);
  return { x, lo: middle - room, hi: middle + room };
}

/** Where inside a trapezoid the door's height changes its law. */
function bends(t: Trapezoid, swathM: number): number[] {
  const high0 = t.hi0 - t.lo0;
  const high1 = t.hi1 - t.lo1;
  if (high0 === high1) return [];
  return [2 * CLEARANCE_SWATHS * swathM, (0.5 + CLEARANCE_SWATHS) * swathM]
    .map((high) => (high - high0) / (high1 - high0))
    .filter((share) => share > 1e-6 && share < 1 - 1e-6)
    .toSorted((a, b) => a - b)
    .map((share) => t.x0 + (t.x1 - t.x0) * share);
}

/** Shortest way through doors at growing x, from a place to a place. */
function through(start: LanePoint, doors: readonly Door[], end: LanePoint): LanePoint[] {
  const all: Door[] = doors.filter((d) => d.x > start[0] && d.x < end[0]);
  all.push({ x: end[0], lo: end[1], hi: end[1] });
  const line: LanePoint[] = [start];
  let [ax, ay] = start;
  let loSlope = -Infinity;
  let hiSlope = Infinity;
  let loAt = -1;
  let hiAt = -1;
  const turnAt = (i: number, y: number) => {
    const x = all[i]?.x ?? ax;
    line.push([x, y]);
    [ax, ay] = [x, y];
    [loSlope, hiSlope, loAt, hiAt] = [-Infinity, Infinity, -1, -1];
  };
  for (let i = 0; i < all.length; i += 1) {
    const door = all[i];
    if (!door || door.x <= ax) continue;
    const lo = (door.lo - ay) / (door.x - ax);
    const hi = (door.hi - ay) / (door.x - ax);
    if (lo > hiSlope) {
      const back = hiAt;
      turnAt(back, all[back]?.hi ?? ay);
      i = back;
    } else if (hi < loSlope) {
      const back = loAt;
      turnAt(back, all[back]?.lo ?? ay);
      i = back;
    } else {
      if (lo >= loSlope) [loSlope, loAt] = [lo, i];
      if (hi <= hiSlope) [hiSlope, hiAt] = [hi, i];
    }
  }
  line.push(end);
  return line;
}

function clamped(door: Door, y: number): number {
  return Math.min(door.hi, Math.max(door.lo, y));
}

/**
 * The line from the left end of the chain to its right end.
 * @param cells trapezoids from left to right, each at most `swathM` deep
 * @param middle depth at which the line begins and ends where it may
 */
export function tautLine(cells: readonly Trapezoid[], middle: number, swathM: number): LanePoint[] {
  const line: LanePoint[] = [];
  let doors: Door[] = [];
  let start: LanePoint | undefined;
  let last: Door | undefined;
  for (const t of cells) {
    const first = doorIn(t, t.x0, swathM);
    if (!start) start = [first.x, clamped(first, middle)];
    else if (last) {
      const lo = Math.max(first.lo, last.lo);
      const hi = Math.min(first.hi, last.hi);
      if (lo <= hi) doors.push({ x: t.x0, lo, hi });
      else {
        // An edge steps in: go up to it, then straight along it to the next door.
        const here = last.hi < first.lo ? last.hi : last.lo;
        const there = last.hi < first.lo ? first.lo : first.hi;
        line.push(...through(start, doors, [t.x0, here]));
        start = [t.x0, there];
        doors = [];
      }
    }
    for (const x of bends(t, swathM)) doors.push(doorIn(t, x, swathM));
    last = doorIn(t, t.x1, swathM);
  }
  if (start && last) line.push(...through(start, doors, [last.x, clamped(last, middle)]));
  return line;
}
