import { describe, expect, it } from 'vitest';
import { chooseStep, currentStep } from '../../../../src/app/pages/run/step/current-step.ts';
import type { StepView } from '../../../../src/core/run/index.ts';
import { purgePlan } from '../../../core/run/support/fixtures.ts';
import { Tablet } from '../../../core/run/support/tablet.ts';

const { view: fresh } = new Tablet(purgePlan);
const [blank] = fresh.steps as readonly [StepView];

const step = (id: string, status: StepView['status'], more: Partial<StepView> = {}): StepView => ({
  ...blank,
  step: { ...blank.step, id },
  status,
  timers: [],
  ...more,
});
const viewOf = (...currentSteps: StepView[]) => ({ ...fresh, currentSteps });

describe('which step is shown', () => {
  const both = viewOf(step('a', 'ready'), step('b', 'ready'));

  it('is the first, or the one a person took up', () => {
    expect(currentStep(both, undefined, undefined)?.step.id).toBe('a');
    expect(currentStep(both, chooseStep(both, 'b'), 'a')?.step.id).toBe('b');
    expect(chooseStep(both, 'gone')).toBeUndefined();
  });

  it('stays with the choice while gates are answered, and no longer once it is acted on', () => {
    const chosen = chooseStep(both, 'b');
    expect(currentStep(both, chosen, 'b')?.step.id).toBe('b');
    const begun = viewOf(step('a', 'ready'), step('b', 'active', { canConfirm: false }));
    expect(currentStep(begun, chosen, 'b')?.step.id).toBe('a');
  });

  it('keeps the one in hand until it is over, unless another one calls', () => {
    const inHand = step('b', 'active', { canConfirm: true });
    expect(currentStep(viewOf(step('a', 'ready'), inHand), undefined, 'b')?.step.id).toBe('b');
    const calling = step('a', 'checking', {
      timers: [{ alerting: true } as StepView['timers'][number]],
    });
    expect(currentStep(viewOf(calling, inHand), undefined, 'b')?.step.id).toBe('a');
  });
});
