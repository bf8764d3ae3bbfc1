import { band } from '../../units/index.ts';
import type { PourHand } from './pour-types.ts';

/**
 * How a person pours until the first kettles have taught their own stream: from
 * a household kettle, low and slowly; and what splashes, drips and stays in the
 * kettle. Common practice, no published source. How quick the hand is follows
 * from what the water is to do: reachedSpeed, heatedSpeed.
 */
export const ORDINARY_HAND: PourHand = {
  flowLMin: band(1.5, 2, 2.5),
  overlapShare: 0.15,
  lossShare: 0.08,
};
