import { NO_REASON } from '../model/reason.ts';
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
    begunWallMs: null,
    outcome: null,
    reason: NO_REASON,
    safe: false,
    restart: NO_REASON,
    renew: NO_REASON,
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
    reason: NO_REASON,
    closedAs: null,
    closingAs: null,
    reviewFrom: 'running',
    steps: Object.fromEntries(body.plan.steps.map((step) => [step.id, freshStep(1)])),
    timers: {},
    gates: {},
    faults: [],
    coolings: [],
    questions: [],
    reviewed: [],
    clock: {
      anchor: at,
      lastAt: at,
      doubt: false,
      claimS: 0,
      errorS: 0,
      errorKnown: true,
      confirmed: false,
      told: false,
      shownMs: at.wallMs,
      answers: [],
    },
    concluded: {},
    heated: {},
    away: null,
    storageDown: false,
    alarms: {},
    doubt: null,
  };
}
