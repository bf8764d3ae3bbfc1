import type { Ask } from '../../../../src/app/controllers/planner/planner.ts';
import { workOff } from '../../../../src/app/controllers/planner/work-off.ts';

/** A planner without a thread of its own. */
export const askHere: Ask = (name, input, { onProgress = () => undefined, signal } = {}) =>
  workOff(name, input, { isStopped: () => signal?.aborted ?? false, onProgress });
