import { sideName, type Polygon } from '../../../../../core/geometry/index.ts';
import { isSameEdge, type Edge } from '../../../../../core/kitchen/index.ts';
import { message, type Message } from '../../../../../core/messages/index.ts';

/** From where the kitchen is looked at: from above, or one wall by its number. */
export type Face = 'above' | number;

/** The edge of a wall by its number. */
export function edgeOf(outline: Polygon, wall: number): Edge {
  return [wall, (wall + 1) % outline.length];
}

/** "Far wall"; "far wall 2" where several look that way. */
export function wallName(outline: Polygon, edge: Edge): Message {
  const sides = outline.map((_, i) => sideName(outline, i));
  const index = Math.max(
    0,
    outline.findIndex((_, i) => isSameEdge(edgeOf(outline, i), edge)),
  );
  const side = sides[index] ?? 'far';
  const alike = sides.flatMap((one, i) => (one === side ? [i] : []));
  const wall = message(`survey.face.${side}`);
  return alike.length === 1
    ? wall
    : message('survey.face.numbered', { wall, number: alike.indexOf(index) + 1 });
}
