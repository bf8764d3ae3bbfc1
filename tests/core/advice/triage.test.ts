import { describe, expect, it } from 'vitest';
import { surenessOf, triageOf } from '../../../src/core/advice/index.ts';
import { lateS } from '../../../src/core/advice/due/in-time.ts';
import { withAnswer } from '../../../src/core/custom/index.ts';
import { buildPlan } from '../../../src/core/plan/index.ts';
import { closedUpAs } from '../../../src/core/advice/changes/said.ts';
import { plannedDemo } from './situations.ts';

/** Passover of 2027 begins on the evening of 21 April; the gas house is late from Monday evening. */
const LATE = '2027-04-19T17:00';

describe('what can still be done in time', () => {
  const before = plannedDemo('mountain-gas', LATE);
  const { kitchen, options } = before.situation;
  const triage = triageOf(before);
  const planWith = (closed: readonly string[]) => {
    const reduced = closed.reduce((now, id) => {
      const override = closedUpAs(now, id);
      return override ? withAnswer(now, override) : now;
    }, kitchen);
    // Utensils come after every fixture.
    return buildPlan(
      { ...reduced, utensils: triage?.utensilsWait ? [] : (kitchen.utensils ?? []) },
      options,
    );
  };

  it('is asked only of a plan that is late', () => {
    expect(lateS(before.plan, options)).toBeGreaterThan(0);
    expect(triageOf(plannedDemo('mountain-gas', '2027-04-11T09:00'))).toBeUndefined();
  });

  it('is in time as kept, and no more of what is closed up would be', () => {
    expect(triage?.kept.length).toBeGreaterThan(0);
    const { kept = [], closed = [] } = triage ?? {};
    expect(lateS(planWith(closed), options)).toBe(0);
    for (const fixture of closed) {
      const plan = planWith(closed.filter((id) => id !== fixture));
      expect(lateS(plan, options), fixture).toBeGreaterThan(0);
    }
    // The sink and the fire come first.
    expect(kept[0]).toBe('sink-steel');
  });

  it('is told beside a chance that is small', () => {
    expect(surenessOf(before.plan, options).due?.chance).toBeLessThan(0.5);
  });
});
