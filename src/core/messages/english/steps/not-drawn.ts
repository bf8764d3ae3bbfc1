import type { Section } from '../../model/message.ts';

/** Why the lanes of a pour cannot be drawn: seldom, and so not among the first sentences of a run. */
export const notDrawn = {
  'steps.pour.not-drawn.too-few-points': 'its outline has too few corners',
  'steps.pour.not-drawn.not-a-number': 'a corner of its outline is no place',
  'steps.pour.not-drawn.too-large': 'it is larger than a room',
  'steps.pour.not-drawn.too-many-points': 'its outline has too many corners',
  'steps.pour.not-drawn.too-fine': 'it is too long for lanes so narrow',
  'steps.pour.not-drawn.no-area': 'its outline encloses nothing',
  'steps.pour.not-drawn.all-cut-away': 'its cut-outs leave nothing of it',
  'steps.pour.not-drawn.no-such-edge': 'a back edge is none of its edges',
  'steps.pour.not-drawn.swath-out-of-range': 'the stream is too narrow or too wide for it',
  'steps.pour.not-drawn.volume-out-of-range': 'it takes too little water, or too many kettles',
  'steps.pour.not-drawn.speed-out-of-range': 'the hand would be too slow or too fast',
  'steps.pour.not-drawn.size-out-of-range': 'a bowl is of no usual size',
  'steps.pour.not-drawn.place-out-of-range': 'a place on it lies outside',
  'steps.pour.not-drawn.arm-out-of-range': 'the arm told is too short or too long',
  'steps.pour.not-drawn.nowhere-to-stand': 'no side of it is free to stand at',
} satisfies Section;
