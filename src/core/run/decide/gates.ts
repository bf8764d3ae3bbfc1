import { message } from '../../messages/index.ts';
import { scopeKeys } from '../rules/gates.ts';
import { indexOf } from '../model/plan-index.ts';
import type { RunState } from '../model/state.ts';
import type { Request } from '../model/types.ts';
import { accept, refuse, type Decision } from './refusal.ts';

type Asked<K extends Request['kind']> = Extract<Request, { kind: K }>;

function refuseUnknown(state: RunState, gateId: string, key: string): Decision | null {
  const gate = indexOf(state.plan).gates.get(gateId);
  if (!gate) return refuse('unknown-gate', message('engine.unknown.gate', { id: gateId }));
  const keys = scopeKeys(state, gate);
  if (!keys.includes(key)) {
    return refuse('unknown-scope', message('engine.unknown.scope', { id: key, allowed: keys }));
  }
  return null;
}

/** A person's yes or no. Opening a gate resumes nothing (I-06). */
export function answerGate(state: RunState, asked: Asked<'answer-gate'>): Decision {
  return (
    refuseUnknown(state, asked.gate, asked.scopeKey) ??
    accept({
      kind: 'gate-answered',
      gate: asked.gate,
      scopeKey: asked.scopeKey,
      answer: asked.answer,
    })
  );
}

/** Only with a reason, and never a DANGER gate. */
export function overrideGate(state: RunState, asked: Asked<'override-gate'>): Decision {
  const unknown = refuseUnknown(state, asked.gate, asked.scopeKey);
  if (unknown) return unknown;
  if (indexOf(state.plan).gates.get(asked.gate)?.signal === 'DANGER') {
    return refuse('danger-gate', message('engine.gate.danger'));
  }
  if (asked.reason.trim() === '') {
    return refuse('reason-missing', message('engine.reason.override'));
  }
  return accept({
    kind: 'gate-overridden',
    gate: asked.gate,
    scopeKey: asked.scopeKey,
    reason: asked.reason,
  });
}
