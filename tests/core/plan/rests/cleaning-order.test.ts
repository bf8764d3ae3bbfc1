import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Kitchen } from '../../../../src/core/kitchen/index.ts';
import { buildPlan, checkPlan, type Plan } from '../../../../src/core/plan/index.ts';
import { DEMOS, kitchenOf, planOfDemo, startS, stepsOf, withFixture } from '../support/plans.ts';
import { hoursBefore, lastHot, lastHotKitchens, MONDAY, NEW_YORK } from './support.ts';
import { runs } from '../../../support/runs.ts';

/** When each thing begins to be cleaned, with the rest or the days under water that its clock owes from the start on, s. */
function cleanings(plan: Plan): readonly { id: string; atS: number; owesS: number }[] {
  return stepsOf(plan, 'clean').map(({ id }) => {
    const rest = stepsOf(plan, 'rest').find(({ needs }) => needs.some(({ step }) => step === id));
    const since = rest?.lastHotWallMs;
    const restedS = since === undefined ? 0 : ((plan.days?.startWallMs ?? 0) - since) / 1000;
    const soaks = plan.steps.filter(
      ({ kind, work }) => kind === 'dry' && work.on === 'utensils' && id === 'clean-all.utensils',
    );
    const owesS = Math.max(rest ? 24 * 3600 - restedS : 0, soaks.length * 24 * 3600);
    return { id, atS: startS(plan, id), owesS };
  });
}

/** Pairs of which the one that owes less is begun first. */
function outOfOrder(plan: Plan): readonly string[] {
  const all = cleanings(plan);
  return all.flatMap((one) =>
    all
      .filter((other) => one.owesS < other.owesS && one.atS < other.atS - 0.01)
      .map((other) => `${one.id} before ${other.id}`),
  );
}

describe('the order of cleaning', () => {
  it.each(DEMOS)('of %s starts the clocks first', (demo) => {
    const plan = planOfDemo(demo);
    expect(outOfOrder(plan)).toEqual([]);
    expect(cleanings(plan).some(({ owesS }) => owesS === 0)).toBe(true);
  });

  it('is high before low inside what rests, and inside what does not', () => {
    const plan = planOfDemo('flat-coils');
    const at = (id: string): number => startS(plan, `clean-${id}`);
    expect(at('range-top')).toBeLessThan(at('counter-left'));
    expect(at('counter-left')).toBeLessThan(at('sink'));
    expect(at('sink')).toBeLessThan(at('hood'));
    expect(at('hood')).toBeLessThan(at('fridge'));
  });

  it('goes by the rest still owed', () => {
    const told = lastHot({ ...kitchenOf('flat-coils'), place: NEW_YORK }, hoursBefore(20));
    const plan = buildPlan(withFixture(told, 'sink', { lastHotAt: hoursBefore(2) }), {
      startWallMs: MONDAY,
    });
    const first = cleanings(plan).toSorted((a, b) => a.atS - b.atS)[0];
    expect(first?.id).toBe('clean-sink');
    expect(outOfOrder(plan)).toEqual([]);
  });

  it('of any kitchen, with both customs, starts the clocks first', () => {
    fc.assert(
      fc.property(lastHotKitchens(), (kitchen: Kitchen) => {
        expect(outOfOrder(buildPlan(kitchen, { startWallMs: MONDAY }))).toEqual([]);
      }),
      { numRuns: runs(60) },
    );
  });

  it('is checked', () => {
    const good = planOfDemo('flat-coils');
    const startsS = { ...good.timetable.startS, 'clean-hood': startS(good, 'clean-oven') - 60 };
    const bad = { ...good, timetable: { ...good.timetable, startS: startsS } };
    expect(checkPlan(bad).map(({ rule }) => rule)).toContain('cleaning-order');
  });
});
