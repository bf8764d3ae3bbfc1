import { asWritten, type Message } from '../../messages/index.ts';
import type { Hazard } from '../../plan/index.ts';
import type { FactBody } from '../model/facts.ts';
import { stageOf, stepOf } from '../model/plan-index.ts';
import { breaksStep, policyOf } from '../rules/faults.ts';
import type { RunState } from '../model/state.ts';
import type { Readings } from '../model/types.ts';
import { startCooling } from '../timers/cooling.ts';
import { clockBase } from '../timers/unproved-time.ts';
import { halt, putStep } from './change.ts';
import { tripGates } from './gates.ts';
import { applyClosing, unwindHot } from './run.ts';

const NEEDS_HANDS: ReadonlySet<Hazard> = new Set(['boiling-water', 'flame', 'element']);

type Body<K extends FactBody['kind']> = Extract<FactBody, { kind: K }>;

/** Writes the fault, shuts the gates it trips, and does what its policy says. */
export function applyFault(state: RunState, body: Body<'fault-raised'>, at: Readings): RunState {
  const { policy, name } = policyOf(state.plan, body.faultKind);
  const noted: RunState = {
    ...state,
    faults: [
      ...state.faults,
      {
        id: body.fault,
        kind: body.faultKind,
        policy,
        step: body.step,
        text: body.text,
        timer: body.timer,
        cause: body.cause,
        cleared: false,
      },
    ],
    coolings:
      body.faultKind === 'burned'
        ? [...state.coolings, startCooling(body.fault, at, clockBase(state.clock))]
        : state.coolings,
  };
  if (state.status === 'closing' || state.status === 'drafting') return noted;
  const tripped = tripGates(noted, body.faultKind, body.step);
  switch (policy) {
    case 'stop-run':
      return applyClosing(tripped, {
        kind: 'closing-begun',
        as: 'failed',
        reason: name,
      });
    case 'suspend':
      return halt(body.faultKind === 'burned' ? letGo(tripped, name) : tripped, 'suspended', name);
    case 'note':
      return tripped;
  }
}

/** Hands are with the person: boiling water is put down and open heat turned off. An oven's cycle needs no hands. */
function letGo(state: RunState, reason: Message): RunState {
  return unwindHot(state, (step) => wantsHands(state, step), reason);
}

function wantsHands(state: RunState, id: string): boolean {
  const step = stepOf(state.plan, id);
  const hazards = stageOf(step, state.steps[id]?.stage ?? 0)?.hazards ?? [];
  return step.attention !== 'none' && hazards.some((one) => NEEDS_HANDS.has(one));
}

/** How a burn ended; its fault is over with it. Going on is another word. */
export function applyCoolingEnd(state: RunState, body: Body<'cooling-ended'>): RunState {
  return {
    ...state,
    coolings: state.coolings.filter((one) => one.fault !== body.fault),
    faults: state.faults.map((one) => (one.id === body.fault ? { ...one, cleared: true } : one)),
  };
}

/** Fixed. What broke off in between begins again in this turn; going on is another word. */
export function applyCleared(state: RunState, body: Body<'fault-cleared'>): RunState {
  const fault = state.faults.find((one) => one.id === body.fault);
  let next: RunState = {
    ...state,
    faults: state.faults.map((one) => (one.id === body.fault ? { ...one, cleared: true } : one)),
  };
  if (!fault) return next;
  for (const step of Object.keys(state.steps)) {
    if (breaksStep(state, fault, step)) {
      next = putStep(next, step, { restart: policyOf(state.plan, fault.kind).name });
    }
  }
  return next;
}

export function applyStorage(
  state: RunState,
  body: Body<'storage-failed' | 'storage-mended'>,
): RunState {
  if (body.kind === 'storage-mended') return { ...state, storageDown: false };
  return halt({ ...state, storageDown: true }, 'suspended', asWritten(body.text));
}
