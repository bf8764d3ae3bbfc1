import type { Kitchen } from '../../kitchen/index.ts';
import type { Band } from '../../units/index.ts';
import { outdoorOf, type AtOnce } from '../estimates/index.ts';
import { planContextOf } from './plan-context.ts';

/**
 * How many burners of a kitchen the plan lights together, why, and the air
 * outside that it reckons with.
 * @param startWallMs when the work begins; absent: see outdoorOf
 * @throws OutOfRangeError when a model refuses a number of the kitchen
 */
export function burnersNeedOf(
  kitchen: Kitchen,
  startWallMs?: number,
): AtOnce & { readonly outdoorC: Band } {
  const { room } = planContextOf(
    kitchen,
    undefined,
    startWallMs === undefined ? {} : { startWallMs },
  );
  return { ...room, outdoorC: outdoorOf(kitchen, startWallMs) };
}
