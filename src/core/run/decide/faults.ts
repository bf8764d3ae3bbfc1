import type { RunState } from '../model/state.ts';
import type { Request } from '../model/types.ts';
import { accept, refuse, type Decision } from './refusal.ts';

type Asked<K extends Request['kind']> = Extract<Request, { kind: K }>;

export function reportFault(state: RunState, asked: Asked<'report-fault'>): Decision {
  if (asked.step !== undefined && !state.steps[asked.step])
    return refuse('unknown-step', `Step is “${asked.step}”; allowed: a step of the plan.`);
  return accept({
    kind: 'fault-raised',
    fault: `fault-${state.seq + 1}`,
    faultKind: asked.fault,
    step: asked.step ?? null,
    text: asked.text ?? '',
    timer: null,
    cause: 0,
  });
}

export function clearFault(state: RunState, asked: Asked<'clear-fault'>): Decision {
  const fault = state.faults.find((one) => one.id === asked.faultId);
  if (!fault)
    return refuse('unknown-fault', `Fault is “${asked.faultId}”; allowed: one that was reported.`);
  if (fault.cleared) return refuse('already-cleared', 'It was put right already.');
  return accept({ kind: 'fault-cleared', fault: fault.id });
}

/** A person's word that a stopped step is safe; for a pour this includes its cold water (I-18). */
export function confirmSafe(state: RunState, asked: Asked<'confirm-safe'>): Decision {
  const one = state.steps[asked.step];
  if (!one) return refuse('unknown-step', `Step is “${asked.step}”; allowed: a step of the plan.`);
  if (one.status !== 'unwinding' || one.safe)
    return refuse('not-unwinding', 'This step was not stopped, so there is nothing to make safe.');
  return accept({ kind: 'safe-confirmed', step: asked.step, attempt: one.attempt });
}
