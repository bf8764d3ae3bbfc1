import { asWritten } from '../../../src/core/messages/index.ts';
import { describe, expect, it } from 'vitest';
import { alertsDue } from '../../../src/core/run/index.ts';
import { DAY_S, purgePlan, smallPlan } from './support/fixtures.ts';
import { glowing, resting, Tablet } from './support/tablet.ts';

describe('alarms', () => {
  it('are not delayed by a pause', () => {
    // Verifies: I-07
    const tablet = glowing(purgePlan);
    const before = tablet.clock('/look');
    tablet.does({ kind: 'pause' });
    tablet.passes(before.leftS);
    expect(tablet.view.status).toBe('held');
    expect(tablet.clock('/look')).toMatchObject({ status: 'due', alerting: true });
    expect(tablet.tries({ kind: 'extend-timer', timer: before.id, byS: 60 })).toBe('cannot-extend');
  });

  it('sound while a review is open, while minimums wait', () => {
    // Verifies: I-07, I-05
    const tablet = glowing(purgePlan);
    tablet.restarts(1200);
    expect(tablet.view.status).toBe('reviewing');
    expect(tablet.clock('/look')).toMatchObject({ status: 'late', alerting: true });
    expect(tablet.clock('/look').lateByS).toBeGreaterThan(890);
    expect(tablet.clock('/hold/hold')).toMatchObject({ status: 'unproved', alerting: false });
  });

  it('are due once for each cause; sounding on is no second fact', () => {
    // Verifies: I-09
    const tablet = glowing(purgePlan);
    const dues = (): number =>
      tablet.facts.filter(({ body }) => body.kind === 'timer-due' && body.timer.endsWith('/look'))
        .length;
    tablet.passes(400);
    for (let looks = 0; looks < 20; looks += 1) tablet.passes(1);
    expect(dues()).toBe(1);
    tablet.does({ kind: 'acknowledge-timer', timer: tablet.clock('/look').id });
    expect(tablet.clock('/look').alerting).toBe(false);
    expect(tablet.tries({ kind: 'acknowledge-timer', timer: tablet.clock('/look').id })).toBe(
      'not-alerting',
    );
    tablet.passes(310);
    expect(dues()).toBe(2);
  });

  it('a limit raises its fault by itself and suspends; cleared, the warm-up begins again', () => {
    // Verifies: I-09, I-12
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'stop-step', step: 'glow', reason: 'Again.' });
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    tablet.does({ kind: 'repeat-step', step: 'glow', reason: 'Again.' });
    tablet.opens('burner-clear', 'glow#2');
    tablet.does({ kind: 'start-step', step: 'glow' });
    tablet.says('glow');
    tablet.passes(721);
    expect(tablet.view).toMatchObject({
      status: 'suspended',
      reason: asWritten('It does not glow'),
    });
    expect(tablet.step('glow').status).toBe('stalled');
    expect(tablet.tries({ kind: 'confirm', step: 'glow', stage: 'warm-up' })).toBe('fault-open');
    expect(tablet.tries({ kind: 'resume' })).toBe('fault-open');
    const fault = tablet.view.faults[0]?.id ?? '';
    tablet.does({ kind: 'clear-fault', faultId: fault });
    expect(tablet.view.status).toBe('suspended');
    expect(tablet.clock('/limit').leftS).toBeGreaterThan(700);
    expect(tablet.tries({ kind: 'clear-fault', faultId: fault })).toBe('already-cleared');
    tablet.does({ kind: 'resume' });
    expect(tablet.view.status).toBe('running');
  });
});

describe('minimums', () => {
  it('wait for what is proved: a sleep counts once a person says the clock is right', () => {
    // Verifies: I-05, I-08
    const tablet = resting(smallPlan);
    tablet.passes(3600);
    tablet.sleeps(8 * 3600);
    expect(tablet.view).toMatchObject({ status: 'running', askClock: true });
    expect(tablet.clock('/rest').atLeastS).toBeCloseTo(3600, -1);
    expect(tablet.clock('/rest').atMostS).toBeGreaterThanOrEqual(9 * 3600);
    tablet.does({ kind: 'answer-clock', right: true, passed: true });
    expect(tablet.clock('/rest').atLeastS).toBeCloseTo(9 * 3600, -1);
    expect(tablet.view.askClock).toBe(false);
    expect(tablet.tries({ kind: 'answer-clock', right: true, passed: true })).toBe('nothing-asked');
  });

  it('count by the right time when a person tells it', () => {
    const tablet = resting(smallPlan);
    tablet.passes(3600);
    // Set two hours forward, and asleep for one.
    tablet.setsClock(7200, false);
    tablet.sleeps(3600);
    const right = tablet.readings().wallMs - 7200_000;
    tablet.does({ kind: 'answer-clock', right: false, actualWallMs: right, passed: true });
    expect(tablet.clock('/rest').atLeastS).toBeCloseTo(7200, -1);
    expect(tablet.clock('/rest').atMostS).toBeLessThan(7200 + 60);
  });

  it('count nothing when nobody knows the time', () => {
    const tablet = resting(smallPlan);
    tablet.sleeps(8 * 3600);
    tablet.does({ kind: 'answer-clock', right: false });
    expect(tablet.clock('/rest').atLeastS).toBeLessThan(60);
    expect(tablet.clock('/rest').atMostS).toBe(Infinity);
  });

  it('do not complete a day early because a clock was set forward', () => {
    // Verifies: I-05
    const tablet = resting(smallPlan);
    tablet.setsClock(2 * DAY_S);
    tablet.passes(60);
    expect(tablet.step('rest-sink').status).toBe('active');
    expect(tablet.clock('/rest').status).toBe('unproved');
  });

  it('may be made longer, within limits', () => {
    const tablet = glowing(purgePlan);
    const timer = tablet.clock('/hold/hold').id;
    expect(tablet.tries({ kind: 'extend-timer', timer, byS: -5 })).toBe('out-of-range');
    expect(tablet.tries({ kind: 'extend-timer', timer, byS: Number.NaN })).toBe('out-of-range');
    tablet.does({ kind: 'extend-timer', timer, byS: 120 });
    tablet.passes(610);
    expect(tablet.tries({ kind: 'confirm', step: 'glow', stage: 'hold' })).toBe('hold-not-due');
    tablet.passes(120);
    expect(tablet.step('glow')).toMatchObject({ status: 'checking', canConfirm: true });
  });
});

