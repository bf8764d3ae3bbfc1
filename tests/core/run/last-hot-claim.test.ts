import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../src/core/plan/index.ts';
import { simulateRun } from '../../../src/core/run/index.ts';
import { smallPlan } from './support/fixtures.ts';
import { NEW_YEAR_MS, resting, Tablet } from './support/tablet.ts';

const HOUR_S = 3600;
const SINCE_MS = NEW_YEAR_MS - 20 * HOUR_S * 1000;

/** The small plan, with rests that are planned from a hot use 20 hours before the run. */
const plan: Plan = {
  ...smallPlan,
  steps: smallPlan.steps.map((one) =>
    one.kind === 'rest' ? { ...one, lastHotWallMs: SINCE_MS } : one,
  ),
};

function claimOf(tablet: Tablet) {
  return tablet.view.timers.find(({ lastHot }) => lastHot !== undefined);
}

function confirms(tablet: Tablet, clockRight = true) {
  const timer = claimOf(tablet);
  return {
    kind: 'correct-time',
    timer: timer?.id ?? '',
    sinceWallMs: timer?.lastHot?.wallMs ?? 0,
    reason: 'Said before the run.',
    ...(clockRight && { clockRight }),
  } as const;
}

describe('a rest that is planned from a last hot use', () => {
  it('counts from its beginning until a person has confirmed that. Verifies: I-17', () => {
    const tablet = resting(plan, false);
    expect(claimOf(tablet)?.lastHot).toEqual({ wallMs: SINCE_MS, about: 'sink' });
    expect(tablet.clock('/rest').leftS).toBeGreaterThan(23 * HOUR_S);
    tablet.passes(4 * HOUR_S);
    expect(tablet.clock('/rest').leftS).toBeGreaterThan(19 * HOUR_S);
  });

  it('counts from then once it is, and is not asked again, nor after a restart', () => {
    const tablet = resting(plan, false);
    tablet.does(confirms(tablet));
    const sinceS = (NEW_YEAR_MS + tablet.trueS * 1000 - SINCE_MS) / 1000;
    expect(tablet.clock('/rest').atLeastS).toBeCloseTo(sinceS, -1);
    expect(claimOf(tablet)).toBeUndefined();
    tablet.restarts(20);
    expect(claimOf(tablet)).toBeUndefined();
  });

  it('is not dated back by a clock that nobody says is right. Verifies: I-20', () => {
    const tablet = resting(plan, false);
    expect(tablet.tries(confirms(tablet, false))).toBe('clock-in-doubt');
    tablet.setsClock(6 * HOUR_S);
    expect(tablet.tries(confirms(tablet))).toBe('clock-in-doubt');
    expect(tablet.clock('/rest').leftS).toBeGreaterThan(17 * HOUR_S);
  });

  it('begins anew when the answer is no, or it was used since, and is asked no more. Verifies: I-24', () => {
    const tablet = resting(plan, false);
    const asked = confirms(tablet);
    tablet.passes(600);
    tablet.does({ kind: 'report-recheck', fixture: 'sink', text: 'Pasta was drained.' });
    expect(claimOf(tablet)).toBeUndefined();
    expect(tablet.clock('/rest').leftS).toBeGreaterThan(24 * HOUR_S - 60);
    expect(tablet.tries(asked)).not.toBeNull();
    expect(tablet.tries({ ...asked, timer: tablet.clock('/rest').id })).toBe('out-of-range');
  });

  it('is asked about a kettle by its own name', () => {
    const steps = plan.steps.map((one) => {
      if (one.kind !== 'rest') return one;
      const { fixture: _none, ...rest } = one;
      const vessel = { id: 'kettle', unit: 'kettle-2', name: one.title };
      return { ...rest, work: { on: 'vessel' as const, vessel } };
    });
    const tablet = resting({ ...plan, steps }, false);
    expect(claimOf(tablet)?.lastHot?.about).toBe('kettle');
  });

  it('is confirmed by the person of a simulated run, and saves what was planned', () => {
    const wholeS = simulateRun(smallPlan, { startWallMs: NEW_YEAR_MS, eager: true }).finishS;
    const { finishS, facts } = simulateRun(plan, { startWallMs: NEW_YEAR_MS, eager: true });
    expect(facts.some(({ body }) => body.kind === 'time-corrected')).toBe(true);
    expect(wholeS - finishS).toBeGreaterThan(19 * HOUR_S);
  });
});
