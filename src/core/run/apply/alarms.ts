import type { FactBody } from '../model/facts.ts';
import { alarmKey, alarmOf } from '../rules/alarms.ts';
import type { RunState } from '../model/state.ts';

/** Writes down what became of a sound; nothing else of the run changes. */
export function applyAlarm(
  state: RunState,
  body: Extract<FactBody, { kind: 'alarm-handed' | 'alarm-failed' }>,
): RunState {
  const { timer, cause } = body;
  const before = alarmOf(state, timer, cause);
  const told =
    body.kind === 'alarm-handed'
      ? ({ handed: true, failed: before?.failed ?? null, last: 'handed' } as const)
      : ({ handed: before?.handed ?? false, failed: body.text, last: 'failed' } as const);
  return {
    ...state,
    alarms: { ...state.alarms, [alarmKey(timer, cause)]: { timer, cause, ...told } },
  };
}
