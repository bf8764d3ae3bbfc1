import type { RunState } from '../../../../src/core/run/index.ts';
import { inEnglish } from '../../../support/english.ts';

/** What a folded run came to, in few words that stay the same when the state gains fields. */
export function summary(state: RunState): unknown {
  return {
    seq: state.seq,
    status: state.status,
    closedAs: state.closedAs,
    reason: inEnglish.say(state.reason),
    steps: Object.fromEntries(
      Object.entries(state.steps).map(([id, one]) => [
        id,
        `#${one.attempt} ${one.status} ${one.outcome ?? '-'} ${inEnglish.say(one.reason)}`.trim(),
      ]),
    ),
    faults: state.faults.map(({ kind, policy, cleared }) => `${kind} ${policy} ${cleared}`),
    gates: Object.values(state.gates).map(({ gate, scopeKey, value }) => `${gate} ${scopeKey} ${value}`),
    errorS: state.clock.errorS,
  };
}
