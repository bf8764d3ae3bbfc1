import { CLOCK_RATE_ERROR, CLOCK_TOLERANCE_S } from './constants.ts';
import type { Readings } from './types.ts';

/**
 * Elapsed time as an interval. A monotonic clock in a page stops while the
 * device sleeps (W3C High Resolution Time, discussion of sleep), so when the
 * wall clock ran further nobody can tell sleep from a clock set forward:
 * what is proved (`atLeastS`) and what is possible (`atMostS`) are kept apart.
 * Seconds.
 */
export type Elapsed = { readonly atLeastS: number; readonly atMostS: number };

/** A stopwatch that survives the page: what was gained up to `anchor`, and the clocks at `anchor`. */
export type ElapsedInterval = {
  readonly anchor: Readings;
  readonly atLeastS: number;
  /** The bounded part; see `bound`. */
  readonly atMostS: number;
  /** Wall time less monotonic time where they disagree; counts once a person says the clock is right. Negative after a clock was set back. */
  readonly claimS: number;
  /** `until-clock`: no upper bound until a person tells the time. `lost`: none any more. */
  readonly bound: 'finite' | 'until-clock' | 'lost';
  /**
   * Was the error of the wall clock known where the claim began? `doubt`: to be
   * asked about a change; `lost`: a person said that nobody knows.
   */
  readonly base: 'known' | 'doubt' | 'lost';
  /** What persons' words about the clock changed, oldest first, so that a word can be taken back. */
  readonly told: readonly Told[];
};

/** What one answer (its fact's number) did to a span: what it added, and what stood before. */
export type Told = {
  readonly answer: number;
  readonly atLeastS: number;
  readonly atMostS: number;
  readonly claimS: number;
  readonly bound: 'finite' | 'until-clock' | 'lost';
  readonly base: ElapsedInterval['base'];
};

/** What one stretch between two readings adds to a span. */
export type Gain = {
  readonly atLeastS: number;
  readonly atMostS: number;
  readonly claimS: number;
  readonly bound: ElapsedInterval['bound'];
};

export type Agreement = 'agree' | 'slept' | 'back';

const MS = 1000;

/** Seconds of both clocks between two readings of one session; the monotonic one never runs backwards. */
export function differences(from: Readings, to: Readings): { wallS: number; monoS: number } {
  return {
    wallS: (to.wallMs - from.wallMs) / MS,
    monoS: Math.max(0, (to.monoMs - from.monoMs) / MS),
  };
}

/** How far honest clocks may have come apart after `monoS`, s. */
function allowanceS(monoS: number): number {
  return CLOCK_TOLERANCE_S + CLOCK_RATE_ERROR * monoS;
}

/**
 * Do the two clocks of one session agree over a stretch? `slept` may also be a
 * clock set forward. What may lie between them is the same after a minute and
 * after a month: a drift that adds up to more is written down and counted from
 * there, so that a sleep cannot hide behind a long session.
 */
export function agreement(from: Readings, to: Readings): Agreement {
  const { wallS, monoS } = differences(from, to);
  return agreementWithin(wallS - monoS, CLOCK_TOLERANCE_S);
}

function agreementWithin(apartS: number, allowedS: number): Agreement {
  if (apartS > allowedS) return 'slept';
  return apartS < -allowedS ? 'back' : 'agree';
}

/** Wall less monotonic time of a stretch in one session where its clocks disagree, s. */
export function apartS(from: Readings, to: Readings): number {
  const { wallS, monoS } = differences(from, to);
  return agreement(from, to) === 'agree' ? 0 : wallS - monoS;
}

/**
 * Gain over a stretch within one session.
 * Agree: [mono, mono + tolerance]. Slept or set forward: [mono, wall]. Set
 * back: at least mono, and no upper bound, since a sleep hidden in the same
 * stretch cannot be excluded. The monotonic clock can only understate, so the
 * lower bound gives away its rate error and nothing else.
 */
export function gainInSession(from: Readings, to: Readings): Gain {
  const { wallS, monoS } = differences(from, to);
  const atLeastS = monoS * (1 - CLOCK_RATE_ERROR);
  const atMostS = monoS + allowanceS(monoS);
  switch (agreementWithin(wallS - monoS, allowanceS(monoS))) {
    case 'agree':
      return { atLeastS, atMostS, claimS: 0, bound: 'finite' };
    case 'slept':
      return {
        atLeastS,
        atMostS: wallS + CLOCK_TOLERANCE_S,
        claimS: wallS - monoS,
        bound: 'finite',
      };
    case 'back':
      return { atLeastS, atMostS, claimS: wallS - monoS, bound: 'lost' };
  }
}

