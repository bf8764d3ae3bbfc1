import {
  boundingBox,
  boxCorners,
  tidyPoint,
  type Box,
  type Polygon,
} from '../../geometry/index.ts';
import { outlineOf, type Kitchen } from '../../kitchen/index.ts';
import { ROOM_RATIO } from '../tables/usual.ts';

/** Things drawn this little outside the room are inside it, metres. */
const SLACK_M = 0.05;

/**
 * The box round the walls as far as anybody knows: as told, or a rectangle of
 * the told floor area, 4 to 3, its lower-left corner at the origin; when the drawn fixtures do not fit in
 * it, one that begins at their left and ends at their far side and holds them.
 * @param except a fixture that is not looked at (one that is being moved)
 */
export function roomBox(kitchen: Kitchen, except: ReadonlySet<string> = new Set()): Box {
  if (kitchen.room.outline) return boundingBox(kitchen.room.outline);
  const lengthM = Math.sqrt(kitchen.room.floorAreaM2 * ROOM_RATIO);
  const depthM = lengthM / ROOM_RATIO;
  const room: Box = { xMinM: 0, yMinM: 0, xMaxM: lengthM, yMaxM: depthM };
  const corners = kitchen.fixtures
    .filter(({ id }) => !except.has(id))
    .flatMap((fixture) => outlineOf(fixture) ?? []);
  if (corners.length === 0) return room;
  const drawn = boundingBox(corners);
  const holds =
    drawn.xMinM >= -SLACK_M &&
    drawn.yMinM >= -SLACK_M &&
    drawn.xMaxM <= lengthM + SLACK_M &&
    drawn.yMaxM <= depthM + SLACK_M;
  if (holds) return room;
  return {
    xMinM: drawn.xMinM,
    xMaxM: Math.max(drawn.xMaxM, drawn.xMinM + lengthM),
    yMaxM: drawn.yMaxM,
    yMinM: Math.min(drawn.yMinM, drawn.yMaxM - depthM),
  };
}

/** The walls as told, or as far as anybody knows. */
export function roomOutline(kitchen: Kitchen): Polygon {
  return kitchen.room.outline ?? boxCorners(roomBox(kitchen)).map(tidyPoint);
}
