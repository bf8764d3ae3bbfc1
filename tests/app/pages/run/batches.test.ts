import { expect, it } from 'vitest';
import { batchBoard } from '../../../../src/app/pages/run/kitchen/batches.ts';
import { buildPlan } from '../../../../src/core/plan/index.ts';
import { simulateRun } from '../../../../src/core/run/index.ts';
import { kitchenOf, only } from '../../../core/plan/support/plans.ts';

const plan = buildPlan(only(kitchenOf('mountain-gas'), 'range-top', 'sink-steel'));

/** The board so long after the start of the run. */
function boardAt(untilS: number): readonly string[] {
  return batchBoard(simulateRun(plan, { untilS }).view).map(({ state }) => state);
}

it('says of each batch whether it is done, in the pot, next or to come', () => {
  const first = plan.steps.find(({ work }) => work.on === 'utensils' && work.batch?.number === 1);
  const begun = simulateRun(plan).facts.find(
    ({ body }) => body.kind === 'step-started' && body.step === first?.id,
  );
  const startS = (begun?.at.wallMs ?? Number.NaN) / 1000;
  expect(boardAt(60)).toEqual(['next', 'to-come', 'to-come', 'to-come', 'to-come', 'to-come']);
  expect(boardAt(startS + 1)).toEqual(['now', 'next', 'to-come', 'to-come', 'to-come', 'to-come']);
  expect(boardAt(startS + 24 * 3600)).toEqual(Array.from({ length: 6 }, () => 'done'));
});

it('is empty where nothing is dipped', () => {
  const { utensils: _none, ...kitchen } = only(kitchenOf('mountain-gas'), 'sink-steel');
  const { view } = simulateRun(buildPlan(kitchen), { untilS: 1 });
  expect(batchBoard(view)).toEqual([]);
});
