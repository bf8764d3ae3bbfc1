/**
 * The plan view: metres, x to the right and y away from the viewer. A polygon
 * lists its corners once, in either direction; the last joins the first.
 */
export type Point = readonly [xM: number, yM: number];
export type Polygon = readonly Point[];

/** Smallest upright rectangle round some points, metres. */
export type Box = {
  readonly xMinM: number;
  readonly yMinM: number;
  readonly xMaxM: number;
  readonly yMaxM: number;
};
