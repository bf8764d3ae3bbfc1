import type { AlarmState, RunState } from '../model/state.ts';
import type { AlarmFailure } from '../model/types.ts';

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
    const timer = state.timers[id];
    if (!timer || timer.cause !== cause || timer.acknowledged) continue;
    if (last !== 'failed' || failed === null) continue;
    failures.push({
      timer: id,
      cause,
      step: timer.step,
      label: timer.spec.label,
      text: failed,
    });
  }
  return failures;
}
