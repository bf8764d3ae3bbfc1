import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../../src/core/plan/index.ts';
import { fold, type Request } from '../../../../src/core/run/index.ts';
import { DAY_S, purgePlan, smallPlan } from '../support/fixtures.ts';
import { glowing, NEW_YEAR_MS, resting, Tablet } from '../support/tablet.ts';

const HOUR_S = 3600;

function lastHot(
  tablet: Tablet,
  part: string,
  sinceWallMs: number,
): Extract<Request, { kind: 'correct-time' }> {
  return { kind: 'correct-time', timer: tablet.clock(part).id, sinceWallMs, reason: 'I know.' };
}

/** True wall time `agoS` seconds ago. */
function ago(tablet: Tablet, agoS: number): number {
  return NEW_YEAR_MS + (tablet.trueS - agoS) * 1000;
}

function cooling(plan: Plan = purgePlan): Tablet {
  const tablet = glowing(plan);
  tablet.does({ kind: 'stop-step', step: 'glow', reason: 'Enough.' });
  tablet.does({ kind: 'confirm-safe', step: 'glow' });
  tablet.passes(60);
  return tablet;
}

/** The small plan, in which the sink dries in the air for an hour after it was cleaned. */
function drying(): Tablet {
  const [rest] = smallPlan.steps.filter(({ id }) => id === 'rest-sink');
  if (!rest) throw new Error('no rest in the small plan');
  const steps = smallPlan.steps.map((one) =>
    one === rest ? { ...one, kind: 'dry' as const, phase: 'purge' as const } : one,
  );
  return resting({ ...smallPlan, steps });
}

describe('"It was last hot at …"', () => {
  it('is no word about a wait that is no rest: what dries only waits longer', () => {
    // Verifies: I-26
    const tablet = drying();
    tablet.passes(600);
    expect(tablet.tries(lastHot(tablet, 'rest-sink', ago(tablet, 2 * HOUR_S)))).toBe(
      'out-of-range',
    );
    expect(tablet.tries(lastHot(tablet, 'rest-sink', ago(tablet, 300)))).toBeNull();
    expect(tablet.clock('rest-sink').atLeastS).toBeCloseTo(300, -1);
  });

  it('counts on the right clock', () => {
    // Verifies: I-26
    const tablet = resting(smallPlan);
    tablet.setsClock(6 * HOUR_S);
    const actualWallMs = ago(tablet, 0);
    tablet.does({ kind: 'answer-clock', right: false, actualWallMs });
    tablet.does({ kind: 'start-step', step: 'clean-hob' });
    tablet.passes(600);
    tablet.says('clean-hob');
    tablet.does(lastHot(tablet, 'rest-hob', ago(tablet, 2 * HOUR_S)));
    expect(tablet.clock('rest-hob').atLeastS).toBeCloseTo(2 * HOUR_S, -1);
  });

  it('waits until the clock is settled', () => {
    // Verifies: I-20, I-26
    const tablet = resting(smallPlan);
    tablet.setsClock(6 * HOUR_S);
    expect(tablet.tries(lastHot(tablet, '/rest', ago(tablet, 2 * HOUR_S)))).toBe('clock-in-doubt');
  });

  it('needs a word that the clock is right, where nobody has given one in this run', () => {
    // Verifies: I-26, I-17
    const tablet = new Tablet(smallPlan);
    tablet.setsClock(DAY_S, false);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'clean-sink' });
    tablet.passes(600);
    tablet.says('clean-sink');
    const asked = lastHot(tablet, '/rest', ago(tablet, 2 * HOUR_S));
    expect(tablet.tries(asked)).toBe('clock-in-doubt');
    expect(tablet.clock('/rest').atLeastS).toBe(0);
    // The clock comes right, and that is said with the moment.
    tablet.setsClock(-DAY_S);
    tablet.does({ kind: 'answer-clock', right: true });
    tablet.does(lastHot(tablet, '/rest', ago(tablet, 2 * HOUR_S)));
    expect(tablet.clock('/rest').atLeastS).toBeCloseTo(2 * HOUR_S, -1);
  });

  it('may bring that word along, and it stands for the next one and after a restart', () => {
    // Verifies: I-26
    const tablet = resting(smallPlan, false);
    const asked = lastHot(tablet, '/rest', ago(tablet, 2 * HOUR_S));
    expect(tablet.tries(asked)).toBe('clock-in-doubt');
    tablet.does({ ...asked, clockRight: true });
    expect(tablet.clock('/rest').atLeastS).toBeCloseTo(2 * HOUR_S, -1);
    tablet.restarts(20);
    tablet.does({ kind: 'resume' });
    tablet.does(lastHot(tablet, '/rest', ago(tablet, 3 * HOUR_S)));
    expect(tablet.clock('/rest').atLeastS).toBeCloseTo(3 * HOUR_S, -1);
    expect(fold(tablet.facts)).toEqual(tablet.state);
  });

  it('has no word to count on once that is taken back', () => {
    // Verifies: I-26
    const tablet = resting(smallPlan, false);
    tablet.setsClock(6 * HOUR_S);
    tablet.does({ kind: 'answer-clock', right: true, passed: false });
    tablet.does({ kind: 'withdraw-clock-answer' });
    expect(tablet.state.clock.told).toBe(false);
    expect(tablet.tries(lastHot(tablet, '/rest', ago(tablet, HOUR_S)))).toBe('clock-in-doubt');
  });

  it('never shortens what protects a hand, and may lengthen it', () => {
    // Verifies: I-26
    const tablet = cooling();
    const before = tablet.clock('/cool').atLeastS;
    expect(tablet.tries(lastHot(tablet, '/cool', ago(tablet, 1800)))).toBe('out-of-range');
    expect(tablet.clock('/cool').atLeastS).toBe(before);
    tablet.does(lastHot(tablet, '/cool', ago(tablet, 10)));
    expect(tablet.clock('/cool').atLeastS).toBeCloseTo(10, 0);
    // Nor where the record knows of no place that was hot: a pot on the table.
    const nowhere = purgePlan.steps.map((one) => {
      const { fixture: _, ...rest } = one;
      return one.kind === 'cool' ? rest : one;
    });
    const pot = cooling({ ...purgePlan, steps: nowhere });
    expect(pot.tries(lastHot(pot, '/cool', ago(pot, 1800)))).toBe('out-of-range');
  });

  it('stays inside what the record tells of hot use', () => {
    // Verifies: I-26
    const tablet = resting(smallPlan);
    tablet.passes(DAY_S);
    tablet.does({ kind: 'report-recheck', fixture: 'sink', text: 'Somebody drained pasta.' });
    tablet.passes(HOUR_S);
    expect(tablet.tries(lastHot(tablet, '/rest', ago(tablet, 20 * HOUR_S)))).toBe('out-of-range');
    expect(tablet.tries(lastHot(tablet, '/rest', ago(tablet, HOUR_S - 60)))).toBeNull();
  });

  it('in the future is refused', () => {
    const tablet = resting(smallPlan);
    expect(tablet.tries(lastHot(tablet, '/rest', ago(tablet, -60)))).toBe('out-of-range');
  });
});
