import type { Heights, Opening, WallPlace } from '../model/kitchen.ts';
import { LIMITS } from '../model/limits.ts';
import { edgeCodec, idCodec } from './common-codecs.ts';
import { named } from './codec.ts';
import { may, must, object } from './object.ts';
import { choice, number } from './primitives.ts';

/** What is told of walls, and of what hangs on them: it only draws. */
export const heightsCodec = named(
  'heights',
  object<Heights>({
    fromM: must(number(LIMITS.aboveFloorM)),
    toM: must(number(LIMITS.aboveFloorM)),
  }),
);

export const wallPlaceCodec = named(
  'wallPlace',
  object<WallPlace>({
    wall: must(edgeCodec),
    atM: must(number(LIMITS.alongWallM)),
    widthM: must(number(LIMITS.openingWidthM)),
    depthM: must(number(LIMITS.wallPlaceDepthM)),
  }),
);

export const openingCodec = named(
  'opening',
  object<Opening>({
    id: must(idCodec),
    kind: must(choice(['door', 'window', 'passage'])),
    wall: must(edgeCodec),
    atM: must(number(LIMITS.alongWallM)),
    widthM: must(number(LIMITS.openingWidthM)),
    heights: may(heightsCodec),
    hinge: may(choice(['left', 'right'])),
    swing: may(choice(['in', 'out'])),
  }),
);
