import { describe, expect, it } from 'vitest';
import { simulateRun } from '../../../../src/core/run/index.ts';
import { DEMOS, planOfDemo } from '../../plan/support/plans.ts';
import { smallPlan } from '../support/fixtures.ts';
import { withSabbath } from '../support/sabbath.ts';
import { NEW_YEAR_MS } from '../support/tablet.ts';

const HOUR_S = 3600;

describe('a simulated run over a rest day', () => {
  it('begins no work inside it, and ends with everything done', () => {
    // Verifies: I-19
    const day = { fromS: 20 * HOUR_S, toS: 45 * HOUR_S };
    const plan = withSabbath(smallPlan, day.fromS, day.toS);
    const done = simulateRun(plan, { eager: true });
    expect(done.view.closedAs).toBe('completed');
    expect(done.view.steps.every(({ outcome }) => outcome === 'done')).toBe(true);
    const startedS = done.facts
      .filter(({ body }) => body.kind === 'step-started' && body.by === 'person')
      .map(({ at }) => (at.wallMs - NEW_YEAR_MS) / 1000);
    expect(startedS.length).toBeGreaterThan(5);
    expect(startedS.filter((s) => s >= day.fromS && s < day.toS)).toEqual([]);
    expect(Math.max(...startedS)).toBeGreaterThan(day.toS);
    // One that begins inside it waits for its end.
    const waiting = simulateRun(withSabbath(smallPlan, -60, HOUR_S), { eager: true });
    expect(waiting.view.closedAs).toBe('completed');
    expect((waiting.facts[1]?.at.wallMs ?? 0) - NEW_YEAR_MS).toBeGreaterThanOrEqual(HOUR_S * 1000);
  });
});

describe('a simulated run of a demo, each step at its time', () => {
  it.each(DEMOS)('boils and pours everything once: %s', (demo) => {
    // Verifies: I-23
    const { facts, view } = simulateRun(planOfDemo(demo));
    expect(view.closedAs).toBe('completed');
    const again = facts.filter(
      ({ body }) =>
        body.kind === 'step-repeated' ||
        (body.kind === 'step-settled' && body.outcome === 'stopped'),
    );
    expect(again).toEqual([]);
  });
});
