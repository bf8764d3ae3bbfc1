import type { RunState, Timer } from '../model/state.ts';
import type { ElapsedInterval } from '../model/elapsed-interval.ts';

function mapped<T>(all: Readonly<Record<string, T>>, change: (one: T) => T): Record<string, T> {
  return Object.fromEntries(Object.entries(all).map(([id, one]) => [id, change(one)]));
}

/**
 * Every open stopwatch of the state through one function: timers, waits that
 * ended by a clock, settling gates, time without a hand on the work, time
 * since a fixture was hot.
 */
export function mapSpans(
  state: RunState,
  change: (span: ElapsedInterval, timer: Timer | null) => ElapsedInterval,
): RunState {
  const alone = (span: ElapsedInterval): ElapsedInterval => change(span, null);
  return {
    ...state,
    timers: mapped(state.timers, (timer) =>
      timer.mode === 'running' ? { ...timer, span: change(timer.span, timer) } : timer,
    ),
    concluded: mapped(state.concluded, (one) => ({ ...one, span: alone(one.span) })),
    gates: mapped(state.gates, (gate) =>
      gate.settling ? { ...gate, settling: alone(gate.settling) } : gate,
    ),
    heated: mapped(state.heated, alone),
    away: state.away ? alone(state.away) : null,
  };
}
