import { boundingBox, edgesOf, type Point, type Polygon } from '../../geometry/index.ts';

/** A surface turned so that its longest edge lies along x. */
export type Framed = {
  readonly outline: Polygon;
  readonly holes: readonly Polygon[];
  /** Edges at walls, by the number of their first corner. */
  readonly walls: ReadonlySet<number>;
};

/** Corners nearer than this stand on one line, m: what a tape measure gives. */
export const SAME_LINE_M = 0.005;

function turned([x, y]: Point, angle: number): Point {
  return [x * Math.cos(angle) + y * Math.sin(angle), y * Math.cos(angle) - x * Math.sin(angle)];
}

/**
 * Turns a surface so that its longest edge lies along x.
 * @param backEdges corner numbers of the edges that stand at a wall
 */
export function framed(
  outline: Polygon,
  holes: readonly Polygon[],
  backEdges: readonly (readonly [number, number])[],
): Framed {
  const lengths = edgesOf(outline).map(([[x0, y0], [x1, y1]]) => ({
    lengthM: Math.hypot(x1 - x0, y1 - y0),
    angle: Math.atan2(y1 - y0, x1 - x0),
  }));
  const longest = lengths.reduce((a, b) => (b.lengthM > a.lengthM ? b : a));
  const turn = (polygon: Polygon): Polygon => polygon.map((point) => turned(point, longest.angle));
  const count = outline.length;
  return {
    outline: turn(outline),
    holes: holes.map(turn),
    // An edge may be told in either direction.
    walls: new Set(backEdges.map(([a, b]) => ((a + 1) % count === b ? a : b))),
  };
}

/** Whether every edge runs along x or y. */
export function isRectilinear(outline: Polygon): boolean {
  return edgesOf(outline).every(
    ([[x0, y0], [x1, y1]]) => Math.abs(x1 - x0) <= SAME_LINE_M || Math.abs(y1 - y0) <= SAME_LINE_M,
  );
}

/** The box of a whole surface. */
export function wholeBox({ outline }: Framed): Block {
  const { xMinM, yMinM, xMaxM, yMaxM } = boundingBox(outline);
  return { x0: xMinM, y0: yMinM, x1: xMaxM, y1: yMaxM };
}

/** A rectangle of a framed surface, m. */
export type Block = {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
};
