import { ASK_CLOCK_S } from '../model/constants.ts';
import type { ClockState, RunState, Timer } from '../model/state.ts';
import type { Readings } from '../model/types.ts';
import { mapSpans } from './map-spans.ts';
import { carry, creditClaim, type Gain, type ElapsedInterval } from '../model/elapsed-interval.ts';
import { remember } from './clock-word.ts';
import { isAlarm } from './timer.ts';

/** Moves every stopwatch to the new anchor `to` with its own gain. */
export function reanchor(
  state: RunState,
  gainOf: (anchor: Readings) => Gain,
  to: Readings,
): RunState {
  return mapSpans(state, (span) => carry(span, gainOf(span.anchor), to));
}

/** What a stopwatch that begins now knows of the wall clock. */
export function clockBase(clock: ClockState): ElapsedInterval['base'] {
  if (!clock.errorKnown) return 'lost';
  return clock.doubt ? 'doubt' : 'known';
}

/** Adds an unproved stretch to the doubt about the wall clock. */
export function doubtClock(clock: ClockState, claimS: number, plausible: boolean): ClockState {
  const sum = clock.claimS + claimS;
  const doubt = clock.doubt || !plausible || Math.abs(sum) > ASK_CLOCK_S;
  return { ...clock, claimS: sum, doubt };
}

/**
 * Is a person to say what time it is? Whatever runs: waits and limits begin on
 * this clock, and rest days and the hour of leaven are kept by it. Yet a clock
 * that merely ran on (a night's sleep) is asked about once it matters.
 */
export function clockQuestion(state: RunState): boolean {
  if (!state.clock.doubt) return false;
  if (state.clock.claimS < 0 || state.plan.days !== undefined) return true;
  return Object.values(state.timers).some(
    (timer) => timer.mode === 'running' && (!isAlarm(timer) || timer.span.bound === 'until-clock'),
  );
}

/** A person saw that the process went on through the gap; it counts unless the clock is in doubt. */
export function closeGap(timer: Timer, clock: ClockState): Timer {
  const counts = timer.clockProved || !clock.doubt;
  const { span } = timer;
  const answer = clock.answers.at(-1)?.answer;
  const credited = counts ? creditClaim(span) : span;
  const closed = { ...timer, gapOpen: false, clockProved: false };
  return timer.clockProved && answer !== undefined
    ? { ...closed, span: remember(span, credited, answer) }
    : { ...closed, span: credited };
}

/** Nobody saw: the gap counts for nothing, and the timer says so. */
export function leaveInDoubt(timer: Timer): Timer {
  return {
    ...timer,
    gapOpen: false,
    clockProved: false,
    unproved: true,
    span: { ...timer.span, claimS: 0, base: 'lost' },
  };
}
