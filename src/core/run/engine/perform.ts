import { apply } from '../apply/index.ts';
import { MAX_ROUNDS } from '../model/constants.ts';
import { decide } from '../decide/index.ts';
import type { Refusal } from '../decide/refusal.ts';
import type { Plan } from '../../plan/index.ts';
import type { Fact, FactBody } from '../model/facts.ts';
import type { RunState } from '../model/state.ts';
import { clocks, nextFacts } from './turn.ts';
import type { Observation, Readings, Request } from '../model/types.ts';

/** New facts with the state after them; nothing of it is true before the facts are on disk (I-03). */
export type Performed =
  { readonly facts: readonly Fact[]; readonly state: RunState } | { readonly refusal: Refusal };

/** Makes the id of a fact; the default is unique within a run. */
export type IdMaker = (seq: number, readings: Readings) => string;

const defaultId: IdMaker = (seq, readings) => `${readings.session}-${seq}`;

/** A fact cannot be changed once it is said; the plan inside the first one is data the engine never writes. */
function freeze(seq: number, id: string, at: Readings, body: FactBody): Fact {
  return Object.freeze({ seq, id, at: Object.freeze({ ...at }), body: Object.freeze(body) });
}

/**
 * Begins a run over a plan.
 * @param notBeforeWallMs wall time before which no honest clock of this device can stand (when the app was built), ms
 * @param app version of the app, for the record
 */
export function createRun(
  plan: Plan,
  readings: Readings,
  notBeforeWallMs = 0,
  idMaker: IdMaker = defaultId,
  app?: string,
): { readonly facts: readonly Fact[]; readonly state: RunState } {
  const fact = freeze(1, idMaker(1, readings), readings, {
    kind: 'drafted',
    plan,
    notBeforeWallMs,
    ...(app !== undefined && { app }),
  });
  return { facts: [fact], state: apply(null, fact) };
}

/**
 * Decides, then runs the turn until it is quiet. Gives all new facts and the
 * state after them, or the refusal with nothing changed. The host appends the
 * facts and waits for the disk before it shows or sounds anything of them.
 */
export function perform(
  state: RunState,
  asked: Request | Observation,
  readings: Readings,
  idMaker: IdMaker = defaultId,
): Performed {
  const facts: Fact[] = [];
  let next = state;
  const take = (bodies: readonly FactBody[]): void => {
    for (const body of bodies) {
      const seq = next.seq + 1;
      const fact = freeze(seq, idMaker(seq, readings), readings, body);
      facts.push(fact);
      next = apply(next, fact);
      if (next.status === 'closed') return;
    }
  };
  // What the clocks show comes first: nothing is decided by a time that is in doubt unseen.
  if (open(state) && asked.kind !== 'session-opened') take(clocks(state, readings));
  const decision = decide(next, asked, readings);
  if ('refusal' in decision) return decision;
  take(decision.facts);
  for (let round = 0; round < MAX_ROUNDS; round += 1) {
    const bodies = nextFacts(next, readings);
    if (bodies.length === 0) return { facts, state: next };
    take(bodies);
  }
  take([unsettledTurn(next)]);
  return { facts, state: next };
}

function open({ status }: RunState): boolean {
  return status !== 'closed' && status !== 'drafting';
}

/** A turn that finds no rest is a fault of the plan or the engine: suspended and written down (I-16). */
function unsettledTurn(state: RunState): FactBody {
  return {
    kind: 'fault-raised',
    fault: `fault-${state.seq + 1}`,
    faultKind: 'undefined',
    step: null,
    // not shown: a mistake of ours, for whoever mends it.
    text: `A turn did not come to rest after ${MAX_ROUNDS} rounds.`,
    timer: null,
    cause: 0,
  };
}
