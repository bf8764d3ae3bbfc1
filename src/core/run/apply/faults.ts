import { asWritten } from '../../messages/index.ts';
import type { FactBody } from '../model/facts.ts';
import { breaksStep, policyOf } from '../rules/faults.ts';
import type { RunState } from '../model/state.ts';
import { halt, putStep } from './change.ts';
import { tripGates } from './gates.ts';
import { applyClosing } from './run.ts';

type Body<K extends FactBody['kind']> = Extract<FactBody, { kind: K }>;

/** Writes the fault, shuts the gates it trips, and does what its policy says. */
export function applyFault(state: RunState, body: Body<'fault-raised'>): RunState {
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
      return halt(tripped, 'suspended', name);
    case 'note':
      return tripped;
  }
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
