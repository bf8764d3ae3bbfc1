/** One point of a curve for a picture. */
export type CurvePoint = { readonly timeS: number; readonly tempC: number };

/** At most this many points in a drawn curve. */
const MOST_POINTS = 200;

/** Keeps the first, the last and evenly chosen points between, at most `most` of them. */
export function thinned<T>(points: readonly T[], most = MOST_POINTS): readonly T[] {
  if (points.length <= most) return points;
  const stride = (points.length - 1) / (most - 1);
  return Array.from({ length: most }, (_, i) => points[Math.round(i * stride)]).filter(
    (point): point is T => point !== undefined,
  );
}
