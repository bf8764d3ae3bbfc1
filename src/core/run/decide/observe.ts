import type { RunState } from '../state.ts';
import type { Observation, Readings } from '../types.ts';
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
    case 'tick':
      return accept();
  }
}

/** A closed run may be looked at: pages that open it, leave it, or see time pass change nothing. */
function observeClosed(seen: Observation): Decision {
  const storage = seen.kind === 'storage-failed' || seen.kind === 'storage-mended';
  return storage ? refuseByStatus('closed') : accept();
}
