import { describe, expect, it } from 'vitest';
import { buildPlan } from '../../../../src/core/plan/index.ts';
import { kitchenOf, only, withMethod } from '../../plan/support/plans.ts';
import { begins, finishes, hears, heatingOven } from '../support/hands.ts';
import type { Tablet } from '../support/tablet.ts';

/** The oven is on, and a kettle is poured at the sink across the room. */
function heating(method: 'self-clean' | 'light-heat'): Tablet {
  const kitchen = withMethod(kitchenOf('flat-coils'), 'oven', method);
  return heatingOven(buildPlan(only(kitchen, 'oven', 'sink')));
}

/** A kettle boils and is being poured: hands are at work. */
function pours(tablet: Tablet): void {
  const boil = tablet.view.steps.find(
    ({ step, status }) => step.kind === 'boil' && status === 'ready',
  );
  finishes(tablet, boil?.step.id ?? '');
  const pour = tablet.view.steps.find(
    ({ step, status }) => step.kind === 'pour' && status === 'ready',
  );
  begins(tablet, pour?.step.id ?? '');
  hears(tablet);
}

function firstShown(tablet: Tablet): string | undefined {
  return tablet.view.currentSteps[0]?.step.id;
}

describe('a press that is due at an oven', () => {
  it('is shown before a pour that goes on beside it', () => {
    const tablet = heating('self-clean');
    pours(tablet);
    expect(tablet.step('heat-oven')).toMatchObject({ stage: 0, canConfirm: true });
    expect(firstShown(tablet)).toBe('heat-oven');
    // Begun, it waits by itself, and the pour is what is to be done.
    tablet.says('heat-oven');
    expect(firstShown(tablet)).toMatch(/^pour-/);
  });

  it('stays first when its wait is over and the sound was answered', () => {
    const soon = heating('light-heat');
    soon.says('heat-oven');
    pours(soon);
    expect(firstShown(soon)).toMatch(/^pour-/);
    const tablet = heating('light-heat');
    tablet.says('heat-oven');
    tablet.passes(3 * 3600);
    pours(tablet);
    expect(tablet.view.timers.filter(({ alerting }) => alerting)).toEqual([]);
    expect(tablet.step('heat-oven')).toMatchObject({ stage: 1, canConfirm: true });
    expect(firstShown(tablet)).toBe('heat-oven');
  });
});
