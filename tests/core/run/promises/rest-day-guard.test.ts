import { describe, expect, it } from 'vitest';
import { asWritten } from '../../../../src/core/messages/index.ts';
import type { Plan } from '../../../../src/core/plan/index.ts';
import { DAY_S, planOf, purgePlan, smallPlan, steps } from '../support/fixtures.ts';
import { glowing, NEW_YEAR_MS, resting, Tablet } from '../support/tablet.ts';

const HOUR_S = 3600;

function withDays(plan: Plan, fromS: number, toS: number, deadlineS?: number): Plan {
  const at = (s: number): number => NEW_YEAR_MS + s * 1000;
  return {
    ...plan,
    days: {
      startWallMs: NEW_YEAR_MS,
      restDays: [{ name: asWritten('the Sabbath'), fromWallMs: at(fromS), toWallMs: at(toS) }],
      ...(deadlineS === undefined
        ? {}
        : { deadline: { name: asWritten('the hour of leaven'), atWallMs: at(deadlineS) } }),
    },
  };
}

/** The burner is lit and warms up, a rest day ahead. */
function warming(fromS: number): Tablet {
  const unlimited = purgePlan.steps.map((one) => ({
    ...one,
    stages: one.stages.map((stage) => ({
      ...stage,
      timers: stage.timers.filter(({ role }) => role !== 'limit'),
    })),
  }));
  const plan = { ...purgePlan, steps: unlimited };
  const tablet = new Tablet(withDays(plan, fromS, fromS + 25 * HOUR_S));
  tablet.does({ kind: 'start-run' });
  tablet.opens('burner-clear', 'glow#1');
  tablet.opens('air');
  tablet.does({ kind: 'start-step', step: 'glow' });
  tablet.says('glow');
  return tablet;
}

describe('one guard before every way into work', () => {
  it('a confirm into a stage that would reach into a rest day is refused; making safe is not', () => {
    // Verifies: I-21
    const tablet = warming(1000);
    tablet.passes(500);
    expect(tablet.tries({ kind: 'confirm', step: 'glow', stage: 'warm-up' })).toBe(
      'reaches-rest-day',
    );
    tablet.passes(600);
    expect(tablet.tries({ kind: 'confirm', step: 'glow', stage: 'warm-up' })).toBe('rest-day');
    expect(tablet.tries({ kind: 'stop-step', step: 'glow', reason: 'It is late.' })).toBeNull();
    expect(tablet.tries({ kind: 'confirm-safe', step: 'glow' })).toBeNull();
  });

  it('what a fault broke is not begun again inside one, but made safe', () => {
    // Verifies: I-21
    const tablet = warming(1000);
    tablet.passes(200);
    tablet.says('glow');
    tablet.passes(100);
    tablet.does({ kind: 'report-fault', fault: 'flame-out', step: 'glow' });
    tablet.passes(900);
    const [fault] = tablet.view.faults;
    tablet.does({ kind: 'clear-fault', faultId: fault?.id ?? '' });
    expect(tablet.kinds()).not.toContain('stage-restarted');
    expect(tablet.step('glow').status).toBe('unwinding');
  });

  it('nor what broke off in a gap', () => {
    // Verifies: I-21
    const tablet = warming(1000);
    tablet.passes(200);
    tablet.says('glow');
    tablet.restarts(1200);
    const [question] = tablet.view.review;
    tablet.does({ kind: 'answer-review', question: question?.id ?? '', answer: 'broke-off' });
    expect(tablet.kinds()).not.toContain('stage-restarted');
    expect(tablet.step('glow').status).toBe('unwinding');
  });

  it('a chained step with heat does not start inside one nor reach into it', () => {
    // Verifies: I-21
    const chained = purgePlan.steps.map((one) =>
      one.id === 'glow'
        ? {
            ...one,
            attention: 'none' as const,
            startsBy: 'chain' as const,
            gates: [],
            needs: [{ step: 'boil-1' }],
          }
        : one,
    );
    const tablet = new Tablet(withDays({ ...purgePlan, steps: chained }, 500, DAY_S));
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    tablet.passes(100);
    tablet.says('boil-1');
    expect(tablet.step('glow').status).toBe('waiting');
    tablet.passes(600);
    expect(tablet.step('glow').status).toBe('waiting');
  });

  it('a resume inside one is refused while work is in progress, and accepted after it', () => {
    // Verifies: I-21
    const tablet = new Tablet(withDays(smallPlan, 1000, DAY_S));
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'clean-sink' });
    tablet.passes(100);
    tablet.does({ kind: 'pause' });
    tablet.passes(1000);
    expect(tablet.tries({ kind: 'resume' })).toBe('rest-day');
    expect(tablet.view.resumeBlockedBy).toHaveLength(1);
    tablet.passes(DAY_S);
    expect(tablet.tries({ kind: 'resume' })).toBeNull();
  });

  it('the last answer of a review leads to a pause, not on with the work', () => {
    // Verifies: I-21, I-06
    const tablet = new Tablet(withDays(smallPlan, 1000, DAY_S));
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'clean-sink' });
    tablet.passes(100);
    tablet.restarts(1500);
    tablet.tries({ kind: 'answer-clock', right: true, passed: true });
    tablet.tries({ kind: 'resume' });
    expect(tablet.view.status).not.toBe('running');
  });

  it('a clock set back inside one does not open it', () => {
    // Verifies: I-21
    for (const look of [true, false]) {
      const tablet = resting(withDays(smallPlan, 1000, DAY_S));
      tablet.passes(1000);
      tablet.setsClock(-6 * HOUR_S, look);
      expect(tablet.tries({ kind: 'start-step', step: 'clean-hob' })).toBe('rest-day');
    }
  });
});

