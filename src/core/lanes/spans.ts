/** Stretches of a line, each [from, to], in order and apart. */
export type Spans = readonly (readonly [number, number])[];

/** Total length of the spans. */
export function spansLength(spans: Spans): number {
  let sum = 0;
  for (const [from, to] of spans) sum += to - from;
  return sum;
}

/** Puts spans in order and joins those that meet. */
export function tidySpans(spans: readonly (readonly [number, number])[], joinGap = 1e-9): Spans {
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
  return tidySpans([...a, ...b]);
}

/** Everything in both. */
export function bothSpans(a: Spans, b: Spans): Spans {
  const both: [number, number][] = [];
  for (const [aFrom, aTo] of a) {
    for (const [bFrom, bTo] of b) {
      const from = Math.max(aFrom, bFrom);
      const to = Math.min(aTo, bTo);
      if (to > from) both.push([from, to]);
    }
  }
  return both;
}

/** What is in `a` and not in `b`. */
export function lessSpans(a: Spans, b: Spans): Spans {
  const left: [number, number][] = [];
  for (const [from, to] of a) {
    let start = from;
    for (const [cutFrom, cutTo] of b) {
      if (cutTo <= start || cutFrom >= to) continue;
      if (cutFrom > start) left.push([start, cutFrom]);
      start = Math.max(start, cutTo);
    }
    if (start < to) left.push([start, to]);
  }
  return left;
}
