import { stepOf } from '../model/plan-index.ts';
import type { RunState } from '../model/state.ts';
import { clockBase } from '../timers/unproved-time.ts';
import { startInterval } from '../model/elapsed-interval.ts';
import type { Readings } from '../model/types.ts';
import { known } from './change.ts';

/** Starts the stopwatch of a fixture that is hot, wetted with boiling water, or in doubt now. */
export function heat(state: RunState, fixture: string, at: Readings): RunState {
  const span = startInterval(at, clockBase(state.clock));
  return { ...state, heated: { ...state.heated, [fixture]: span } };
}

/** The same after a stage of a step began or ended; a boil heats a kettle, and what cools was hot before. */
export function heatByStep(state: RunState, step: string, at: Readings): RunState {
  const { fixture, kind, stages } = stepOf(state.plan, step);
  if (fixture === undefined || kind === 'boil' || kind === 'cool') return state;
  const one = known(state, step);
  if (one.status === 'waiting') return state;
  const hot = stages.some(({ hazards }, number) => number <= one.stage && hazards.length > 0);
  return hot ? heat(state, fixture, at) : state;
}
