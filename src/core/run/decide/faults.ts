import { message } from '../../messages/index.ts';
import type { RunState } from '../model/state.ts';
import { elapsed } from '../model/elapsed-interval.ts';
import type { Readings, Request } from '../model/types.ts';
import { mayBeOver } from '../timers/cooling.ts';
import { accept, refuse, type Decision } from './refusal.ts';

type Asked<K extends Request['kind']> = Extract<Request, { kind: K }>;

export function reportFault(state: RunState, asked: Asked<'report-fault'>): Decision {
  if (asked.step !== undefined && !Object.hasOwn(state.steps, asked.step))
    return refuse('unknown-step', message('engine.unknown.step', { id: asked.step }));
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

/** A burn is put right by the word on how its cooling ended, and by nothing else. */
export function clearFault(state: RunState, asked: Asked<'clear-fault'>): Decision {
  const fault = state.faults.find((one) => one.id === asked.faultId);
  if (!fault)
    return refuse('unknown-fault', message('engine.unknown.fault', { id: asked.faultId }));
  if (fault.cleared) return refuse('already-cleared', message('engine.fault.already-cleared'));
  if (state.coolings.some((one) => one.fault === fault.id))
    return refuse('cooling-first', message('engine.cooling.first'));
  return accept({ kind: 'fault-cleared', fault: fault.id });
}

/** `cooled` only once the 20 minutes may be over; the other words at any time. */
export function endCooling(state: RunState, asked: Asked<'end-cooling'>, now: Readings): Decision {
  const cooling = state.coolings.find((one) => one.fault === asked.faultId);
  if (!cooling)
    return refuse('unknown-fault', message('engine.unknown.fault', { id: asked.faultId }));
  if (asked.as === 'cooled' && !cooling.announced && !mayBeOver(cooling, now))
    return refuse('hold-not-due', message('engine.cooling.short'));
  return accept({
    kind: 'cooling-ended',
    fault: cooling.fault,
    as: asked.as,
    cooledS: Math.floor(elapsed(cooling.span, now).atLeastS),
  });
}

/** A person's word that a stopped step is safe; for a pour this includes its cold water (I-18). */
export function confirmSafe(state: RunState, asked: Asked<'confirm-safe'>): Decision {
  const one = Object.hasOwn(state.steps, asked.step) ? state.steps[asked.step] : undefined;
  if (!one) return refuse('unknown-step', message('engine.unknown.step', { id: asked.step }));
  if (one.status !== 'unwinding' || one.safe)
    return refuse('not-unwinding', message('engine.step.not-stopped'));
  return accept({ kind: 'safe-confirmed', step: asked.step, attempt: one.attempt });
}
