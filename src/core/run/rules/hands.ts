import type { Fact, FactBody } from '../model/facts.ts';
import { markLapsed } from './gates.ts';
import { stepOf } from '../model/plan-index.ts';
import type { RunState } from '../model/state.ts';
import { clockBase } from '../timers/unproved-time.ts';
import { startInterval } from '../model/elapsed-interval.ts';

/** Does this fact show a person at the work? An alarm answered in passing or a note does not. */
function handsOn({ plan }: RunState, body: FactBody): boolean {
  switch (body.kind) {
    case 'step-started':
    case 'stage-ended':
      return body.by === 'person' && stepOf(plan, body.step).attention !== 'none';
    case 'gate-answered':
      return body.answer === 'yes';
    case 'gate-overridden':
    case 'safe-confirmed':
      return true;
    default:
      return false;
  }
}

/** What lapsed while nobody had a hand on the work has lapsed for good, before `change`; then the time without a hand begins anew. */
export function withHands(
  state: RunState,
  { at, body }: Fact,
  change: (state: RunState) => RunState,
): RunState {
  if (!handsOn(state, body)) return change(state);
  const changed = change(markLapsed(state, at));
  return { ...changed, away: startInterval(at, clockBase(changed.clock)) };
}
