import { describe, expect, it } from 'vitest';
import { fold } from '../../../../src/core/run/index.ts';
import { purgePlan } from '../support/fixtures.ts';
import { glowing, Tablet } from '../support/tablet.ts';

/** The page was away during a step, and the person said this of it; gives the question that was asked. */
function answered(tablet: Tablet, answer: 'went-on' | 'unknown' | 'broke-off'): string {
  tablet.restarts(30);
  const question = tablet.view.review[0]?.id ?? '';
  tablet.does({ kind: 'answer-review', question, answer });
  if (tablet.view.askClock) tablet.does({ kind: 'answer-clock', right: true, passed: true });
  return question;
}

function takesBack(tablet: Tablet, question: string): void {
  tablet.does({ kind: 'withdraw-review-answer', question });
  expect(fold(tablet.facts)).toEqual(tablet.state);
}

describe('"it went on", said of a gap and found to be wrong', () => {
  it('can be taken back: what broke off begins again, and its old clock counts for nothing', () => {
    // Verifies: I-25, I-26
    const tablet = glowing(purgePlan);
    tablet.passes(300);
    const question = answered(tablet, 'went-on');
    expect(tablet.view.reviewAnswers).toMatchObject([{ id: question, step: 'glow' }]);
    tablet.passes(60);
    takesBack(tablet, question);
    expect(tablet.step('glow')).toMatchObject({ status: 'active', stage: 1 });
    expect(tablet.kinds()).toContain('stage-restarted');
    expect(tablet.hasClock('/hold/hold')).toBe(false);
    expect(tablet.view.reviewAnswers).toEqual([]);
    expect(tablet.tries({ kind: 'withdraw-review-answer', question })).toBe('unknown-question');
  });

  it('after the wait has ended: it is made safe and done again', () => {
    // Verifies: I-26
    const tablet = glowing(purgePlan);
    tablet.passes(300);
    const question = answered(tablet, 'went-on');
    tablet.passes(400);
    tablet.says('glow');
    expect(tablet.step('glow').stage).toBe(3);
    takesBack(tablet, question);
    expect(tablet.step('glow').status).toBe('unwinding');
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    expect(tablet.step('glow')).toMatchObject({ attempt: 2, status: 'ready' });
  });

  it('after the step was done: it is to be done again, and so is what was done upon it', () => {
    // Verifies: I-22, I-26
    const tablet = glowing(purgePlan);
    tablet.passes(300);
    const question = answered(tablet, 'went-on');
    tablet.passes(400);
    tablet.says('glow');
    tablet.says('glow');
    expect(tablet.step('glow').outcome).toBe('done');
    tablet.passes(3600);
    expect(tablet.view.reviewAnswers).toHaveLength(1);
    takesBack(tablet, question);
    expect(tablet.step('glow')).toMatchObject({ attempt: 2, status: 'ready' });
    expect(tablet.view.fixtures.find(({ id }) => id === 'hob')?.phase).not.toBe('done');
  });

  it('of water: what was poured of it gets its cold water, and both come again', () => {
    // Verifies: I-18, I-26
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    tablet.passes(60);
    const question = answered(tablet, 'went-on');
    tablet.passes(200);
    tablet.says('boil-1');
    tablet.opens('scald-dress');
    tablet.does({ kind: 'start-step', step: 'pour-1' });
    takesBack(tablet, question);
    expect(tablet.step('pour-1').status).toBe('unwinding');
    expect(tablet.step('boil-1')).toMatchObject({ attempt: 2 });
    tablet.does({ kind: 'confirm-safe', step: 'pour-1' });
    expect(tablet.step('pour-1')).toMatchObject({ attempt: 2, status: 'waiting' });
  });

  it('nobody knew, and later somebody does', () => {
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    tablet.passes(60);
    const question = answered(tablet, 'unknown');
    takesBack(tablet, question);
    expect(tablet.kinds()).toContain('stage-restarted');
    expect(tablet.clock('boil-1').atLeastS).toBe(0);
  });

  it('in the middle of the next review, and while paused', () => {
    const tablet = glowing(purgePlan);
    tablet.passes(100);
    const question = answered(tablet, 'went-on');
    tablet.restarts(30);
    expect(tablet.view.status).toBe('reviewing');
    takesBack(tablet, question);
    expect(tablet.view.review).toEqual([]);
    expect(tablet.kinds()).toContain('stage-restarted');
  });

  it('can be taken back only towards less: what broke off stays broken', () => {
    // Verifies: I-25, I-26
    const tablet = glowing(purgePlan);
    tablet.passes(100);
    const question = answered(tablet, 'broke-off');
    expect(tablet.view.reviewAnswers).toEqual([]);
    expect(tablet.tries({ kind: 'withdraw-review-answer', question })).toBe('unknown-question');
  });

  it('is nothing to take back once the work was begun again for another cause', () => {
    const tablet = glowing(purgePlan);
    tablet.passes(100);
    const question = answered(tablet, 'went-on');
    tablet.does({ kind: 'report-fault', fault: 'flame-out', step: 'glow' });
    for (const { id } of tablet.view.faults) tablet.does({ kind: 'clear-fault', faultId: id });
    expect(tablet.kinds()).toContain('stage-restarted');
    expect(tablet.view.reviewAnswers).toEqual([]);
    expect(tablet.tries({ kind: 'withdraw-review-answer', question })).toBe('unknown-question');
  });
});
