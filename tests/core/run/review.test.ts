import { asWritten, message } from '../../../src/core/messages/index.ts';
import { describe, expect, it } from 'vitest';
import { perform } from '../../../src/core/run/index.ts';
import { DAY_S, purgePlan, smallPlan } from './support/fixtures.ts';
import { glowing, resting, Tablet } from './support/tablet.ts';

/** Answers the only open question. */
function answers(tablet: Tablet, answer: 'went-on' | 'broke-off' | 'unknown'): void {
  const [question] = tablet.view.review;
  tablet.does({ kind: 'answer-review', question: question?.id ?? '', answer });
}

describe('after a gap', () => {
  it('asks by the kind of the work; nothing starts and nothing resumes by itself', () => {
    const tablet = glowing(purgePlan);
    tablet.passes(100);
    tablet.restarts(120, undefined, 1);
    expect(tablet.view.review).toMatchObject([
      { step: 'glow', ask: asWritten('Did the burner keep glowing?') },
    ]);
    expect(tablet.view.review[0]?.gapS).toBeCloseTo(120, 0);
    expect(tablet.facts.at(-1)?.body).toMatchObject({ kind: 'session-opened', tornRecords: 1 });
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('run-reviewing');
    expect(tablet.tries({ kind: 'resume' })).toBe('review-open');
    tablet.passes(3600);
    expect(tablet.view.status).toBe('reviewing');
    expect(tablet.step('glow').stage).toBe(2);
  });

  it('went on: the gap counts for the glow, once the time is known too', () => {
    const tablet = glowing(purgePlan);
    tablet.passes(100);
    tablet.restarts(300);
    expect(tablet.view.askClock).toBe(true);
    answers(tablet, 'went-on');
    expect(tablet.view.status).toBe('reviewing');
    tablet.does({ kind: 'answer-clock', right: true, passed: true });
    expect(tablet.view.status).toBe('running');
    expect(tablet.clock('/hold/hold').atLeastS).toBeCloseTo(400, 0);
    // And the other way about.
    const other = glowing(purgePlan);
    other.passes(100);
    other.restarts(300);
    other.does({ kind: 'answer-clock', right: true, passed: true });
    expect(other.view.status).toBe('reviewing');
    expect(other.clock('/hold/hold').atLeastS).toBeCloseTo(100, 0);
    answers(other, 'went-on');
    expect(other.clock('/hold/hold').atLeastS).toBeCloseTo(400, 0);
    expect(other.view.status).toBe('running');
  });

  it('broke off, or nobody saw: an unbroken glow goes back to its warm-up with new clocks', () => {
    for (const answer of ['broke-off', 'unknown'] as const) {
      const tablet = glowing(purgePlan);
      const old = tablet.clock('/hold/hold').id;
      tablet.restarts(20);
      answers(tablet, answer);
      expect(tablet.view.status).toBe('running');
      expect(tablet.step('glow')).toMatchObject({ status: 'active', stage: 1 });
      expect(tablet.facts.at(-1)?.body).toMatchObject({
        kind: 'stage-restarted',
        reason: message(
          answer === 'unknown' ? 'engine.because.nobody-saw' : 'engine.because.broke-off',
        ),
      });
      expect(tablet.hasClock(old)).toBe(false);
      tablet.says('glow');
      expect(tablet.clock('/hold/hold').atLeastS).toBe(0);
      expect(tablet.clock('/hold/hold').id).not.toBe(old);
    }
  });

  it('work that a person judges stays when nobody knows, and says that it is unproved', () => {
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    tablet.passes(60);
    tablet.restarts(30);
    answers(tablet, 'unknown');
    expect(tablet.step('boil-1').stage).toBe(0);
    expect(tablet.clock('/boil').status).toBe('unproved');
    expect(tablet.clock('/boil').atLeastS).toBeCloseTo(60, 0);
    // It still comes due, by what is proved.
    tablet.passes(185);
    expect(tablet.clock('/boil').alerting).toBe(true);
  });

  it('what cannot be repeated has failed', () => {
    const plan = {
      ...purgePlan,
      steps: purgePlan.steps.map((one) => ({
        ...one,
        stages: one.stages.map((stage) =>
          stage.id === 'hold' ? { ...stage, resumption: 'void' as const } : stage,
        ),
      })),
    };
    const tablet = glowing(plan);
    tablet.restarts(20);
    answers(tablet, 'broke-off');
    expect(tablet.step('glow').status).toBe('unwinding');
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    expect(tablet.step('glow').outcome).toBe('failed');
    expect(tablet.tries({ kind: 'repeat-step', step: 'glow', reason: 'Again.' })).toBe(
      'cannot-repeat',
    );
  });

  it('a rest is not asked about; its gap counts when the clock is right', () => {
    const tablet = resting(smallPlan);
    tablet.passes(3600);
    tablet.restarts(10 * 3600);
    expect(tablet.view).toMatchObject({ status: 'reviewing', review: [], askClock: true });
    expect(tablet.clock('/rest').atLeastS).toBeCloseTo(3600, -1);
    tablet.does({ kind: 'answer-clock', right: true, passed: true });
    expect(tablet.view.status).toBe('running');
    expect(tablet.clock('/rest').atLeastS).toBeCloseTo(11 * 3600, -1);
  });

  it('a rest that ended while the tablet was off is late, and says so', () => {
    const tablet = resting(smallPlan);
    tablet.restarts(DAY_S + 3600);
    expect(tablet.step('rest-sink').status).toBe('active');
    tablet.does({ kind: 'answer-clock', right: true, passed: true });
    expect(tablet.step('rest-sink').outcome).toBe('done');
    expect(tablet.clock('/rest')).toMatchObject({ status: 'late', alerting: true });
    expect(tablet.clock('/rest').lateByS).toBeGreaterThan(3500);
  });

  it('with nothing to ask still waits for a person, and goes back to where it was', () => {
    const tablet = resting(smallPlan);
    tablet.does({ kind: 'pause' });
    tablet.restarts(5);
    expect(tablet.view).toMatchObject({
      status: 'reviewing',
      review: [],
      askClock: false,
      resumeBlockedBy: [],
    });
    tablet.does({ kind: 'resume' });
    expect(tablet.view.status).toBe('held');
  });

  it('a wall clock before the journal asks for the time', () => {
    const tablet = resting(smallPlan);
    tablet.passes(3600);
    tablet.setsClock(-100 * DAY_S, false);
    tablet.restarts(7200);
    expect(tablet.view.askClock).toBe(true);
    expect(tablet.clock('/rest').atMostS).toBe(Infinity);
    const right = tablet.readings().wallMs + 100 * DAY_S * 1000;
    expect(
      tablet.tries({ kind: 'answer-clock', right: false, actualWallMs: 5, passed: true }),
    ).toBe('out-of-range');
    tablet.does({ kind: 'answer-clock', right: false, actualWallMs: right, passed: true });
    expect(tablet.clock('/rest').atLeastS).toBeCloseTo(10_800, -1);
    expect(tablet.clock('/rest').atMostS).toBeGreaterThanOrEqual(10_800);
  });

  it('no minimum completes while the review is open, even when it is proved', () => {
    // Verifies: I-05
    const tablet = resting(smallPlan);
    tablet.passes(DAY_S - 100);
    tablet.restarts(5);
    tablet.passes(300);
    expect(tablet.clock('/rest')).toMatchObject({ leftS: 0, alerting: false });
    expect(tablet.step('rest-sink').status).toBe('active');
    tablet.does({ kind: 'resume' });
    expect(tablet.step('rest-sink').outcome).toBe('done');
  });

  it('a heartbeat of a page before the last proves nothing', () => {
    const tablet = resting(smallPlan);
    tablet.passes(7200);
    const old = tablet.readings();
    tablet.restarts(5);
    tablet.does({ kind: 'resume' });
    tablet.trueS += 60;
    const done = perform(
      tablet.state,
      { kind: 'session-opened', lastHeartbeat: old, tornRecords: 0 },
      { ...tablet.readings(), session: 'page-3', monoMs: 0 },
    );
    const timer = 'state' in done ? Object.values(done.state.timers)[0] : undefined;
    expect(timer?.span.atLeastS).toBeGreaterThan(7190);
    expect(timer?.span.atLeastS).toBeLessThan(7201);
  });

  it('what nobody saw is not counted later, when the time is told', () => {
    // Verifies: I-05
    const tablet = new Tablet(purgePlan);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    tablet.setsClock(-100 * DAY_S, false);
    tablet.restarts(30);
    answers(tablet, 'unknown');
    const actualWallMs = tablet.readings().wallMs + 100 * DAY_S * 1000;
    tablet.does({ kind: 'answer-clock', right: false, actualWallMs, passed: true });
    expect(tablet.clock('/boil').atLeastS).toBe(0);
  });

  it('after a person said that nobody knows the time, later words count only from there', () => {
    // Verifies: I-05, I-08
    const tablet = glowing(purgePlan);
    tablet.setsClock(-400_000, false);
    tablet.restarts(0);
    answers(tablet, 'went-on');
    tablet.does({ kind: 'answer-clock', right: false });
    tablet.does({ kind: 'acknowledge-timer', timer: tablet.clock('/look').id });
    tablet.restarts(61);
    const actualWallMs = tablet.readings().wallMs + 400_000_000;
    tablet.does({ kind: 'answer-clock', right: false, actualWallMs, passed: true });
    expect(tablet.clock('/look').atLeastS).toBeLessThan(76);
    expect(tablet.clock('/look').atMostS).toBeGreaterThanOrEqual(61);
  });

  it('a page that did not open the run is refused', () => {
    // Verifies: I-12, I-14
    const tablet = resting(smallPlan);
    expect(tablet.tries({ kind: 'session-opened', tornRecords: 0 })).toBe('session-already-open');
    const other = { ...tablet.readings(), session: 'another' };
    tablet.readings = () => other;
    expect(tablet.tries({ kind: 'pause' })).toBe('session-not-opened');
    expect(tablet.tries({ kind: 'tick' })).toBe('session-not-opened');
  });
});

