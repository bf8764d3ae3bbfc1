/** More than this many results are not kept: then the one that was reckoned first is let go. */
const MOST_KEPT = 400;

/**
 * The same function, each result reckoned once: a kitchen is planned again at
 * every change, and most of what physics says of it stays the same. What is
 * given must be plain data and finite; what throws is reckoned again.
 */
export function remembered<In extends readonly unknown[], Out>(
  reckon: (...given: In) => Out,
): (...given: In) => Out {
  const kept = new Map<string, Out>();
  return (...given) => {
    const key = JSON.stringify(given);
    const known = kept.get(key);
    if (known !== undefined) return known;
    const result = reckon(...given);
    const [oldest] = kept.keys();
    if (oldest !== undefined && kept.size >= MOST_KEPT) kept.delete(oldest);
    kept.set(key, result);
    return result;
  };
}
