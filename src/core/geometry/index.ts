export type { Box, Point, Polygon } from './types.ts';
export { boundingBox, boxCorners, isUpright, lowerLeft, middleOf, sizeOf } from './box.ts';
export {
  crossingEdges,
  repeatedCorner,
  liesInside,
  overlap,
  SAME_PLACE_M,
  spikeCorner,
} from './contact.ts';
export { gapM } from './gap.ts';
export {
  quarterTurnAbout,
  rectangle,
  shiftBy,
  stretchOf,
  tidy,
  tidyPoint,
  type Motion,
} from './motion.ts';
export {
  areaM2,
  boxMeets,
  edgesOf,
  insidePoint,
  insideRings,
  netAreaM2,
  perimeterM,
  pointInPolygon,
  sideName,
  signedAreaM2,
  type SideName,
} from './polygon.ts';
export { between, distanceM, distanceToEdgeM, nearestShare } from './segment.ts';
