import { bench, describe } from 'vitest';
import { buildPlan } from '../../src/core/plan/index.ts';
import { outlookOf, simulateRun } from '../../src/core/run/index.ts';
import { DEMOS, kitchenOf, planOfDemo } from '../core/plan/support/plans.ts';

const SUNDAY = Date.parse('2027-04-18T13:00:00Z');

/**
 * What everything else is measured against: a million steps of a fixed
 * arithmetic, so that a slow machine slows both alike.
 */
function referenceLoop(): number {
  let state = 1;
  for (let step = 0; step < 1e6; step++) state = (Math.imul(state, 1664525) + 1013904223) | 0;
  return state;
}

describe('a plan against a million steps of arithmetic', () => {
  bench('reference loop', () => {
    referenceLoop();
  });
  for (const demo of DEMOS) {
    const kitchen = kitchenOf(demo);
    bench(`plan of ${demo}`, () => {
      buildPlan(kitchen);
    });
  }
  const { timetable } = planOfDemo('mountain-gas');
  const kitchen = kitchenOf('mountain-gas');
  bench('mountain-gas planned again', () => {
    buildPlan(kitchen, { previousS: timetable.startS });
  });
  const planned = buildPlan(kitchen, { startWallMs: SUNDAY });
  const midS = planned.timetable.finishS / 2;
  const { view } = simulateRun(planned, { untilS: midS });
  bench('replan of mountain-gas mid-run', () => {
    outlookOf(view, SUNDAY + midS * 1000);
  });
});
