import type { Band } from '../../units/index.ts';
import type { Batch } from '../model/types.ts';

/** When a batch goes in, s after the pot was put on, and how long it takes; as it usually goes. */
type BatchTime = { readonly startS: number; readonly lengthS: number };

/**
 * When each batch goes in. Each fresh pot of water boils first, and after each dip the water boils
 * again before the next; putting in and taking out is not counted.
 */
export function batchTimes(batches: readonly Batch[], firstBoilS: Band): readonly BatchTime[] {
  let atS = firstBoilS.typical;
  return batches.map(({ freshWater, recoverS, dips }) => {
    const startS = atS + (freshWater ? firstBoilS.typical : 0);
    const lengthS = recoverS.typical * dips;
    atS = startS + lengthS;
    return { startS, lengthS };
  });
}
