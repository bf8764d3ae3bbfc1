import { ASK_CLOCK_S } from '../model/constants.ts';
import type { ClockState, RunState, Timer } from '../model/state.ts';
import type { Readings } from '../model/types.ts';
import {
  carry,
  creditClaim,
  dropClaim,
  settleClaim,
  type Gain,
  type ElapsedInterval,
} from './elapsed-interval.ts';
import { isAlarm } from './timer.ts';

/** Every open stopwatch of the state (timers, settling gates, time not running) through one function. */
function mapSpans(
  state: RunState,
  change: (span: ElapsedInterval, timer: Timer | null) => ElapsedInterval,
): RunState {
  const timers: Record<string, Timer> = {};
  for (const [id, timer] of Object.entries(state.timers)) {
    timers[id] = timer.mode === 'running' ? { ...timer, span: change(timer.span, timer) } : timer;
  }
  const gates: Record<string, RunState['gates'][string]> = {};
  for (const [key, gate] of Object.entries(state.gates)) {
    gates[key] = gate.settling ? { ...gate, settling: change(gate.settling, null) } : gate;
  }
  return { ...state, timers, gates, idle: state.idle ? change(state.idle, null) : null };
}

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

/** Is a person to say whether the time shown is right? Only while a clock runs for which it matters. */
export function clockQuestion(state: RunState): boolean {
  return (
    state.clock.doubt &&
    Object.values(state.timers).some(
      (timer) =>
        timer.mode === 'running' && (!isAlarm(timer) || timer.span.bound === 'until-clock'),
    )
  );
}

/**
 * Applies a person's word about the wall clock: its error now, s (right time
 * less time shown; 0 when it is right), or null when nobody knows. Taken
 * against the error known before, the wall differences since then count.
 */
export function answerClock(state: RunState, errorS: number | null): RunState {
  const changeS = errorS === null ? null : errorS - state.clock.errorS;
  const moved = mapSpans(state, (span, timer) => {
    if (changeS === null) return dropClaim(span);
    const settled = settleClaim(span, changeS);
    return timer?.gapOpen ? settled : creditClaim(settled);
  });
  const timers: Record<string, Timer> = {};
  for (const [id, timer] of Object.entries(moved.timers)) {
    timers[id] = timer.gapOpen ? { ...timer, clockProved: true } : timer;
  }
  const clock: ClockState = {
    ...state.clock,
    errorS: errorS ?? 0,
    errorKnown: errorS !== null,
    claimS: 0,
    doubt: false,
  };
  return { ...moved, timers, clock };
}

/** A person saw that the process went on through the gap; it counts unless the clock is in doubt. */
export function closeGap(timer: Timer, clockInDoubt: boolean): Timer {
  const counts = timer.clockProved || !clockInDoubt;
  return {
    ...timer,
    gapOpen: false,
    clockProved: false,
    span: counts ? creditClaim(timer.span) : timer.span,
  };
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
