import { byHand } from './by-hand.ts';
import { handwork } from './handwork.ts';
import { heat } from './heat.ts';
import { partNames } from './parts.ts';
import { preparing } from './preparing.ts';
import { water } from './water.ts';

/** What each step of a plan says: titles, details, buttons, timers, questions, making safe. */
export const steps = {
  ...preparing,
  ...handwork,
  ...heat,
  ...byHand,
  ...water,
  ...partNames,
};
