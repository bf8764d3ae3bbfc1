import type { AlertFamily } from '../../core/run/index.ts';
import { firstFrom, gainOf, MANNERS, offsetS, soundLengthS, URGENCY } from './families.ts';

/** An alert on the clock: when its first sounding starts, seconds from now (negative: going on). */
export type TimedAlert = {
  readonly id: string;
  readonly family: AlertFamily;
  readonly startInS: number;
  /** Counts fresh starts of the same alert, so that their soundings are told apart. */
  readonly round: number;
};

/** One sound to be played at a moment. The same sounding keeps its key from plan to plan. */
export type Sounding = {
  readonly key: string;
  /** Every alert it speaks for: the one that leads, and those that start together with it. */
  readonly alerts: readonly TimedAlert[];
  readonly family: AlertFamily;
  /** Seconds from now; slightly negative: this very moment. */
  readonly atS: number;
  readonly gain: number;
};

/** Alerts of one family that start within this are one sound, s. */
const TOGETHER_S = 1;
/** Silence kept between two sounds, s. */
const BETWEEN_S = 0.15;
/** Sounds that only touch do not overlap, whichever way their times were rounded, s. */
const ROUNDING_S = 1e-6;
/** A first sounding waits at most this for its turn, s. Repeats do not wait: they are left out. */
const LONGEST_WAIT_S = 10;
/** A sounding this little in the past is still started, s. */
const STILL_NOW_S = 0.25;
/** Plans look this far back and beyond the horizon, so that what lies just outside keeps its place, s. */
const LOOK_AROUND_S = LONGEST_WAIT_S + 2;

/**
 * What should sound when, from now to the horizon, in order of time.
 * Sounds never overlap: the more urgent family goes first, a less urgent first
 * sounding waits for its turn, a less urgent repeat is left out. Pure, and the
 * same in absolute time whenever it is asked, so that re-planning moves nothing.
 */
export function planSoundings(
  alerts: readonly TimedAlert[],
  horizonS: number,
): readonly Sounding[] {
  const planned: Sounding[] = [];
  for (const family of URGENCY) {
    const own = alerts.filter((alert) => alert.family === family);
    for (const alerts of together(own)) plan(alerts, horizonS + LOOK_AROUND_S, planned);
  }
  return planned
    .filter(({ atS }) => atS >= -STILL_NOW_S && atS <= horizonS)
    .toSorted((a, b) => a.atS - b.atS);
}

/** Names an alert apart from an earlier start of the same alert. */
export function alertKey({ id, round }: Pick<TimedAlert, 'id' | 'round'>): string {
  return `${id}~${round}`;
}

/** The alerts of one family in groups that start together; the earliest leads its group. */
function together(
  alerts: readonly TimedAlert[],
): readonly (readonly [TimedAlert, ...TimedAlert[]])[] {
  const groups: [TimedAlert, ...TimedAlert[]][] = [];
  const sorted = alerts.toSorted((a, b) => a.startInS - b.startInS || (a.id < b.id ? -1 : 1));
  for (const alert of sorted) {
    const last = groups.at(-1);
    if (last && alert.startInS - last[0].startInS <= TOGETHER_S) last.push(alert);
    else groups.push([alert]);
  }
  return groups;
}

function plan(
  alerts: readonly [TimedAlert, ...TimedAlert[]],
  untilS: number,
  planned: Sounding[],
): void {
  const { family, startInS } = alerts[0];
  const lengthS = soundLengthS(family);
  for (let k = firstFrom(family, -LOOK_AROUND_S - startInS); k < MANNERS[family].most; k += 1) {
    const wantedS = startInS + offsetS(family, k);
    if (wantedS > untilS) return;
    const atS = k === 0 ? nextFree(wantedS, lengthS, planned) : wantedS;
    const free = k === 0 ? atS - wantedS <= LONGEST_WAIT_S : isFree(wantedS, lengthS, planned);
    if (!free) continue;
    const key = `${alertKey(alerts[0])}#${k}`;
    planned.push({ key, alerts, family, atS, gain: gainOf(family, k) });
  }
}

function overlapping(atS: number, lengthS: number, planned: readonly Sounding[]): Sounding[] {
  const apartS = BETWEEN_S - ROUNDING_S;
  return planned.filter(
    (one) => atS < one.atS + soundLengthS(one.family) + apartS && one.atS < atS + lengthS + apartS,
  );
}

function isFree(atS: number, lengthS: number, planned: readonly Sounding[]): boolean {
  return overlapping(atS, lengthS, planned).length === 0;
}

/** The first moment from `wantedS` at which nothing else sounds. */
function nextFree(wantedS: number, lengthS: number, planned: readonly Sounding[]): number {
  let atS = wantedS;
  for (;;) {
    const inTheWay = overlapping(atS, lengthS, planned);
    if (inTheWay.length === 0) return atS;
    atS = Math.max(...inTheWay.map((one) => one.atS + soundLengthS(one.family))) + BETWEEN_S;
  }
}
