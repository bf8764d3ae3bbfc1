import { page } from './page.ts';
import { recovery } from './recovery.ts';
import { step } from './step.ts';
import { stop } from './stop.ts';
import { timers } from './timers.ts';

/** The run page: the step in hand, timers, what stops it. */
export const run = {
  ...page,
  ...step,
  ...timers,
  ...stop,
  ...recovery,
};
