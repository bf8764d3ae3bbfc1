import { parseMoment, wallTime } from '../../calendar/index.ts';
import type { Kitchen } from '../../kitchen/index.ts';
import { MS_PER_DAY, MS_PER_HOUR, MS_PER_SECOND } from '../../units/index.ts';
import { UTENSILS } from '../model/index.ts';

/**
 * A last hot use longer before the start than this is not counted, days: it was rather left over
 * from an earlier time than true of a kitchen that is lived in. The run dates back no further either.
 */
export const LAST_HOT_DAYS = 14;

/** What was told of the last hot use of one fixture or vessel, and what the plan makes of it. */
export type LastHot = {
  /** Of a fixture or of a vessel. */
  readonly id: string;
  /** As it was told. */
  readonly written: string;
  /** `later`: after the start. `long-ago`: before what is counted. `unplaced`: no zone or no start is known. */
  readonly why: 'counts' | 'later' | 'long-ago' | 'unplaced';
  /** ms since 1970-01-01 UTC, where it counts. */
  readonly wallMs?: number;
  /** Rested already when the work begins, s; 0 where it does not count. */
  readonly restedS: number;
};

/** Of an hour that comes twice when the clock is put back, the second: a rest never counts from too early. */
function latestMoment(written: string, zone: string): number {
  const wallMs = parseMoment('lastHotAt', written, zone);
  const shows = (atMs: number): string => JSON.stringify(wallTime(atMs, zone));
  return shows(wallMs) === shows(wallMs + MS_PER_HOUR) ? wallMs + MS_PER_HOUR : wallMs;
}

function lastHotOf(
  id: string,
  written: string,
  zone: string | undefined,
  startWallMs: number | undefined,
): LastHot {
  const told = { id, written, restedS: 0 };
  if (zone === undefined || startWallMs === undefined) return { ...told, why: 'unplaced' };
  const wallMs = latestMoment(written, zone);
  if (wallMs > startWallMs) return { ...told, why: 'later' };
  if (wallMs < startWallMs - LAST_HOT_DAYS * MS_PER_DAY) return { ...told, why: 'long-ago' };
  return { id, written, why: 'counts', wallMs, restedS: (startWallMs - wallMs) / MS_PER_SECOND };
}

/**
 * The last hot use of every fixture and vessel, and of all utensils, of which one was told, of itself or of the whole
 * kitchen; by its id.
 * @param startWallMs when the work begins, ms since 1970-01-01 UTC
 */
export function lastHotsOf(
  { fixtures, vessels, utensils = [], household, place }: Kitchen,
  startWallMs: number | undefined,
): ReadonlyMap<string, LastHot> {
  const things: readonly { readonly id: string; readonly lastHotAt?: string }[] = [
    ...fixtures,
    ...vessels,
    ...(utensils.length > 0 ? [{ id: UTENSILS }] : []),
  ];
  return new Map(
    things.flatMap(({ id, lastHotAt = household.lastHotAt }) =>
      lastHotAt === undefined
        ? []
        : [[id, lastHotOf(id, lastHotAt, place?.zone, startWallMs)] as const],
    ),
  );
}

/** Does a rest of this fixture or vessel count from a last hot use that was told? */
export function restCounts(
  { lastHots }: { readonly lastHots: ReadonlyMap<string, LastHot> },
  id: string,
): boolean {
  return lastHots.get(id)?.why === 'counts';
}
