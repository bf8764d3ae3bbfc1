/** Two rows side by side: what stands in both, or in one alone. */
export type Pair<T> = { readonly before?: T; readonly after?: T };

/** Lengths of the longest common rows of what is left from (i, j) on, row by row. */
function commonLengths(a: readonly string[], b: readonly string[]): readonly Uint16Array[] {
  const rows = Array.from({ length: a.length + 1 }, () => new Uint16Array(b.length + 1));
  for (let i = a.length - 1; i >= 0; i -= 1) {
    const row = rows[i] as Uint16Array;
    const below = rows[i + 1] as Uint16Array;
    for (let j = b.length - 1; j >= 0; j -= 1)
      row[j] = a[i] === b[j] ? (below[j + 1] ?? 0) + 1 : Math.max(below[j] ?? 0, row[j + 1] ?? 0);
  }
  return rows;
}

/**
 * Rows set side by side so that as many as can be are the same by `key`
 * (longest common subsequence). What is left between two common ones is paired
 * in its order when `pairs`, so that a changed line stands beside what it was.
 */
export function align<T>(
  before: readonly T[],
  after: readonly T[],
  key: (one: T) => string,
  pairs: boolean,
): readonly Pair<T>[] {
  const a = before.map(key);
  const b = after.map(key);
  let head = 0;
  while (head < a.length && head < b.length && a[head] === b[head]) head += 1;
  let tail = 0;
  while (
    tail < a.length - head &&
    tail < b.length - head &&
    a[a.length - 1 - tail] === b[b.length - 1 - tail]
  )
    tail += 1;
  const lengths = commonLengths(a.slice(head, a.length - tail), b.slice(head, b.length - tail));

  const result: Pair<T>[] = [];
  let gone: T[] = [];
  let come: T[] = [];
  const flush = (): void => {
    const both = pairs ? Math.min(gone.length, come.length) : 0;
    for (let n = 0; n < both; n += 1) result.push({ before: gone[n] as T, after: come[n] as T });
    for (const one of gone.slice(both)) result.push({ before: one });
    for (const one of come.slice(both)) result.push({ after: one });
    gone = [];
    come = [];
  };
  let i = 0;
  let j = 0;
  while (i < a.length || j < b.length) {
    const common = i < a.length && j < b.length && a[i] === b[j];
    const left = lengths[i - head + 1]?.[j - head] ?? 0;
    const down = lengths[i - head]?.[j - head + 1] ?? 0;
    if (common) {
      flush();
      result.push({ before: before[i] as T, after: after[j] as T });
      i += 1;
      j += 1;
    } else if (i < a.length && (j >= b.length || left >= down)) {
      gone.push(before[i] as T);
      i += 1;
    } else {
      come.push(after[j] as T);
      j += 1;
    }
  }
  flush();
  return result;
}
