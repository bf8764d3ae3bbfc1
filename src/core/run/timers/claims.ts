import { ASK_CLOCK_S } from '../constants.ts';
import type { RunState, Timer } from '../state.ts';
import type { Readings } from '../types.ts';
import { carry, correctWall, creditClaim, dropClaim, type Gain, type Span } from './span.ts';
import { isAlarm } from './timer.ts';

/** Every open stopwatch of the state (timers, settling gates, time not running) through one function. */
function mapSpans(state: RunState, change: (span: Span, timer: Timer | null) => Span): RunState {
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

/** Is there unproved time on a minimum that is worth asking about, or no plausible clock at all? */
export function clockQuestionDue(state: RunState): boolean {
  return Object.values(state.timers).some(
    (timer) =>
      timer.mode === 'running' &&
      !timer.clockProved &&
      (timer.span.bound === 'until-clock' || (!isAlarm(timer) && timer.span.claimS > ASK_CLOCK_S)),
  );
}

/**
 * Applies a person's word about the wall clock. Right: the wall differences
 * count. Wrong by a known error: they count after correction. Wrong and
 * unknown: they count for nothing, and nothing bounds an alarm.
 */
export function answerClock(state: RunState, right: boolean, errorS: number | null): RunState {
  const moved = mapSpans(state, (span, timer) => {
    if (!right && errorS === null) return dropClaim(span);
    const known = right ? loseBound(span) : correctWall(span, errorS ?? 0);
    return timer?.gapOpen ? known : creditClaim(known);
  });
  const timers: Record<string, Timer> = {};
  for (const [id, timer] of Object.entries(moved.timers)) {
    timers[id] = timer.gapOpen ? { ...timer, clockProved: true } : timer;
  }
  return { ...moved, timers };
}

/** The clock is right now, so it was wrong before: what it showed then bounds nothing. */
function loseBound(span: Span): Span {
  return span.bound === 'until-clock' ? { ...span, bound: 'lost' } : span;
}

/** A person saw that the process went on through the gap. */
export function closeGap(timer: Timer): Timer {
  const counts = timer.clockProved || timer.span.claimS <= ASK_CLOCK_S;
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
    doubtful: true,
    span: { ...timer.span, claimS: 0 },
  };
}
