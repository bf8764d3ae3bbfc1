import { CLOCK_RATE_ERROR } from '../model/constants.ts';
import { COOLING_S, type CoolingView } from '../model/cooling.ts';
import { elapsed, startInterval, type ElapsedInterval } from '../model/elapsed-interval.ts';
import type { FactBody } from '../model/facts.ts';
import type { Cooling, RunState } from '../model/state.ts';
import type { Readings } from '../model/types.ts';

/** The clock of a burn, from the moment somebody told of it. */
export function startCooling(fault: string, at: Readings, base: ElapsedInterval['base']): Cooling {
  return {
    id: `cooling/${fault}`,
    fault,
    startedWallMs: at.wallMs,
    span: startInterval(at, base),
    cause: 1,
    announced: false,
    acknowledged: false,
  };
}

/** Ids begin differently from those of timers, so one list never answers for the other. */
export function coolingById(state: RunState, id: string): Cooling | undefined {
  return state.coolings.find((one) => one.id === id);
}

export function putCooling(state: RunState, changed: Cooling): RunState {
  return {
    ...state,
    coolings: state.coolings.map((one) => (one.id === changed.id ? changed : one)),
  };
}

/** What is still to be cooled at the longest, s. */
function leftS(cooling: Cooling, now: Readings): number {
  return Math.max(0, COOLING_S - elapsed(cooling.span, now).atLeastS);
}

/** May the 20 minutes be over, be it by a clock that nobody vouches for? */
export function mayBeOver(cooling: Cooling, now: Readings): boolean {
  return elapsed(cooling.span, now).atMostS >= COOLING_S;
}

/** Told in every state of a run, whatever is asked, broken or cannot be written. */
export function coolingsDue(state: RunState, now: Readings): readonly FactBody[] {
  return state.coolings
    .filter((one) => !one.announced && leftS(one, now) === 0)
    .map((one) => ({
      kind: 'timer-due',
      timer: one.id,
      cause: one.cause,
      lateByS: Math.round(elapsed(one.span, now).atLeastS - COOLING_S),
    }));
}

/** Seconds until one comes due, or Infinity. */
export function coolingsWakeS(state: RunState, now: Readings): number {
  const left = state.coolings.filter((one) => !one.announced).map((one) => leftS(one, now));
  return Math.min(Infinity, ...left) / (1 - CLOCK_RATE_ERROR);
}

/** After an answer about the clock was taken back: what it alone had brought to its end goes on, and is told again. */
export function coolingsAgain(state: RunState, now: Readings): RunState {
  return {
    ...state,
    coolings: state.coolings.map((one) =>
      one.announced && leftS(one, now) > 0
        ? { ...one, announced: false, acknowledged: false, cause: one.cause + 1 }
        : one,
    ),
  };
}

function viewOf(cooling: Cooling, now: Readings): CoolingView {
  const { id, fault, startedWallMs, cause, announced, acknowledged } = cooling;
  return {
    id,
    fault,
    startedWallMs,
    lengthS: COOLING_S,
    leftS: leftS(cooling, now),
    ...elapsed(cooling.span, now),
    over: announced,
    mayBeOver: mayBeOver(cooling, now),
    alerting: announced && !acknowledged,
    cause,
  };
}

/** Burns that are being cooled, the one that needs longest first. */
export function coolingViews(state: RunState, now: Readings): readonly CoolingView[] {
  return state.coolings.map((one) => viewOf(one, now)).toSorted((a, b) => b.leftS - a.leftS);
}
