import { distanceM, signedAreaM2, type Point, type Polygon } from '../../geometry/index.ts';
import type { Edge } from '../model/kitchen.ts';

/** A wall as one stands before it in the room. */
export type Wall = {
  readonly edge: Edge;
  readonly left: Point;
  readonly right: Point;
  readonly lengthM: number;
  /** Of length 1, from left to right. */
  readonly along: Point;
  /** Of length 1, into the room. */
  readonly inward: Point;
};

/** The wall between two neighbouring corners of an outline; undefined where there is no such corner. */
export function wallOf(outline: Polygon, [from, to]: Edge): Wall | undefined {
  const isNext = (from + 1) % outline.length === to;
  const a = outline[isNext ? from : to];
  const b = outline[isNext ? to : from];
  if (!a || !b) return undefined;
  // Walking counter-clockwise the room is on the left, so whoever faces the wall sees its end first.
  const [left, right] = signedAreaM2(outline) > 0 ? [b, a] : [a, b];
  const lengthM = distanceM(left, right);
  const along: Point = [(right[0] - left[0]) / lengthM, (right[1] - left[1]) / lengthM];
  return { edge: [from, to], left, right, lengthM, along, inward: [along[1], -along[0]] };
}

/** All walls of an outline, in the order of its corners. */
export function wallsOf(outline: Polygon): readonly Wall[] {
  return outline.flatMap((_, i) => wallOf(outline, [i, (i + 1) % outline.length]) ?? []);
}

/** A point of the plan view: so far along a wall from its left end, so far into the room, m. */
export function atWall({ left, along, inward }: Wall, alongM: number, inM: number): Point {
  return [
    left[0] + along[0] * alongM + inward[0] * inM,
    left[1] + along[1] * alongM + inward[1] * inM,
  ];
}

/** How far a point is along a wall from its left end, and into the room, m. */
export function fromWall({ left, along, inward }: Wall, [x, y]: Point): readonly [number, number] {
  const [dx, dy] = [x - left[0], y - left[1]];
  return [dx * along[0] + dy * along[1], dx * inward[0] + dy * inward[1]];
}

/** Whether two pairs of corner numbers name the same edge. */
export function isSameEdge([a, b]: Edge, [c, d]: Edge): boolean {
  return (a === c && b === d) || (a === d && b === c);
}
