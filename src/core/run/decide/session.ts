import { message } from '../../messages/index.ts';
import type { FactBody } from '../model/facts.ts';
import type { RunState } from '../model/state.ts';
import { agreement } from '../model/elapsed-interval.ts';
import type { Heartbeat, Observation, Readings } from '../model/types.ts';
import { accept, refuse, type Decision } from './refusal.ts';

/** Has it the form of readings at all? The store keeps it without a sum. */
function isReadings(beat: Heartbeat): boolean {
  const { wallMs, monoMs, session } = beat as Partial<Heartbeat>;
  return Number.isFinite(wallMs) && Number.isFinite(monoMs) && typeof session === 'string';
}

/**
 * A heartbeat proves life only where its two clocks agree since the last fact
 * of its session: one damaged number would make hours of nothing (I-28).
 */
function proofOf(state: RunState, beat: Heartbeat | undefined): Readings | null {
  if (!beat || !isReadings(beat)) return null;
  const { wallMs, monoMs, session } = beat;
  const { lastAt } = state.clock;
  const own = session === lastAt.session;
  if (own && agreement(lastAt, beat) !== 'agree') return null;
  return { wallMs, monoMs, session };
}

/** Records that a whole heartbeat saw on disk and that are not there now. */
function missingRecords(state: RunState, beat: Heartbeat | undefined): number {
  const seq = beat && isReadings(beat) ? beat.seq : undefined;
  return seq !== undefined && Number.isSafeInteger(seq) ? Math.max(0, seq - state.seq) : 0;
}

/** A page opens the run. A journal whose end is gone is noticed, and a person says when to go on. */
export function openSession(
  state: RunState,
  seen: Extract<Observation, { kind: 'session-opened' }>,
  now: Readings,
): Decision {
  if (now.session === state.clock.anchor.session)
    return refuse('session-already-open', message('engine.session.open'));
  const missing = missingRecords(state, seen.lastHeartbeat);
  const opened: FactBody = {
    kind: 'session-opened',
    lastHeartbeat: proofOf(state, seen.lastHeartbeat),
    tornRecords: seen.tornRecords,
  };
  if (missing === 0) return accept(opened);
  return accept(
    { ...opened, missingRecords: missing },
    {
      kind: 'fault-raised',
      fault: `fault-${state.seq + 2}`,
      faultKind: 'undefined',
      step: null,
      // not shown: a damaged file, for whoever mends it.
      text: `The end of the journal is gone: ${missing} of its records.`,
      timer: null,
      cause: 0,
    },
  );
}
