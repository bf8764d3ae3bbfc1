import type { Fact, FactBody } from '../model/facts.ts';
import type { RunState, StepState } from '../model/state.ts';

/** A step before anything happened to it, as attempt number `attempt`. */
export function freshStep(attempt: number): StepState {
  return {
    attempt,
    status: 'waiting',
    stage: 0,
    round: 1,
    begun: false,
    outcome: null,
    reason: '',
    safe: false,
    restart: '',
    renew: '',
  };
}

export function beginState(
  { seq, at }: Fact,
  body: Extract<FactBody, { kind: 'drafted' }>,
): RunState {
  return {
    seq,
    plan: body.plan,
    notBeforeWallMs: body.notBeforeWallMs,
    status: 'drafting',
    reason: '',
    closedAs: null,
    closingAs: null,
    reviewFrom: 'running',
    steps: Object.fromEntries(body.plan.steps.map((step) => [step.id, freshStep(1)])),
    timers: {},
    gates: {},
    faults: [],
    questions: [],
    clock: { anchor: at, lastAt: at, doubt: false, claimS: 0, errorS: 0, errorKnown: true },
    idle: null,
    storageDown: false,
    alarms: {},
  };
}
