import { describe, expect, it } from 'vitest';
import { fold } from '../../../../src/core/run/index.ts';
import { DAY_S, purgePlan, smallPlan } from '../support/fixtures.ts';
import { glowing, NEW_YEAR_MS, resting, type Tablet } from '../support/tablet.ts';

const HOUR_S = 3600;

/** The sink rested a while, then the clock jumped a day, and the person said that it passed. */
function waved(): Tablet {
  const tablet = resting(smallPlan);
  tablet.passes(HOUR_S);
  tablet.setsClock(DAY_S);
  tablet.does({ kind: 'answer-clock', right: true, passed: true });
  return tablet;
}

describe('an answer about the clock', () => {
  it('can be taken back: the rest that ended by it goes on where it was', () => {
    // Verifies: I-26
    const tablet = waved();
    expect(tablet.step('rest-sink').outcome).toBe('done');
    expect(tablet.view.canWithdrawClock).toBe(true);
    tablet.passes(HOUR_S);
    tablet.does({ kind: 'withdraw-clock-answer' });
    expect(tablet.step('rest-sink')).toMatchObject({ status: 'active', attempt: 2 });
    expect(tablet.view.askClock).toBe(true);
    expect(tablet.clock('rest-sink#2').atLeastS).toBeCloseTo(2 * HOUR_S, -1);
    expect(tablet.view.canWithdrawClock).toBe(false);
    const actualWallMs = NEW_YEAR_MS + tablet.trueS * 1000;
    tablet.does({ kind: 'answer-clock', right: false, actualWallMs });
    expect(tablet.clock('rest-sink#2').atLeastS).toBeCloseTo(2 * HOUR_S, -1);
    expect(fold(tablet.facts)).toEqual(tablet.state);
  });

  it('can be taken back for a fixture whose id every object has', () => {
    // Verifies: I-26
    const steps = smallPlan.steps.map((step) =>
      step.fixture === 'sink' ? { ...step, fixture: 'constructor' } : step,
    );
    const tablet = resting({ ...smallPlan, steps });
    tablet.passes(HOUR_S);
    tablet.setsClock(DAY_S);
    tablet.does({ kind: 'answer-clock', right: true, passed: true });
    expect(tablet.step('rest-sink').outcome).toBe('done');
    tablet.does({ kind: 'withdraw-clock-answer' });
    expect(tablet.clock('rest-sink#2').atLeastS).toBeCloseTo(HOUR_S, -1);
  });

  it('takes with it what was begun upon it, and a rest upon which water was poured begins again', () => {
    // Verifies: I-26, I-17
    const tablet = waved();
    tablet.opens('scald-dress');
    tablet.does({ kind: 'start-step', step: 'boil-1' });
    tablet.passes(240);
    tablet.says('boil-1');
    tablet.does({ kind: 'start-step', step: 'pour-1' });
    tablet.passes(60);
    tablet.does({ kind: 'withdraw-clock-answer' });
    expect(tablet.clock('rest-sink#2').atLeastS).toBe(0);
    expect(tablet.step('pour-1').status).toBe('unwinding');
    tablet.does({ kind: 'confirm-safe', step: 'pour-1' });
    expect(tablet.step('pour-1')).toMatchObject({ status: 'waiting', attempt: 2 });
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('needs-unmet');
  });

  it('leaves alone what did not rest upon it', () => {
    const tablet = resting(smallPlan);
    tablet.passes(DAY_S + 20);
    tablet.setsClock(DAY_S);
    tablet.does({ kind: 'start-step', step: 'clean-hob' });
    tablet.says('clean-hob');
    tablet.tries({ kind: 'answer-clock', right: true, passed: true });
    tablet.tries({ kind: 'withdraw-clock-answer' });
    expect(tablet.step('rest-sink')).toMatchObject({ outcome: 'done', attempt: 1 });
  });

  it('a word given under it about a rest falls with it', () => {
    // Verifies: I-26
    const tablet = resting(smallPlan);
    tablet.passes(HOUR_S);
    tablet.setsClock(6 * HOUR_S);
    tablet.does({ kind: 'answer-clock', right: true, passed: false });
    tablet.does({
      kind: 'correct-time',
      timer: tablet.clock('/rest').id,
      sinceWallMs: tablet.readings().wallMs - 7 * HOUR_S * 1000,
      reason: 'By the clock.',
    });
    expect(tablet.clock('/rest').atLeastS).toBeCloseTo(7 * HOUR_S, -1);
    tablet.does({ kind: 'withdraw-clock-answer' });
    expect(tablet.clock('/rest').atLeastS).toBeCloseTo(HOUR_S, -1);
  });

  it('counts nothing for a gap that is judged only after it was taken back', () => {
    // Verifies: I-26
    const tablet = glowing(purgePlan);
    tablet.passes(100);
    tablet.setsClock(DAY_S);
    tablet.does({ kind: 'answer-clock', right: true, passed: true });
    const [question] = tablet.view.review;
    tablet.does({ kind: 'withdraw-clock-answer' });
    tablet.does({ kind: 'answer-review', question: question?.id ?? '', answer: 'went-on' });
    expect(tablet.clock('/hold/hold').atLeastS).toBeCloseTo(100, -1);
    expect(fold(tablet.facts)).toEqual(tablet.state);
  });

  it('may not lie more than a day ahead of what a clock has shown', () => {
    // Verifies: I-26
    const tablet = resting(smallPlan);
    tablet.setsClock(-HOUR_S);
    const far = NEW_YEAR_MS + (tablet.trueS + DAY_S + 60) * 1000;
    expect(
      tablet.tries({ kind: 'answer-clock', right: false, actualWallMs: far, passed: true }),
    ).toBe('out-of-range');
    const near = NEW_YEAR_MS + tablet.trueS * 1000;
    expect(tablet.tries({ kind: 'answer-clock', right: false, actualWallMs: near })).toBeNull();
  });

  it('that was never given cannot be taken back', () => {
    const tablet = resting(smallPlan);
    expect(tablet.tries({ kind: 'withdraw-clock-answer' })).toBe('nothing-asked');
  });
});
