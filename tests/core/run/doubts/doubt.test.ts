import { asWritten } from '../../../../src/core/messages/index.ts';
import { describe, expect, it } from 'vitest';
import type { TimerSpec } from '../../../../src/core/plan/index.ts';
import { DAY_S, purgePlan, smallPlan } from '../support/fixtures.ts';
import { resting, Tablet } from '../support/tablet.ts';

const doubt = { kind: 'report-recheck', fixture: 'sink', text: 'Somebody drained pasta.' } as const;

const SET: TimerSpec = {
  id: 'set',
  role: 'hold',
  purpose: 'at-least',
  lengthS: 900,
  label: asWritten('The glue sets'),
};

/** The purge plan with a cover of the sink that needs nothing, has a clock and can break off. */
function withCover(): Tablet {
  const steps = purgePlan.steps.map((one) =>
    one.id === 'cover-sink'
      ? {
          ...one,
          needs: [],
          demands: {},
          stages: one.stages.map((stage) => ({
            ...stage,
            timers: [SET],
            resumption: 'ask' as const,
          })),
        }
      : one,
  );
  const tablet = new Tablet({ ...purgePlan, steps });
  tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'cover-sink' });
  return tablet;
}

describe('a doubt about a fixture', () => {
  it('begins no rest that has not begun: its cleaning comes first', () => {
    // Verifies: I-17, I-11
    const tablet = new Tablet(smallPlan);
    tablet.does({ kind: 'start-run' }, doubt);
    expect(tablet.step('rest-sink')).toMatchObject({ attempt: 1, status: 'waiting' });
  });

  it('begins a rest again that was left out with a reason', () => {
    // Verifies: I-17
    const tablet = new Tablet(smallPlan);
    tablet.does({ kind: 'start-run' });
    for (const step of ['clean-sink', 'rest-sink'])
      tablet.does({ kind: 'skip-step', step, reason: 'Never used.' });
    expect(tablet.step('boil-1').status).toBe('ready');
    tablet.does(doubt);
    expect(tablet.step('rest-sink')).toMatchObject({ attempt: 2, status: 'active' });
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('needs-unmet');
  });

  it('sends work in progress that is not hot back, with its clocks and questions and no others', () => {
    // Verifies: I-17, I-04
    const tablet = withCover();
    tablet.does({ kind: 'start-step', step: 'boil-1' });
    tablet.does({ kind: 'answer-gate', gate: 'air', scopeKey: 'run', answer: 'yes' });
    tablet.opens('burner-clear', 'glow#1');
    tablet.does({ kind: 'start-step', step: 'glow' });
    tablet.says('glow');
    tablet.restarts(10);
    expect(tablet.view.review.map(({ step }) => step)).toEqual(['boil-1', 'glow', 'cover-sink']);
    tablet.does(doubt);
    expect(tablet.step('cover-sink')).toMatchObject({ attempt: 2, status: 'ready' });
    expect(tablet.hasClock('cover-sink')).toBe(false);
    expect(tablet.hasClock('glow#1/warm-up')).toBe(true);
    expect(tablet.view.review.map(({ step }) => step)).toEqual(['glow']);
    // What is hot is made safe first, and then waits anew.
    expect(tablet.step('boil-1').status).toBe('unwinding');
    tablet.does(doubt, { kind: 'confirm-safe', step: 'boil-1' });
    expect(tablet.step('boil-1')).toMatchObject({ attempt: 2, status: 'ready' });
  });

  it('renews what was boiled for it, whose kettle belongs to no fixture', () => {
    // Verifies: I-17
    const steps = smallPlan.steps.map((one) => {
      const { fixture: _, ...loose } = one;
      return one.kind === 'boil' ? loose : one;
    });
    const tablet = resting({ ...smallPlan, steps });
    tablet.passes(DAY_S + 20);
    tablet.does({ kind: 'start-step', step: 'boil-1' });
    tablet.passes(240);
    tablet.says('boil-1');
    tablet.opens('scald-dress');
    tablet.does({ kind: 'start-step', step: 'pour-1' });
    tablet.says('pour-1');
    tablet.says('pour-1');
    tablet.does(doubt);
    expect(tablet.step('pour-1')).toMatchObject({ attempt: 2, status: 'waiting' });
    expect(tablet.step('boil-1')).toMatchObject({ attempt: 2, status: 'waiting' });
    // Nobody has boiled for the second kettle yet.
    expect(tablet.step('boil-2').attempt).toBe(1);
    expect(tablet.step('rest-hob').attempt).toBe(1);
  });
});
