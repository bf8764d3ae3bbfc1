import { describe, expect, it } from 'vitest';
import {
  checklistOf,
  forgetTicks,
  isTicked,
  openLines,
  tick,
} from '../../../../src/app/pages/run/step/lists/ticks.ts';
import { simulateRun, type StepView } from '../../../../src/core/run/index.ts';
import { planOfDemo } from '../../../core/plan/support/plans.ts';

/** A cleaning step in hand, with a list of several lines. */
function cleaning(): StepView {
  let found: StepView | undefined;
  simulateRun(planOfDemo('flat-coils'), {
    untilS: 6 * 3600,
    script: (seen) => {
      found ??= seen.steps.find((step) => checklistOf(step).length > 1);
      return [];
    },
  });
  return found ?? expect.fail('no list was worked on');
}

describe('the ticks of a cleaning list', () => {
  it('are of this run: another one of the same steps begins with none', () => {
    const step = cleaning();
    const [first] = checklistOf(step);
    if (!first) throw new Error('The list is empty.');
    tick(step, [first]);
    expect(isTicked(step, first)).toBe(true);
    expect(openLines(step)).toHaveLength(checklistOf(step).length - 1);
    forgetTicks();
    expect(isTicked(step, first)).toBe(false);
    expect(openLines(step)).toEqual(checklistOf(step));
  });
});