/** All is clean and rested. */
const ready = () =>
  planOf(
    steps
      .filter(({ phase }) => phase !== 'clean' && phase !== 'rest')
      .map((one) => ({
        ...one,
        needs: one.needs.filter((need) => !need.step.startsWith('rest-')),
      })),
  );

describe('the hour of leaven', () => {
  it('is in the view, and a purge that would end after it does not begin', () => {
    // Verifies: I-21
    const tablet = new Tablet(withDays(ready(), 5 * DAY_S, 6 * DAY_S, 1500));
    tablet.does({ kind: 'start-run' });
    tablet.opens('burner-clear', 'glow#1');
    tablet.opens('air');
    expect(tablet.view.deadline).toEqual({
      name: asWritten('the hour of leaven'),
      atWallMs: NEW_YEAR_MS + 1_500_000,
      leftS: 1500,
      hardLeftS: 1500,
    });
    expect(tablet.step('glow').status).toBe('ready');
    tablet.passes(700);
    expect(tablet.tries({ kind: 'start-step', step: 'glow' })).toBe('reaches-deadline');
    tablet.passes(900);
    expect(tablet.view.deadline?.leftS).toBe(0);
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('past-deadline');
  });

  it('lets a purge begin until the end that nothing passes, and says what is asked meanwhile', () => {
    // Verifies: I-21
    const dated = withDays(ready(), 5 * DAY_S, 6 * DAY_S, 1500);
    const hard = {
      name: asWritten('candle lighting'),
      atWallMs: NEW_YEAR_MS + 9_000_000,
      asks: asWritten('Ask first.'),
    };
    const { days } = dated;
    const deadline = {
      name: asWritten('the fourth hour'),
      atWallMs: NEW_YEAR_MS + 1_500_000,
      hard,
    };
    const tablet = new Tablet({ ...dated, ...(days && { days: { ...days, deadline } }) });
    tablet.does({ kind: 'start-run' });
    tablet.opens('burner-clear', 'glow#1');
    tablet.opens('air');
    tablet.passes(2000);
    expect(tablet.view.deadline).toMatchObject({ leftS: 0, hardLeftS: 7000, hard });
    expect(tablet.tries({ kind: 'start-step', step: 'glow' })).toBeNull();
    tablet.passes(7100);
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('past-deadline');
  });

  it('does not hinder what is no purge, nor making safe', () => {
    const tablet = glowing(withDays(purgePlan, 5 * DAY_S, 6 * DAY_S, 900));
    tablet.passes(1000);
    expect(tablet.tries({ kind: 'confirm', step: 'glow', stage: 'hold' })).toBeNull();
    expect(tablet.tries({ kind: 'confirm', step: 'glow', stage: 'off' })).toBeNull();
    expect(tablet.step('cool').status).toBe('active');
  });
});
