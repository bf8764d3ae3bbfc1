/**
 * What stands hot in still air. The size that goes with it is the diameter of
 * a lying bar or of a disc that faces up, the height of an upright plate.
 */
export type StillShape = 'horizontal-cylinder' | 'disc-up' | 'upright-plate';

export const STILL_SHAPES: readonly StillShape[] = [
  'horizontal-cylinder',
  'disc-up',
  'upright-plate',
];
