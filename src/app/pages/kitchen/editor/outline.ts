import {
  boundingBox,
  type Kitchen,
  type Point,
  type Polygon,
} from '../../../../core/kitchen/index.ts';
import { moveCorner, moveFixture, resizeFixture } from '../../../../core/editing/index.ts';
import { outlineOf } from '../../../pictures/kitchen-frame.ts';

/** Corners nearer than this are one line, m: half a millimetre. */
const SAME_M = 0.0005;

export function fixtureOutline(kitchen: Kitchen, id: string): Polygon | undefined {
  const fixture = kitchen.fixtures.find((f) => f.id === id);
  return fixture && outlineOf(fixture);
}

/** Lower left corner of the box round an outline. */
export function lowerLeft(outline: Polygon): Point {
  const box = boundingBox(outline);
  return [box.xMinM, box.yMinM];
}

export function sizeOf(outline: Polygon): { readonly lengthM: number; readonly depthM: number } {
  const box = boundingBox(outline);
  return { lengthM: box.xMaxM - box.xMinM, depthM: box.yMaxM - box.yMinM };
}

/** Four corners, each on two sides of the box: what has a length and a depth and nothing else. */
export function isUpright(outline: Polygon): boolean {
  const { xMinM, yMinM, xMaxM, yMaxM } = boundingBox(outline);
  const on = (value: number, ends: readonly number[]) =>
    ends.some((end) => Math.abs(end - value) < SAME_M);
  return (
    outline.length === 4 &&
    outline.every(([x, y]) => on(x, [xMinM, xMaxM]) && on(y, [yMinM, yMaxM]))
  );
}

/** Shortest side a finger can make, m. */
const SHORTEST_SIDE_M = 0.05;

/** Pulls one corner of an upright outline; the corner across from it stays where it is. */
export function pullCorner(kitchen: Kitchen, id: string, corner: number, to: Point): Kitchen {
  const outline = fixtureOutline(kitchen, id);
  const across = outline?.[(corner + 2) % 4];
  if (!outline || !across || !isUpright(outline)) return moveCorner(kitchen, id, corner, to);
  const lengthM = Math.max(SHORTEST_SIDE_M, Math.abs(to[0] - across[0]));
  const depthM = Math.max(SHORTEST_SIDE_M, Math.abs(to[1] - across[1]));
  const at: Point = [
    to[0] < across[0] ? across[0] - lengthM : across[0],
    to[1] < across[1] ? across[1] - depthM : across[1],
  ];
  return moveFixture(resizeFixture(kitchen, id, lengthM, depthM), id, at);
}
