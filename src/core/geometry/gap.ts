import { overlap } from './contact.ts';
import { edgesOf } from './polygon.ts';
import { distanceToEdgeM } from './segment.ts';
import type { Polygon } from './types.ts';

/** Shortest way from one outline to another, metres; 0 where they overlap or touch, or one holds the other. */
export function gapM(one: Polygon, other: Polygon): number {
  if (overlap(one, other)) return 0;
  const toEdges = (corners: Polygon, outline: Polygon): number =>
    Math.min(
      ...corners.flatMap((corner) =>
        edgesOf(outline).map(([a, b]) => distanceToEdgeM(corner, a, b)),
      ),
    );
  return Math.min(toEdges(one, other), toEdges(other, one));
}
