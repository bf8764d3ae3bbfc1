import type { AlertFamily } from '../../core/run/index.ts';
import { firstFrom, gainOf, MANNERS, offsetS, soundLengthS, URGENCY } from './families.ts';

/** An alert with its voice: when its first sounding starts, seconds from now (negative: going on). */
export type Voice = {
  readonly id: string;
  readonly family: AlertFamily;
  readonly startInS: number;
  /** Counts fresh starts of the same alert, so that their soundings are told apart. */
  readonly round: number;
};

/** One sound to be played at a moment. The same sounding keeps its key from plan to plan. */
export type Sounding = {
  readonly key: string;
  /** Every voice it speaks for: the one that leads, and those that start together with it. */
  readonly voices: readonly Voice[];
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
export function planSoundings(voices: readonly Voice[], horizonS: number): readonly Sounding[] {
  const placed: Sounding[] = [];
  for (const family of URGENCY) {
    const own = voices.filter((voice) => voice.family === family);
    for (const voices of together(own)) place(voices, horizonS + LOOK_AROUND_S, placed);
  }
  return placed
    .filter(({ atS }) => atS >= -STILL_NOW_S && atS <= horizonS)
    .toSorted((a, b) => a.atS - b.atS);
}

/** Names a voice apart from an earlier start of the same alert. */
export function voiceKey({ id, round }: Pick<Voice, 'id' | 'round'>): string {
  return `${id}~${round}`;
}

/** The voices of one family in groups that start together; the earliest leads its group. */
function together(voices: readonly Voice[]): readonly (readonly [Voice, ...Voice[]])[] {
  const groups: [Voice, ...Voice[]][] = [];
  const sorted = voices.toSorted((a, b) => a.startInS - b.startInS || (a.id < b.id ? -1 : 1));
  for (const voice of sorted) {
    const last = groups.at(-1);
    if (last && voice.startInS - last[0].startInS <= TOGETHER_S) last.push(voice);
    else groups.push([voice]);
  }
  return groups;
}

function place(voices: readonly [Voice, ...Voice[]], untilS: number, placed: Sounding[]): void {
  const { family, startInS } = voices[0];
  const lengthS = soundLengthS(family);
  for (let k = firstFrom(family, -LOOK_AROUND_S - startInS); k < MANNERS[family].most; k += 1) {
    const wantedS = startInS + offsetS(family, k);
    if (wantedS > untilS) return;
    const atS = k === 0 ? nextFree(wantedS, lengthS, placed) : wantedS;
    const free = k === 0 ? atS - wantedS <= LONGEST_WAIT_S : isFree(wantedS, lengthS, placed);
    if (!free) continue;
    const key = `${voiceKey(voices[0])}#${k}`;
    placed.push({ key, voices, family, atS, gain: gainOf(family, k) });
  }
}

function overlapping(atS: number, lengthS: number, placed: readonly Sounding[]): Sounding[] {
  const apartS = BETWEEN_S - ROUNDING_S;
  return placed.filter(
    (one) => atS < one.atS + soundLengthS(one.family) + apartS && one.atS < atS + lengthS + apartS,
  );
}

function isFree(atS: number, lengthS: number, placed: readonly Sounding[]): boolean {
  return overlapping(atS, lengthS, placed).length === 0;
}

/** The first moment from `wantedS` at which nothing else sounds. */
function nextFree(wantedS: number, lengthS: number, placed: readonly Sounding[]): number {
  let atS = wantedS;
  for (;;) {
    const inTheWay = overlapping(atS, lengthS, placed);
    if (inTheWay.length === 0) return atS;
    atS = Math.max(...inTheWay.map((one) => one.atS + soundLengthS(one.family))) + BETWEEN_S;
  }
}
