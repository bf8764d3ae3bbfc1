import type { Activity } from '../../../src/core/schedule/index.ts';

/** An activity that holds nothing unless told. */
export function activity(id: string, durationS: number, more: Partial<Activity> = {}): Activity {
  return { id, durationS, demand: {}, ...more };
}
