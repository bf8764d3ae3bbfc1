import { asWritten, message } from '../../messages/index.ts';
import type { Gate, Step } from '../../plan/index.ts';
import { indexOf } from '../model/plan-index.ts';
import type { GateState, RunState } from '../model/state.ts';
import { elapsed } from '../model/elapsed-interval.ts';
import type { Readings } from '../model/types.ts';

/** Key under which a gate is remembered for a step: once a run, once a fixture, or every attempt. */
export function scopeKey(gate: Gate, step: Step, attempt: number): string {
  switch (gate.scope) {
    case 'run':
      return 'run';
    case 'fixture':
      return step.fixture ?? 'run';
    case 'step':
      return `${step.id}#${attempt}`;
  }
}

/** Every key under which a gate may be answered now. */
export function scopeKeys(state: RunState, gate: Gate): readonly string[] {
  if (gate.scope === 'run') return ['run'];
  const keys = state.plan.steps
    .filter((step) => step.gates.includes(gate.id))
    .map((step) => scopeKey(gate, step, state.steps[step.id]?.attempt ?? 1));
  return [...new Set(keys)];
}

/** The steps that a key of a gate stands for now; of a key for the whole run, all that ask for it. */
export function stepsOfScope(state: RunState, gateId: string, key: string): readonly Step[] {
  const gate = indexOf(state.plan).gates.get(gateId);
  if (!gate) return [];
  return state.plan.steps.filter(
    (step) =>
      step.gates.includes(gateId) &&
      scopeKey(gate, step, state.steps[step.id]?.attempt ?? 1) === key,
  );
}

function gateKey(gate: string, scope: string): string {
  return `${gate}@${scope}`;
}

/** What is known of a gate: unknown until a person has answered. */
export function gateState(state: RunState, gate: string, scope: string): GateState {
  return (
    state.gates[gateKey(gate, scope)] ?? {
      gate,
      scopeKey: scope,
      value: 'unknown',
      tripped: false,
      settling: null,
      overriddenBy: '',
      lapsed: false,
    }
  );
}

export function putGate(state: RunState, gate: GateState): RunState {
  return { ...state, gates: { ...state.gates, [gateKey(gate.gate, gate.scopeKey)]: gate } };
}

/** Seconds until the settle time of a cleared gate is over. */
export function settlesInS(gate: Gate, known: GateState, now: Readings): number {
  if (!known.settling) return 0;
  return Math.max(0, gate.settleS - elapsed(known.settling, now).atLeastS);
}

/** Open means: answered yes, and settled. Unknown is never yes (I-05). */
function isOpen(gate: Gate, known: GateState, now: Readings): boolean {
  return known.value === 'yes' && settlesInS(gate, known, now) === 0;
}

export type StepGate = { readonly gate: Gate; readonly known: GateState };

/** A gate that the plan names and does not describe: nobody can open it (I-05). */
function missingGate(id: string): Gate {
  const ask = message('engine.gate.undescribed', { id });
  return {
    id,
    kind: 'caution',
    signal: 'DANGER',
    ask,
    say: ask,
    scope: 'run',
    trippedBy: [],
    settleS: 0,
    makeSafe: asWritten(''),
  };
}

/** The gates of a step, in the order of its plan. */
export function gatesOfStep(
  state: RunState,
  step: Step,
  attempt: number,
  now: Readings,
): readonly StepGate[] {
  const { gates } = indexOf(state.plan);
  return step.gates.map((id) => {
    const gate = gates.get(id) ?? missingGate(id);
    const known = gateState(state, id, scopeKey(gate, step, attempt));
    return { gate, known: hasLapsed(state, gate, known, now) ? forgotten(known) : known };
  });
}

export function shutGates(
  state: RunState,
  step: Step,
  attempt: number,
  now: Readings,
): readonly StepGate[] {
  return gatesOfStep(state, step, attempt, now).filter(
    ({ gate, known }) => !isOpen(gate, known, now),
  );
}

/** Condition gates that were tripped and are not open again: they hold the whole run. */
export function trippedGates(state: RunState, now: Readings): readonly StepGate[] {
  const { gates } = indexOf(state.plan);
  const shut: StepGate[] = [];
  for (const known of Object.values(state.gates)) {
    const gate = gates.get(known.gate);
    if (gate?.kind === 'condition' && known.value !== 'unknown' && !isOpen(gate, known, now)) {
      shut.push({ gate, known });
    }
  }
  return shut;
}

function forgotten(known: GateState): GateState {
  return { ...known, value: 'unknown', settling: null, overriddenBy: '' };
}

/**
 * Gloves, shoes and a dry floor are a matter of who stands there now: a yes
 * lapses with the time nobody had a hand on the work, whatever that time was
 * (a rest, a pause, a gap and its review together).
 */
function hasLapsed(state: RunState, gate: Gate, known: GateState, now: Readings): boolean {
  if (gate.lapsesS === undefined || known.value !== 'yes') return false;
  return known.lapsed || awayS(state, now) > gate.lapsesS;
}

function awayS({ away }: RunState, now: Readings): number {
  return away ? elapsed(away, now).atMostS : 0;
}

/** Marks what lapsed until now, before a hand is on the work again. */
export function markLapsed(state: RunState, now: Readings): RunState {
  const { gates } = indexOf(state.plan);
  let next = state;
  for (const known of Object.values(state.gates)) {
    const gate = gates.get(known.gate);
    if (gate && !known.lapsed && hasLapsed(state, gate, known, now))
      next = putGate(next, { ...known, lapsed: true });
  }
  return next;
}

/**
 * Forgets for good the answers that lapse over a gap of `gapS` seconds: nobody
 * knows who stands there now, whatever is said of the clock later.
 */
export function lapseGates(state: RunState, gapS: number): RunState {
  const { gates } = indexOf(state.plan);
  let next = state;
  for (const known of Object.values(state.gates)) {
    const lapsesS = gates.get(known.gate)?.lapsesS;
    if (known.value === 'yes' && lapsesS !== undefined && gapS > lapsesS)
      next = putGate(next, forgotten(known));
  }
  return next;
}
