import { describe, expect, it } from 'vitest';
import { DAY_S, purgePlan, smallPlan } from '../support/fixtures.ts';
import { BUILT_MS, glowing, NEW_YEAR_MS, resting, Tablet } from '../support/tablet.ts';

const HOUR_S = 3600;

/** Cleaning the sink, with the clock off by `byS` since `how` many seconds before the rest begins. */
function cleaning(): Tablet {
  const tablet = new Tablet(smallPlan);
  tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'clean-sink' });
  tablet.passes(300);
  return tablet;
}

describe('a rest that began while the clock was in doubt', () => {
  for (const [name, byS] of [
    ['30 h back', -30 * HOUR_S],
    ['to 1970 by a dead battery', -NEW_YEAR_MS / 1000],
  ] as const) {
    it(`is not credited what the clock made good again: ${name}`, () => {
      // Verifies: I-20
      const tablet = cleaning();
      tablet.setsClock(byS);
      tablet.passes(300);
      tablet.says('clean-sink');
      tablet.passes(600);
      tablet.setsClock(-byS);
      tablet.tries({ kind: 'answer-clock', right: true });
      tablet.tries({ kind: 'answer-clock', right: true, passed: true });
      expect(tablet.step('rest-sink').status).toBe('active');
      expect(tablet.clock('/rest').atLeastS).toBeLessThanOrEqual(600);
    });
  }

  it('by a page that died meanwhile, neither', () => {
    // Verifies: I-20
    const tablet = cleaning();
    tablet.setsClock(-NEW_YEAR_MS / 1000, false);
    tablet.restarts(30);
    tablet.tries({ kind: 'answer-clock', right: false });
    tablet.tries({ kind: 'resume' });
    tablet.says('clean-sink');
    tablet.passes(600);
    tablet.setsClock(NEW_YEAR_MS / 1000);
    tablet.tries({ kind: 'answer-clock', right: true, passed: true });
    tablet.tries({ kind: 'answer-clock', right: true });
    expect(tablet.step('rest-sink').status).toBe('active');
    expect(tablet.clock('/rest').atLeastS).toBeLessThanOrEqual(600);
  });

  it('still counts what was seen, and a word about that very wait', () => {
    // Verifies: I-20, I-26
    const tablet = cleaning();
    tablet.setsClock(-2 * HOUR_S);
    tablet.says('clean-sink');
    tablet.sleeps(10 * HOUR_S);
    tablet.setsClock(2 * HOUR_S);
    tablet.does({ kind: 'answer-clock', right: true, passed: true });
    expect(tablet.clock('/rest').atLeastS).toBeLessThan(60);
    tablet.does({
      kind: 'correct-time',
      timer: tablet.clock('/rest').id,
      sinceWallMs: tablet.readings().wallMs - 10 * HOUR_S * 1000,
      reason: 'I cleaned it before supper.',
    });
    expect(tablet.clock('/rest').atLeastS).toBeCloseTo(10 * HOUR_S, -1);
  });
});

