import methods from '../../../shared/customs/methods.json';
import type { MethodId } from '../../../src/core/kitchen/index.ts';

/** What is done about a fixture, as far as one way is stricter than another. `minutes`: min. */
export type Way = {
  readonly method: MethodId;
  readonly cover: boolean;
  readonly minutes?: number;
};

const RANK: ReadonlyMap<string, number> = new Map(
  methods.strictness.map(({ method, rank }) => [method, rank]),
);

/** Out of use above covered, covered above purged: each step relies on less. */
function level({ method, cover }: Way): number {
  if (method === 'not-purged') return 2;
  return cover || method === 'cover' || method === 'line' ? 1 : 0;
}

/**
 * Below 0 when `a` is less strict than `b`, above 0 when it is stricter, 0 when
 * neither. Under a cover it does not matter what was done before: food touches
 * the cover. Ranks and reasons: shared/customs/methods.json.
 */
export function compareStrictness(a: Way, b: Way): number {
  const byLevel = level(a) - level(b);
  if (byLevel !== 0 || level(a) > 0) return byLevel;
  const byRank = (RANK.get(a.method) ?? 0) - (RANK.get(b.method) ?? 0);
  if (byRank !== 0) return byRank;
  return (a.minutes ?? 0) - (b.minutes ?? 0);
}
