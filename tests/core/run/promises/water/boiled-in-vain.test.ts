import { describe, expect, it } from 'vitest';
import { buildPlan } from '../../../../../src/core/plan/index.ts';
import { kitchenOf, only, withMethod } from '../../../plan/support/plans.ts';
import { Tablet } from '../../support/tablet.ts';

const DAY_S = 86_400;

/** All is clean, dry and rested; the oven beside the counter is being heated. */
function heating(): Tablet {
  const kitchen = withMethod(kitchenOf('flat-coils'), 'oven', 'light-heat');
  const plan = buildPlan(only(kitchen, 'oven', 'counter-right', 'sink'));
  const tablet = new Tablet(plan);
  tablet.does({ kind: 'start-run' });
  for (const step of plan.steps)
    if (step.phase === 'prepare' || step.phase === 'clean') finishes(tablet, step.id);
  tablet.passes(DAY_S + 60);
  for (const { step, status } of tablet.view.steps)
    if ((step.kind === 'boil-over' || step.kind === 'dry') && status === 'ready')
      finishes(tablet, step.id);
  begins(tablet, 'heat-oven');
  return tablet;
}

function begins(tablet: Tablet, id: string): void {
  for (const { gate, scopeKey } of tablet.step(id).gates) tablet.opens(gate.id, scopeKey);
  tablet.does({ kind: 'start-step', step: id });
}

function finishes(tablet: Tablet, id: string): void {
  begins(tablet, id);
  for (const stage of tablet.step(id).step.stages) {
    tablet.passes(30);
    if (stage.say) tablet.tries({ kind: 'confirm', step: id, stage: stage.id });
  }
}

describe('water for a pour that cannot be', () => {
  it('is not boiled while the oven beside the counter is hot; for the sink across the room it is', () => {
    const tablet = heating();
    const beside = tablet.step('boil-counter-right-1');
    expect(beside.status).not.toBe('ready');
    expect(beside.blockedBy.map(({ key }) => key)).toContain('engine.resource.place');
    expect(tablet.tries({ kind: 'start-step', step: 'boil-counter-right-1' })).toBe(
      'resource-taken',
    );
    expect(tablet.step('boil-sink-1').blockedBy.map(({ key }) => key)).not.toContain(
      'engine.resource.place',
    );
  });
});