describe('a clock that was wrong when the run started', () => {
  it('is refused below the build date, and by its name', () => {
    // Verifies: I-20
    const tablet = new Tablet(smallPlan);
    tablet.setsClock((BUILT_MS - NEW_YEAR_MS) / 1000 - 60, false);
    expect(tablet.tries({ kind: 'start-run' })).toBe('clock-wrong');
    expect(tablet.state.status).toBe('drafting');
    tablet.setsClock(120, false);
    expect(tablet.tries({ kind: 'start-run' })).toBeNull();
  });

  for (const hours of [3, 8, 24, 36]) {
    it(`${hours} h, and put right in the rest, credits nothing by a yes`, () => {
      // Verifies: I-20
      const tablet = new Tablet(smallPlan);
      tablet.setsClock(-hours * HOUR_S, false);
      tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'clean-sink' });
      tablet.passes(600);
      tablet.says('clean-sink');
      tablet.passes(1200);
      tablet.setsClock(hours * HOUR_S);
      expect(tablet.view.clockQuestion).toMatchObject({ needsPassed: true });
      expect(tablet.view.clockQuestion?.missingS).toBeCloseTo(hours * HOUR_S, -1);
      expect(tablet.tries({ kind: 'answer-clock', right: true })).toBe('passed-missing');
      tablet.does({ kind: 'answer-clock', right: true, passed: false });
      expect(tablet.view.askClock).toBe(false);
      expect(tablet.clock('/rest').atLeastS).toBeLessThanOrEqual(1200);
    });
  }

  it('and told in the rest, credits no more than what was slept', () => {
    // Verifies: I-20
    const tablet = new Tablet(smallPlan);
    tablet.setsClock(-DAY_S, false);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'clean-sink' });
    tablet.passes(600);
    tablet.says('clean-sink');
    tablet.sleeps(8 * HOUR_S);
    const actualWallMs = NEW_YEAR_MS + tablet.trueS * 1000;
    expect(tablet.tries({ kind: 'answer-clock', right: false, actualWallMs })).toBe(
      'passed-missing',
    );
    tablet.does({ kind: 'answer-clock', right: false, actualWallMs, passed: false });
    expect(tablet.clock('/rest').atLeastS).toBeLessThanOrEqual(8 * HOUR_S + 10);
  });

  it('or set back while no page was there, credits nothing by a yes when it comes right', () => {
    // Verifies: I-20
    const tablet = new Tablet(smallPlan);
    tablet.does(
      { kind: 'start-run', clockRight: true },
      { kind: 'start-step', step: 'clean-sink' },
    );
    tablet.passes(300);
    tablet.setsClock(-8 * HOUR_S, false);
    tablet.restarts(8 * HOUR_S);
    expect(tablet.view.askClock).toBe(false);
    tablet.does({ kind: 'resume' });
    tablet.says('clean-sink');
    tablet.passes(600);
    tablet.setsClock(8 * HOUR_S);
    expect(tablet.tries({ kind: 'answer-clock', right: true })).toBe('passed-missing');
    tablet.does({ kind: 'answer-clock', right: true, passed: false });
    expect(tablet.clock('/rest').atLeastS).toBeLessThanOrEqual(600);
  });

  it('a day is not waved through by one press even where the clock was confirmed; a night is', () => {
    // Verifies: I-20
    for (const [hours, refusal] of [
      [8, null],
      [24, 'passed-missing'],
    ] as const) {
      const tablet = new Tablet(smallPlan);
      tablet.does({ kind: 'start-run', clockRight: true });
      tablet.does({ kind: 'start-step', step: 'clean-sink' });
      tablet.says('clean-sink');
      tablet.sleeps(hours * HOUR_S);
      expect(tablet.tries({ kind: 'answer-clock', right: true })).toBe(refusal);
    }
  });

  it('nothing that is missing needs no second word', () => {
    const tablet = resting(smallPlan);
    tablet.setsClock(30 * HOUR_S);
    const actualWallMs = NEW_YEAR_MS + tablet.trueS * 1000;
    tablet.does({ kind: 'answer-clock', right: false, actualWallMs });
    expect(tablet.clock('/rest').atMostS).toBeLessThan(60);
  });
});

describe('a gap that is judged while the clock stands back', () => {
  /** Glowing; the clock jumped ahead and the person said so, and of the gap nobody was asked yet. */
  function asked(): Tablet {
    const tablet = glowing(purgePlan);
    tablet.passes(100);
    tablet.setsClock(3600);
    const actualWallMs = NEW_YEAR_MS + tablet.trueS * 1000;
    tablet.does({ kind: 'answer-clock', right: false, actualWallMs });
    return tablet;
  }

  it('is not credited what the clock makes good again', () => {
    // Verifies: I-20
    const tablet = asked();
    tablet.setsClock(-30 * HOUR_S);
    const [question] = tablet.view.review;
    tablet.does({ kind: 'answer-review', question: question?.id ?? '', answer: 'went-on' });
    tablet.setsClock(29 * HOUR_S);
    for (const { id } of tablet.view.review)
      tablet.does({ kind: 'answer-review', question: id, answer: 'went-on' });
    tablet.does({ kind: 'answer-clock', right: true });
    for (const { id } of tablet.view.review)
      tablet.does({ kind: 'answer-review', question: id, answer: 'went-on' });
    expect(tablet.clock('/hold/hold').atLeastS).toBeCloseTo(100, -1);
  });

  it('is still credited what passed before, once the clock stands as it stood', () => {
    // Verifies: I-20
    const tablet = glowing(purgePlan);
    tablet.passes(100);
    tablet.sleeps(200);
    tablet.does({ kind: 'answer-clock', right: true, passed: true });
    tablet.setsClock(-30 * HOUR_S);
    const [question] = tablet.view.review;
    tablet.does({ kind: 'answer-review', question: question?.id ?? '', answer: 'went-on' });
    expect(tablet.clock('/hold/hold').atLeastS).toBeCloseTo(100, -1);
    tablet.setsClock(30 * HOUR_S);
    for (const { id } of tablet.view.review)
      tablet.does({ kind: 'answer-review', question: id, answer: 'went-on' });
    tablet.does({ kind: 'answer-clock', right: true });
    expect(tablet.clock('/hold/hold').atLeastS).toBeCloseTo(300, -1);
  });
});

describe('an allowance between the clocks', () => {
  it('does not grow with the session: a month on, a sleep of 20 s is seen', () => {
    // Verifies: I-25
    const tablet = new Tablet(smallPlan);
    tablet.does({ kind: 'start-run' });
    tablet.unseen(30 * DAY_S);
    tablet.sleeps(20);
    expect(tablet.kinds()).toContain('clocks-disagree');
  });
});