/**
 * Gain over a stretch that ends in another session: within the old session up
 * to the last proof of life, and from there only the wall clock. A wall clock
 * that stands before that proof, or before the app was built, bounds nothing.
 * A clock set back while the page was away, yet not before that proof, cannot
 * be seen: the upper bound is then too low until a person tells the right time.
 */
export function gainOverGap(
  from: Readings,
  lastAlive: Readings,
  to: Readings,
  notBeforeWallMs: number,
): Gain {
  const alive = lastAlive.session === from.session ? lastAlive : from;
  const proved = gainInSession(from, alive);
  const gapS = (to.wallMs - alive.wallMs) / MS;
  const plausible = gapS >= -CLOCK_TOLERANCE_S && to.wallMs >= notBeforeWallMs;
  return {
    atLeastS: proved.atLeastS,
    atMostS: proved.atMostS + (plausible ? Math.max(0, gapS) : gapS) + CLOCK_TOLERANCE_S,
    claimS: proved.claimS + (plausible ? Math.max(0, gapS) : gapS),
    bound: looser(proved.bound, plausible ? 'finite' : 'until-clock'),
  };
}

const LOOSENESS = { finite: 0, 'until-clock': 1, lost: 2 } as const;

export function looser(
  a: ElapsedInterval['bound'],
  b: ElapsedInterval['bound'],
): ElapsedInterval['bound'] {
  return LOOSENESS[a] >= LOOSENESS[b] ? a : b;
}

/** A stopwatch that begins now; `base`: is the error of the wall clock known now? */
export function startInterval(at: Readings, base: ElapsedInterval['base']): ElapsedInterval {
  return { anchor: at, atLeastS: 0, atMostS: 0, claimS: 0, bound: 'finite', base, told: [] };
}

/** Moves a gain into what is carried and puts the anchor at `to`. */
export function carry(span: ElapsedInterval, gain: Gain, to: Readings): ElapsedInterval {
  return {
    ...span,
    anchor: to,
    atLeastS: span.atLeastS + gain.atLeastS,
    atMostS: span.atMostS + gain.atMostS,
    claimS: span.claimS + gain.claimS,
    bound: looser(span.bound, gain.bound),
  };
}

/**
 * Elapsed interval now, s; `atMostS` is Infinity when nothing bounds it.
 * Readings of another session prove nothing by themselves (the session must be
 * opened first, which re-anchors); they only widen the interval.
 */
export function elapsed(span: ElapsedInterval, now: Readings): Elapsed {
  const gain =
    now.session === span.anchor.session
      ? gainInSession(span.anchor, now)
      : gainOverGap(span.anchor, span.anchor, now, 0);
  const atLeastS = Math.max(0, span.atLeastS + gain.atLeastS);
  const bounded = looser(span.bound, gain.bound) === 'finite';
  return {
    atLeastS,
    atMostS: bounded ? Math.max(atLeastS, span.atMostS + gain.atMostS) : Infinity,
  };
}

/**
 * Settles what is claimed by a person's word about the wall clock, whose error
 * changed by `errorChangeS` since it was last known (0: it is as right as it
 * was). Wall time that contradicts itself bounds nothing. A span that began
 * while the clock was in doubt cannot be corrected, since nobody knows on
 * which side of its beginning the error came in.
 */
export function settleClaim(span: ElapsedInterval, errorChangeS: number): ElapsedInterval {
  const usable = span.base === 'known' || (span.base === 'doubt' && errorChangeS === 0);
  if (span.claimS === 0 && span.bound !== 'until-clock') return { ...span, base: 'known' };
  if (!usable) return { ...dropClaim(span), base: 'known' };
  const claimS = span.claimS + errorChangeS;
  const contradicts = claimS < -CLOCK_TOLERANCE_S;
  const bound = span.bound === 'until-clock' && !contradicts ? 'finite' : span.bound;
  return {
    ...span,
    base: 'known',
    claimS: Math.max(0, claimS),
    atMostS: span.atMostS + errorChangeS,
    bound: contradicts ? 'lost' : bound,
  };
}

/**
 * Counts the claimed wall time as proved. What a clock set back owes stays owed:
 * were it forgotten, the clock would seem to gain when it comes right again (I-20).
 */
export function creditClaim(span: ElapsedInterval): ElapsedInterval {
  const creditedS = Math.max(0, span.claimS);
  const atLeastS = span.atLeastS + creditedS;
  const claimS = span.claimS - creditedS;
  return { ...span, atLeastS, atMostS: Math.max(span.atMostS, atLeastS), claimS };
}

/** Gives up the claim: nobody knows the time. What cannot be bounded is not bounded. */
export function dropClaim(span: ElapsedInterval): ElapsedInterval {
  const bounded = span.claimS === 0 && span.bound === 'finite';
  return { ...span, claimS: 0, bound: bounded ? 'finite' : 'lost', base: 'lost' };
}
