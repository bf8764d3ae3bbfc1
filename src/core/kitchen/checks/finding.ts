import { problemAt, type KitchenProblem } from '../model/problem.ts';
import { didYouMean } from '../codec/nearest.ts';
import type { Kitchen } from '../model/kitchen.ts';

/** A check over a whole, well-formed kitchen. */
export type Check = (kitchen: Kitchen) => Iterable<KitchenProblem>;

/** A field that names something by its id, though nothing in the file has that id. */
export function missingReference(
  path: string,
  id: string,
  what: string,
  known: readonly string[],
): KitchenProblem {
  const allowed =
    known.length === 0
      ? `the id of a ${what}; this file has none`
      : `the id of a ${what}: ${known.map((name) => `"${name}"`).join(', ')}`;
  const otherwise = known.length === 0 ? `Describe the ${what} first.` : 'Use one of these ids.';
  return problemAt(path, JSON.stringify(id), allowed, didYouMean(id, known, otherwise));
}
