import { describe, expect, it } from 'vitest';
import { buildPlan } from '../../../../../src/core/plan/index.ts';
import { kitchenOf, only, withMethod } from '../../../plan/support/plans.ts';
import { heatingOven } from '../../support/hands.ts';

describe('water for a pour that cannot be', () => {
  it('is not boiled while the oven beside the counter is hot; for the sink across the room it is', () => {
    const kitchen = withMethod(kitchenOf('flat-coils'), 'oven', 'light-heat');
    const tablet = heatingOven(buildPlan(only(kitchen, 'oven', 'counter-right', 'sink')));
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
