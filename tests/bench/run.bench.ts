import { bench, describe } from 'vitest';
import { fold, simulateRun } from '../../src/core/run/index.ts';
import { planOfDemo } from '../core/plan/support/plans.ts';

/** A million steps of a fixed arithmetic: what everything else is measured against. */
function referenceLoop(): number {
  let state = 1;
  for (let step = 0; step < 1e6; step++) state = (Math.imul(state, 1664525) + 1013904223) | 0;
  return state;
}

/**
 * A whole run of days under a simulated clock is to take less than a second:
 * on a machine that does the reference loop in 1 ms, a thousand times it.
 */
describe('a run of days, as a ratio of the reference loop', () => {
  const plan = planOfDemo('hall');
  const { facts } = simulateRun(plan);
  bench('reference loop', () => void referenceLoop());
  bench('a whole run of the largest demo, simulated', () => void simulateRun(plan));
  bench('its journal folded', () => void fold(facts));
});
