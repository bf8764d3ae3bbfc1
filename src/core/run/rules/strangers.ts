import type { FactBody } from '../model/facts.ts';
import { indexOf } from '../model/plan-index.ts';
import type { RunState } from '../model/state.ts';
import { scopeKeys } from './gates.ts';

/**
 * The gate or the timer that a fact names and the run has not, or null. What is
 * decided here never names one; a file from elsewhere may.
 */
export function namesNothing(state: RunState, body: FactBody): string | null {
  switch (body.kind) {
    case 'gate-answered':
    case 'gate-overridden': {
      const gate = indexOf(state.plan).gates.get(body.gate);
      if (!gate) return body.gate;
      return scopeKeys(state, gate).includes(body.scopeKey) ? null : body.scopeKey;
    }
    case 'alarm-handed':
    case 'alarm-failed':
      return Object.hasOwn(state.timers, body.timer) ? null : body.timer;
    default:
      return null;
  }
}