describe('the wake-up', () => {
  it('is the soonest of all clocks, and losing it loses nothing', () => {
    // Verifies: I-10
    const tablet = glowing(purgePlan);
    const soonest = Math.min(...tablet.view.timers.map(({ leftS }) => leftS));
    expect(tablet.view.wakeInS).toBeCloseTo(soonest, 0);
    // One page looks at every wake-up, the other only once, after an hour.
    const looked = resting(smallPlan);
    const lost = resting(smallPlan);
    looked.passes(DAY_S + 3600);
    lost.unseen(DAY_S + 3600);
    lost.does({ kind: 'tick' });
    expect(lost.step('rest-sink').outcome).toBe('done');
    expect(lost.view.steps.map(({ status }) => status)).toEqual(
      looked.view.steps.map(({ status }) => status),
    );
    expect(lost.view.timers.map(({ id, alerting }) => ({ id, alerting }))).toEqual(
      looked.view.timers.map(({ id, alerting }) => ({ id, alerting })),
    );
    // Found late, it says so.
    expect(lost.clock('/rest').status).toBe('late');
    expect(looked.clock('/rest').status).toBe('due');
  });
});

describe('alerts for the sound', () => {
  it('tell what sounds and what will within two minutes and a half', () => {
    const tablet = glowing(purgePlan);
    expect(alertsDue(tablet.view)).toEqual([]);
    tablet.passes(140);
    expect(alertsDue(tablet.view)).toEqual([]);
    tablet.passes(10);
    expect(alertsDue(tablet.view)).toMatchObject([{ family: 'due', sounding: false }]);
    expect(alertsDue(tablet.view)[0]?.inS).toBeCloseTo(145, 0);
    tablet.passes(160);
    expect(alertsDue(tablet.view)).toMatchObject([{ family: 'due', sounding: true, inS: 0 }]);
    expect(alertsDue(tablet.view, [{ fromS: 0, toS: 3600 }])).toEqual([]);
  });

  it('foretell only what comes by itself: no broken glow, no minimum in review, every alarm', () => {
    const families = (tablet: Tablet): string[] =>
      alertsDue(tablet.view).map(({ timer }) => timer.split('/').at(-1) ?? '');
    const both = glowing(purgePlan);
    both.passes(310);
    both.does({ kind: 'acknowledge-timer', timer: both.clock('/look').id });
    both.passes(230);
    expect(families(both)).toEqual(['hold', 'look']);
    const broken = glowing(purgePlan);
    broken.passes(310);
    broken.does({ kind: 'acknowledge-timer', timer: broken.clock('/look').id });
    broken.passes(230);
    broken.does({ kind: 'report-fault', fault: 'flame-out', step: 'glow' });
    expect(broken.clock('/hold/hold').status).toBe('frozen');
    expect(families(broken)).toEqual(['look']);
    both.restarts(1);
    expect(families(both)).toEqual(['look']);
    // A minimum in doubt still ends by what is proved, and says so beforehand.
    const unproved = new Tablet(purgePlan);
    unproved.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    unproved.restarts(30);
    const [question] = unproved.view.review;
    unproved.does({ kind: 'answer-review', question: question?.id ?? '', answer: 'unknown' });
    unproved.passes(180);
    expect(unproved.clock('/boil').status).toBe('unproved');
    expect(families(unproved)).toEqual(['boil']);
  });

  it('fall silent at the first of several silences to come', () => {
    // Verifies: I-19
    const tablet = glowing(purgePlan);
    tablet.passes(310);
    const quiet = [
      { fromS: 5000, toS: 6000 },
      { fromS: 700, toS: 800 },
      { fromS: -50, toS: -10 },
    ];
    expect(alertsDue(tablet.view, quiet)[0]?.silentInS).toBe(700);
    expect(alertsDue(tablet.view)[0]?.silentInS).toBeUndefined();
  });

  it('a wait that a person must end asks for an answer; one that ends by itself only tells', () => {
    const tablet = glowing(purgePlan);
    tablet.passes(605);
    expect(alertsDue(tablet.view).find(({ timer }) => timer.endsWith('/hold'))?.family).toBe('due');
    tablet.does({ kind: 'stop-step', step: 'glow', reason: 'Enough.' });
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    tablet.passes(1790);
    expect(alertsDue(tablet.view)).toMatchObject([{ family: 'done', sounding: false }]);
  });
});
