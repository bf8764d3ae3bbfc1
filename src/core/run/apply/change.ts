import type { Message } from '../../messages/index.ts';
import { NO_REASON } from '../model/reason.ts';
import type { RunState, StepState, Timer } from '../model/state.ts';

/** The state of a step of the plan. */
export function known(state: RunState, step: string): StepState {
  const found = state.steps[step];
  if (!found)
    throw new RangeError(`step is "${step}"; allowed: an id of the plan. Check the journal.`);
  return found;
}

export function putStep(state: RunState, step: string, change: Partial<StepState>): RunState {
  return { ...state, steps: { ...state.steps, [step]: { ...known(state, step), ...change } } };
}

export function putTimers(state: RunState, timers: readonly Timer[]): RunState {
  if (timers.length === 0) return state;
  return {
    ...state,
    timers: { ...state.timers, ...Object.fromEntries(timers.map((one) => [one.id, one])) },
  };
}

/** Changes the running timers that match. */
export function changeTimers(
  state: RunState,
  match: (timer: Timer) => boolean,
  change: (timer: Timer) => Timer,
): RunState {
  return putTimers(
    state,
    Object.values(state.timers)
      .filter((timer) => timer.mode === 'running' && match(timer))
      .map(change),
  );
}

/**
 * Ends timers for good: they leave the state, and their ids are never used
 * again. One that came due and was not `heard` stays, closed, until a person
 * has answered it.
 */
export function closeTimers(
  state: RunState,
  match: (timer: Timer) => boolean,
  heard: boolean,
): RunState {
  const timers: Record<string, Timer> = {};
  for (const [id, timer] of Object.entries(state.timers)) {
    if (timer.mode === 'closed' || !match(timer)) timers[id] = timer;
    else if (timer.announced && !timer.acknowledged && !heard)
      timers[id] = { ...timer, mode: 'closed' };
  }
  return { ...state, timers };
}

/** Timers of the stage of a step in progress; carries, which have no stage, are not among them. */
export function ofStep(step: string): (timer: Timer) => boolean {
  return (timer) => timer.step === step && timer.stage !== '';
}

/** Goes to a status in which the run does not progress. */
export function halt(state: RunState, status: 'held' | 'suspended', reason: Message): RunState {
  if (state.status === 'reviewing') return { ...state, reviewFrom: status, reason };
  if (state.status === 'running' || state.status === 'held' || state.status === 'suspended') {
    return { ...state, status, reason };
  }
  return state;
}

/** Back to running. */
export function goOn(state: RunState): RunState {
  return { ...state, status: 'running', reason: NO_REASON };
}

/** Silences what still rings of steps whose timer has ended by itself: a person is there. */
export function hear(state: RunState, match: (timer: Timer) => boolean): RunState {
  const rings = Object.entries(state.timers).filter(
    ([, timer]) => timer.mode === 'running' || !match(timer),
  );
  return { ...state, timers: Object.fromEntries(rings) };
}