describe('a sleep during the glow', () => {
  it('is a gap too: a person says whether it kept glowing', () => {
    const tablet = glowing(purgePlan);
    tablet.passes(100);
    tablet.sleeps(45);
    expect(tablet.view).toMatchObject({ status: 'reviewing', askClock: false });
    answers(tablet, 'went-on');
    expect(tablet.view.status).toBe('running');
    expect(tablet.clock('/hold/hold').atLeastS).toBeCloseTo(145, 0);
  });
});

describe('a doubt', () => {
  it('restarts the rest at once and sends what comes after it back to waiting', () => {
    // Verifies: I-17
    const tablet = resting(smallPlan);
    tablet.passes(DAY_S + 10);
    tablet.does({ kind: 'start-step', step: 'boil-1' });
    tablet.passes(240);
    tablet.does({ kind: 'report-recheck', fixture: 'sink', text: 'Somebody drained pasta.' });
    expect(tablet.step('rest-sink')).toMatchObject({ attempt: 2, status: 'active' });
    expect(tablet.clock('rest-sink#2').atLeastS).toBe(0);
    expect(tablet.step('boil-1').status).toBe('unwinding');
    tablet.does({ kind: 'confirm-safe', step: 'boil-1' });
    expect(tablet.step('boil-1')).toMatchObject({ attempt: 2, status: 'waiting' });
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBe('needs-unmet');
    tablet.passes(DAY_S + 10);
    expect(tablet.tries({ kind: 'start-step', step: 'boil-1' })).toBeNull();
    expect(tablet.tries({ kind: 'report-recheck', fixture: 'moon', text: '' })).toBe(
      'unknown-fixture',
    );
  });

  it('told during a review still lets the cool-down begin', () => {
    const tablet = glowing(purgePlan);
    tablet.restarts(10);
    tablet.does({ kind: 'report-recheck', fixture: 'hob', text: 'A pan stood on it.' });
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    expect(tablet.view.status).toBe('reviewing');
    tablet.does({ kind: 'resume' });
    expect(tablet.step('cool').status).toBe('active');
    expect(tablet.step('glow')).toMatchObject({ attempt: 2, status: 'ready' });
  });

  it('keeps the cool-down clock of what is hot', () => {
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'report-recheck', fixture: 'hob', text: 'A pan stood on it.' });
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    expect(tablet.step('cool').status).toBe('active');
    expect(tablet.step('glow')).toMatchObject({ attempt: 2, status: 'ready' });
    tablet.passes(1900);
    expect(tablet.step('cool')).toMatchObject({ status: 'settled', outcome: 'done' });
    tablet.opens('burner-clear', 'glow#2');
    tablet.does({ kind: 'start-step', step: 'glow' });
    expect(tablet.step('cool')).toMatchObject({ attempt: 2, status: 'waiting' });
  });
});
