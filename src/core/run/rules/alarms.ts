import type { AlarmState, RunState } from '../model/state.ts';
import type { AlarmFailure } from '../model/types.ts';
import { coolingById } from '../timers/cooling.ts';
import { policyOf } from './faults.ts';

export function alarmKey(timer: string, cause: number): string {
  return `${timer}!${cause}`;
}

/** What the device told of the sound of this cause, if anything. */
export function alarmOf(state: RunState, timer: string, cause: number): AlarmState | undefined {
  return state.alarms[alarmKey(timer, cause)];
}

/** Alarms whose last word is that they could not be sounded, and which nobody has answered. */
export function failedAlarms(state: RunState): readonly AlarmFailure[] {
  const failures: AlarmFailure[] = [];
  for (const { timer: id, cause, failed, last } of Object.values(state.alarms)) {
    const timer = state.timers[id] ?? coolingById(state, id);
    if (!timer || timer.cause !== cause || timer.acknowledged) continue;
    if (last !== 'failed' || failed === null) continue;
    const about =
      'spec' in timer
        ? { step: timer.step, label: timer.spec.label }
        : {
            step: state.faults.find((one) => one.id === timer.fault)?.step ?? null,
            label: policyOf(state.plan, 'burned').name,
          };
    failures.push({ timer: id, cause, ...about, text: failed });
  }
  return failures;
}
