import { civilDate, dayNumber, momentOf, wallTime } from '../../calendar/index.ts';

/** A household does not work from half past ten in the evening to eight: common practice, no published source. */
export const NIGHT = { from: { hour: 22, minute: 30 }, to: { hour: 8, minute: 0 } } as const;

/** Nights on the wall of a zone that some part of the span touches, in order; ms since 1970-01-01 UTC. */
export function nightsBetween(
  fromWallMs: number,
  toWallMs: number,
  zone: string,
): readonly { readonly fromWallMs: number; readonly toWallMs: number }[] {
  const first = dayNumber(wallTime(fromWallMs, zone));
  const last = dayNumber(wallTime(toWallMs, zone)) + 1;
  return Array.from({ length: last - first + 1 }, (_, at) => ({
    fromWallMs: momentOf({ ...civilDate(first + at - 1), ...NIGHT.from }, zone),
    toWallMs: momentOf({ ...civilDate(first + at), ...NIGHT.to }, zone),
  })).filter((night) => night.toWallMs > fromWallMs && night.fromWallMs < toWallMs);
}

/** Midnights of a zone inside the span, the days' beginnings; ms since 1970-01-01 UTC. */
export function midnightsBetween(
  fromWallMs: number,
  toWallMs: number,
  zone: string,
): readonly number[] {
  const first = dayNumber(wallTime(fromWallMs, zone));
  const last = dayNumber(wallTime(toWallMs, zone));
  return Array.from({ length: last - first }, (_, at) =>
    momentOf({ ...civilDate(first + at + 1), hour: 0, minute: 0 }, zone),
  );
}
