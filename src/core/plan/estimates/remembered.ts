/** More than this many results are not kept: then all are let go. */
const MOST_KEPT = 200;

/**
 * The same function, each result reckoned once: a kitchen is planned again at
 * every change, and most of what physics says of it stays the same.
 */
export function remembered<In extends readonly unknown[], Out>(
  reckon: (...given: In) => Out,
): (...given: In) => Out {
  const kept = new Map<string, Out>();
  return (...given) => {
    const key = JSON.stringify(given);
    const known = kept.get(key);
    if (known !== undefined) return known;
    if (kept.size >= MOST_KEPT) kept.clear();
    const result = reckon(...given);
    kept.set(key, result);
    return result;
  };
}
