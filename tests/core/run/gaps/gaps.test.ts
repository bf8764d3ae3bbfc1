import { describe, expect, it } from 'vitest';
import type { Request } from '../../../../src/core/run/index.ts';
import { purgePlan, smallPlan } from '../support/fixtures.ts';
import { glowing, resting, Tablet } from '../support/tablet.ts';

/** Two burners that glow at once. */
function twoGlows(): Tablet {
  const second = purgePlan.steps
    .filter(({ id }) => id === 'glow')
    .map((one) => ({ ...one, id: 'glow-2', gates: ['air'], demands: {} }));
  const tablet = glowing({ ...purgePlan, steps: [...purgePlan.steps, ...second] });
  tablet.does({ kind: 'start-step', step: 'glow-2' });
  tablet.says('glow-2');
  tablet.says('glow-2');
  return tablet;
}

describe('a gap upon a gap', () => {
  it('leads back to where the run stood before the first', () => {
    // Verifies: I-06, I-14
    const ways: [Request, string][] = [
      [{ kind: 'pause' }, 'held'],
      [{ kind: 'report-fault', fault: 'unwell' }, 'suspended'],
      [{ kind: 'note', text: 'Nothing.' }, 'running'],
    ];
    for (const [asked, status] of ways) {
      const tablet = resting(smallPlan);
      tablet.does(asked);
      tablet.restarts(5);
      tablet.restarts(5);
      expect(tablet.view.status).toBe('reviewing');
      tablet.does({ kind: 'resume' });
      expect(tablet.view.status).toBe(status);
    }
  });

  it('keeps its question, with the longer gap, each for its own step', () => {
    const tablet = twoGlows();
    tablet.restarts(20);
    const first = tablet.view.review;
    expect(first.map(({ step }) => step)).toEqual(['glow', 'glow-2']);
    tablet.restarts(30);
    const second = tablet.view.review;
    expect(second.map(({ id }) => id)).toEqual(first.map(({ id }) => id));
    for (const { gapS } of second) expect(gapS).toBeCloseTo(50, 0);
  });

  it('answered for one burner says nothing of the other, nor of its alarms', () => {
    // Verifies: I-05, I-07
    const tablet = twoGlows();
    tablet.passes(100);
    tablet.restarts(20);
    const open = (id: string): boolean => tablet.state.timers[id]?.gapOpen === true;
    const ids = {
      own: tablet.clock('glow#1/hold/hold').id,
      other: tablet.clock('-2#1/hold/hold').id,
    };
    expect([open(ids.own), open(ids.other)]).toEqual([true, true]);
    const looks = tablet.view.timers.filter(({ role }) => role === 'reminder');
    expect(looks.map(({ id }) => open(id))).toEqual([false, false]);
    const [question] = tablet.view.review;
    tablet.does({ kind: 'answer-review', question: question?.id ?? '', answer: 'went-on' });
    expect([open(ids.own), open(ids.other)]).toEqual([false, true]);
    expect(tablet.view.status).toBe('reviewing');
  });

  it('in doubt about one work leaves the clocks of another alone', () => {
    // Verifies: I-05, I-08
    const tablet = glowing(purgePlan);
    tablet.does({ kind: 'stop-step', step: 'glow', reason: 'Off.' });
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    tablet.does({ kind: 'start-step', step: 'boil-1' });
    tablet.passes(60);
    tablet.restarts(30);
    const [question] = tablet.view.review;
    tablet.does({ kind: 'answer-review', question: question?.id ?? '', answer: 'unknown' });
    expect(tablet.clock('/boil').status).toBe('unproved');
    expect(tablet.clock('/cool')).toMatchObject({ status: 'running' });
    expect(tablet.state.timers[tablet.clock('/cool').id]?.gapOpen).toBe(false);
  });

  it('with a clock that stands a little before the last proof of life asks for the time', () => {
    // Verifies: I-05, I-08
    const tablet = resting(smallPlan);
    tablet.setsClock(-30, false);
    tablet.restarts(0);
    expect(tablet.view.askClock).toBe(true);
    expect(tablet.clock('/rest').atMostS).toBe(Infinity);
    // Told, and a short gap later, nothing is asked again; untold, it is.
    tablet.restarts(5);
    expect(tablet.view.askClock).toBe(true);
    tablet.does({ kind: 'answer-clock', right: true });
    tablet.restarts(5);
    expect(tablet.view.askClock).toBe(false);
  });

  it('asks no more about what was stopped meanwhile', () => {
    // Verifies: I-13
    const tablet = twoGlows();
    tablet.restarts(20);
    tablet.does({ kind: 'stop-step', step: 'glow', reason: 'Smell.' });
    expect(tablet.view.review.map(({ step }) => step)).toEqual(['glow-2']);
    tablet.does({ kind: 'confirm-safe', step: 'glow' });
    expect(tablet.view.review.map(({ step }) => step)).toEqual(['glow-2']);
  });
});
