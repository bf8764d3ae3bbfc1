import type { FaultKind } from '../../plan/index.ts';
import type { FactBody } from '../model/facts.ts';
import { gateState, putGate, scopeKey, scopeKeys } from '../rules/gates.ts';
import { indexOf, stepOf } from '../model/plan-index.ts';
import type { RunState } from '../model/state.ts';
import { startInterval } from '../model/elapsed-interval.ts';
import type { Readings } from '../model/types.ts';
import { clockBase } from '../timers/unproved-time.ts';
import { halt, known } from './change.ts';
import { unwindHot } from './run.ts';

type Body<K extends FactBody['kind']> = Extract<FactBody, { kind: K }>;

export function applyGateAnswer(
  state: RunState,
  body: Body<'gate-answered'>,
  at: Readings,
): RunState {
  const gate = indexOf(state.plan).gates.get(body.gate);
  if (body.answer === 'no' && gate?.kind === 'condition') {
    return tripGate(state, body.gate, body.scopeKey);
  }
  const before = gateState(state, body.gate, body.scopeKey);
  const settles = body.answer === 'yes' && before.tripped;
  return putGate(state, {
    ...before,
    value: body.answer,
    settling: settles ? startInterval(at, clockBase(state.clock)) : null,
    overriddenBy: '',
    lapsed: false,
  });
}

export function applyOverride(state: RunState, body: Body<'gate-overridden'>): RunState {
  const before = gateState(state, body.gate, body.scopeKey);
  return putGate(state, {
    ...before,
    value: 'yes',
    settling: null,
    overriddenBy: body.reason,
    lapsed: false,
  });
}

/** Shuts a condition gate: the run is suspended and what is hot behind that gate is made safe. */
function tripGate(state: RunState, gateId: string, key: string): RunState {
  const gate = indexOf(state.plan).gates.get(gateId);
  if (!gate) return state;
  const shut = putGate(state, {
    ...gateState(state, gateId, key),
    value: 'no',
    tripped: true,
    settling: null,
    overriddenBy: '',
  });
  const behind = (step: string): boolean => {
    const plan = stepOf(state.plan, step);
    return plan.gates.includes(gateId) && scopeKey(gate, plan, known(state, step).attempt) === key;
  };
  return halt(unwindHot(shut, behind, gate.makeSafe), 'suspended', gate.say);
}

/** Shuts every condition gate that this fault trips; with a step given, only that step's keys. */
export function tripGates(state: RunState, fault: FaultKind, step: string | null): RunState {
  let next = state;
  for (const gate of state.plan.gates) {
    if (gate.kind !== 'condition' || !gate.trippedBy.includes(fault)) continue;
    const plan = step === null ? undefined : stepOf(state.plan, step);
    const keys =
      plan?.gates.includes(gate.id) === true
        ? [scopeKey(gate, plan, known(state, plan.id).attempt)]
        : scopeKeys(state, gate);
    for (const key of keys) next = tripGate(next, gate.id, key);
  }
  return next;
}
