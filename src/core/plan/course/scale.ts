/** A stretch of time, s after the start. */
export type TimeSpan = { readonly fromS: number; readonly toS: number };

/** Where a moment lies on a picture's axis, 0 at its beginning to 1 at its end, and back. */
export type TimeScale = {
  readonly at: (atS: number) => number;
  readonly back: (share: number) => number;
};

/** Stretches inside a whole, in order; what overlaps is joined. */
function inside(whole: TimeSpan, folds: readonly TimeSpan[]): readonly TimeSpan[] {
  const kept: TimeSpan[] = [];
  for (const fold of folds.toSorted((a, b) => a.fromS - b.fromS)) {
    const fromS = Math.max(fold.fromS, kept.at(-1)?.toS ?? whole.fromS, whole.fromS);
    const toS = Math.min(fold.toS, whole.toS);
    if (toS > fromS) kept.push({ fromS, toS });
  }
  return kept;
}

/**
 * An axis of time on which some stretches (nights, days of rest) take less room than others.
 * Straight between them, always forward; outside of the whole it stays at its ends.
 * @param whole longer than 0 s
 * @param share of the usual room that a folded stretch takes, above 0, at most 1
 */
export function foldedScale(whole: TimeSpan, folds: readonly TimeSpan[], share: number): TimeScale {
  const corners: { readonly atS: number; readonly at: number }[] = [{ atS: whole.fromS, at: 0 }];
  const goTo = (atS: number, rate: number): void => {
    const last = corners.at(-1);
    if (last && atS > last.atS) corners.push({ atS, at: last.at + (atS - last.atS) * rate });
  };
  for (const { fromS, toS } of inside(whole, folds)) {
    goTo(fromS, 1);
    goTo(toS, share);
  }
  goTo(whole.toS, 1);
  const all = corners.at(-1)?.at ?? 1;
  const between = (x: number, from: 'atS' | 'at', to: 'atS' | 'at'): number => {
    const after = corners.findIndex((corner) => corner[from] >= x);
    const [b, a] = [corners[after], corners[after - 1]];
    if (!b) return corners.at(-1)?.[to] ?? 0;
    if (!a) return b[to];
    return a[to] + ((b[to] - a[to]) * (x - a[from])) / (b[from] - a[from]);
  };
  return {
    at: (atS) => between(atS, 'atS', 'at') / all,
    back: (x) => between(x * all, 'at', 'atS'),
  };
}
