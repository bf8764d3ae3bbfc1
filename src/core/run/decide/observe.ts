import { message } from '../../messages/index.ts';
import { alarmOf } from '../rules/alarms.ts';
import type { RunState } from '../model/state.ts';
import type { Observation, Readings } from '../model/types.ts';
import { openSession } from './session.ts';
import { coolingById } from '../timers/cooling.ts';
import { timerById } from './timers.ts';
import { accept, refuse, refuseByStatus, type Decision } from './refusal.ts';

/** What the host tells. Goes through the same gate as what people ask. */
export function observe(state: RunState, seen: Observation, now: Readings): Decision {
  if (state.status === 'closed') return observeClosed(seen);
  if (seen.kind === 'session-opened') return openSession(state, seen, now);
  if (now.session !== state.clock.anchor.session) {
    return refuse('session-not-opened', message('engine.session.not-open'));
  }
  switch (seen.kind) {
    case 'session-closed':
      return accept({ kind: 'session-closed' });
    case 'storage-failed':
      return state.storageDown
        ? refuse('storage-down', message('engine.storage.down-already'))
        : accept({ kind: 'storage-failed', text: seen.text });
    case 'storage-mended':
      return state.storageDown
        ? accept({ kind: 'storage-mended' })
        : refuse('storage-up', message('engine.storage.up-already'));
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
  const timer = timerById(state, seen.timer) ?? coolingById(state, seen.timer);
  if (!timer) {
    return refuse('timer-closed', message('engine.timer.ended'));
  }
  if (!(Number.isInteger(seen.cause) && seen.cause >= 1 && seen.cause <= timer.cause)) {
    return refuse(
      'out-of-range',
      message('engine.timer.cause', { found: seen.cause, most: timer.cause }),
    );
  }
  const known = alarmOf(state, seen.timer, seen.cause);
  const told = seen.kind === 'alarm-handed' ? known?.handed === true : known?.failed != null;
  return told ? refuse('already-told', message('engine.timer.told')) : accept(seen);
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
