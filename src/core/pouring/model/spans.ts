/** Stretches of a line, each [from, to], in order and apart. */
export type Spans = readonly (readonly [number, number])[];

/** Spans this near each other are one. */
const JOIN_GAP = 1e-9;

/** Total length of the spans. */
export function spansLength(spans: Spans): number {
  let sum = 0;
  for (const [from, to] of spans) sum += to - from;
  return sum;
}

/** Puts spans in order and joins those that meet. */
export function tidySpans(
  spans: readonly (readonly [number, number])[],
  joinGap = JOIN_GAP,
): Spans {
  const sorted = spans.toSorted((a, b) => a[0] - b[0]);
  const joined: [number, number][] = [];
  for (const [from, to] of sorted) {
    const last = joined[joined.length - 1];
    if (last && from <= last[1] + joinGap) last[1] = Math.max(last[1], to);
    else joined.push([from, to]);
  }
  return joined;
}

/** Everything in either. */
export function eitherSpans(a: Spans, b: Spans): Spans {
  if (a.length === 0) return b;
  if (b.length === 0) return a;
  const joined: [number, number][] = [];
  let i = 0;
  let j = 0;
  while (i < a.length || j < b.length) {
    const [p, q] = [a[i], b[j]];
    const next = p && (!q || p[0] <= q[0]) ? p : q;
    if (!next) break;
    if (next === p) i += 1;
    else j += 1;
    const last = joined[joined.length - 1];
    if (last && next[0] <= last[1] + JOIN_GAP) last[1] = Math.max(last[1], next[1]);
    else joined.push([next[0], next[1]]);
  }
  return joined;
}

/** Everything in both. */
export function bothSpans(a: Spans, b: Spans): Spans {
  const both: [number, number][] = [];
  for (let i = 0, j = 0; i < a.length && j < b.length;) {
    const [p, q] = [a[i], b[j]];
    if (!p || !q) break;
    const from = Math.max(p[0], q[0]);
    const to = Math.min(p[1], q[1]);
    if (to > from) both.push([from, to]);
    if (p[1] < q[1]) i += 1;
    else j += 1;
  }
  return both;
}

/** What is in `a` and not in `b`. */
export function lessSpans(a: Spans, b: Spans): Spans {
  const left: [number, number][] = [];
  let j = 0;
  for (const [from, to] of a) {
    let start = from;
    while (j > 0 && (b[j - 1]?.[1] ?? from) > from) j -= 1;
    for (; j < b.length; j += 1) {
      const cut = b[j];
      if (!cut || cut[0] >= to) break;
      if (cut[1] <= start) continue;
      if (cut[0] > start) left.push([start, cut[0]]);
      start = cut[1];
    }
    if (start < to) left.push([start, to]);
  }
  return left;
}
