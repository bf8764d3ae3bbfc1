import { alarmOf } from '../rules/alarms.ts';
import type { RunState } from '../model/state.ts';
import type { Observation, Readings } from '../model/types.ts';
import { accept, refuse, refuseByStatus, type Decision } from './refusal.ts';

/** What the host tells. Goes through the same gate as what people ask. */
export function observe(state: RunState, seen: Observation, now: Readings): Decision {
  if (state.status === 'closed') return observeClosed(seen);
  if (seen.kind === 'session-opened') {
    if (now.session === state.clock.anchor.session)
      return refuse('session-already-open', 'This page has opened the run already.');
    return accept({
      kind: 'session-opened',
      lastHeartbeat: seen.lastHeartbeat ?? null,
      tornRecords: seen.tornRecords,
    });
  }
  if (now.session !== state.clock.anchor.session) {
    return refuse(
      'session-not-opened',
      'This page has not opened the run. Open the session first, so that the gap is seen.',
    );
  }
  switch (seen.kind) {
    case 'session-closed':
      return accept({ kind: 'session-closed' });
    case 'storage-failed':
      return state.storageDown
        ? refuse('storage-down', 'The storage is down already.')
        : accept({ kind: 'storage-failed', text: seen.text });
    case 'storage-mended':
      return state.storageDown
        ? accept({ kind: 'storage-mended' })
        : refuse('storage-up', 'The storage works already.');
    case 'alarm-handed':
    case 'alarm-failed':
      return alarmTold(state, seen);
    case 'tick':
      return accept();
  }
}

/** Once a cause each (I-09). A cause that was answered meanwhile may still be told of. */
function alarmTold(
  state: RunState,
  seen: Extract<Observation, { kind: 'alarm-handed' | 'alarm-failed' }>,
): Decision {
  const timer = state.timers[seen.timer];
  if (!timer) {
    return refuse(
      'timer-closed',
      `Timer is “${seen.timer}”; allowed: one that runs or calls. It has ended.`,
    );
  }
  if (!(Number.isInteger(seen.cause) && seen.cause >= 1 && seen.cause <= timer.cause)) {
    return refuse(
      'out-of-range',
      `cause is ${seen.cause}; allowed: 1 to ${timer.cause}, as the clock shows it.`,
    );
  }
  const known = alarmOf(state, seen.timer, seen.cause);
  const told = seen.kind === 'alarm-handed' ? known?.handed === true : known?.failed != null;
  return told
    ? refuse('already-told', 'This was told already; once for each cause is enough.')
    : accept(seen);
}

/** A closed run may be looked at: pages that open it, leave it, or see time pass change nothing. */
function observeClosed(seen: Observation): Decision {
  switch (seen.kind) {
    case 'session-opened':
    case 'session-closed':
    case 'tick':
      return accept();
    default:
      return refuseByStatus('closed');
  }
}
