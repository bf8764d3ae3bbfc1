import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Kitchen } from '../../../src/core/kitchen/index.ts';
import { checkPlan, describePlan, planForRecheck } from '../../../src/core/plan/index.ts';
import { simulateRun } from '../../../src/core/run/index.ts';
import { kitchens } from '../kitchen/arbitrary/kitchen-arbitrary.ts';
import { inEnglish } from '../../support/english.ts';
import { DEMOS, kitchenOf, stepsOf } from './support/plans.ts';
import { runs } from '../../support/runs.ts';

const WHAT = 'Hot soup boiled over onto it.';
const flat = kitchenOf('flat-coils');
const H_S = 3600;

/** The flat with nothing to boil in but a kettle on the stove. */
const onTheStove: Kitchen = {
  ...flat,
  vessels: [
    {
      id: 'whistler',
      name: 'Stove kettle',
      kind: 'stove-kettle',
      body: 'steel',
      maxFillL: 1.7,
      ratedW: 0,
      ratedV: flat.supplyV,
      burner: 'coil-back-left',
      count: 1,
    },
  ],
};

describe('a small plan after a doubt', () => {
  it('rests and purges what is in doubt, and nothing else', () => {
    const plan = planForRecheck(flat, ['counter-left'], WHAT);
    expect(plan.purpose).toBe('mix-up');
    expect(plan.methods.map(({ fixture }) => fixture)).toEqual(['counter-left']);
    expect(plan.steps.map(({ fixture }) => fixture ?? 'none')).toEqual(
      expect.arrayContaining(['counter-left']),
    );
    expect(
      plan.steps.filter(({ fixture }) => fixture !== undefined && fixture !== 'counter-left'),
    ).toEqual([]);
    expect(stepsOf(plan, 'rest')).toHaveLength(1);
    expect(stepsOf(plan, 'rest', 'counter-left')[0]?.durationS.typical).toBe(24 * H_S);
    expect(stepsOf(plan, 'pour', 'counter-left').length).toBeGreaterThan(0);
    expect(checkPlan(plan)).toEqual([]);
  });

  it('rests from the doubt on, whatever was told of hot uses before. Verifies: I-17', () => {
    const startWallMs = Date.UTC(2026, 10, 16, 14);
    const told: Kitchen = {
      ...flat,
      household: { ...flat.household, lastHotAt: '2026-11-15T00:00' },
    };
    const plan = planForRecheck(told, ['counter-left'], WHAT, { startWallMs });
    expect(plan.days).toBeDefined();
    const [rest] = stepsOf(plan, 'rest');
    expect(rest?.durationS.typical).toBe(24 * H_S);
    expect(rest?.lastHotWallMs).toBeUndefined();
    expect(checkPlan(plan)).toEqual([]);
  });

  it('asks first whether it must be purged again, with what was told', () => {
    const plan = planForRecheck(flat, ['counter-left', 'sink'], `  ${WHAT}  `);
    for (const fixture of ['counter-left', 'sink']) {
      const question = plan.questions.find(({ id }) => id === `ask-doubt-${fixture}`);
      expect(question?.why.params).toEqual({ what: WHAT });
      expect(plan.methods.find((row) => row.fixture === fixture)?.question).toBe(question?.id);
    }
    expect(plan.steps[0]?.id).toBe('prepare-ask');
    expect(plan.notices[0]).toMatchObject({
      key: 'plan.notice.recheck',
      params: { what: 'Hot soup boiled over onto it' },
    });
  });

  it('does not purge the kettles again', () => {
    const plan = planForRecheck(flat, ['counter-left'], WHAT);
    expect(stepsOf(plan, 'boil-over')).toEqual([]);
    expect(plan.steps.some(({ work }) => work.on === 'vessel')).toBe(false);
  });

  it('boils on a stove that is not in doubt without purging it', () => {
    const plan = planForRecheck(onTheStove, ['counter-left'], WHAT);
    expect(checkPlan(plan)).toEqual([]);
    expect(stepsOf(plan, 'glow')).toEqual([]);
    expect(stepsOf(plan, 'boil', 'counter-left').length).toBeGreaterThan(0);
    expect(plan.methods.find(({ fixture }) => fixture === 'range-top')).toMatchObject({
      method: 'clean',
      reason: { key: 'plan.only-heats' },
    });
    expect(plan.questions.some(({ fixture }) => fixture === 'range-top')).toBe(false);
    // It is not to be bought.
    expect(plan.shopping.some(({ id }) => id === 'kettle')).toBe(false);
  });

  it('purges the stove when that is what is in doubt', () => {
    const plan = planForRecheck(onTheStove, ['range-top'], WHAT);
    expect(stepsOf(plan, 'glow').length).toBeGreaterThan(0);
    expect(checkPlan(plan)).toEqual([]);
  });

  it('refuses a fixture that is not there, none, and no words', () => {
    expect(() => planForRecheck(flat, ['balcony'], WHAT)).toThrow(
      /fixtureIds is balcony; allowed: .*sink/,
    );
    expect(() => planForRecheck(flat, [], WHAT)).toThrow(/fixtureIds is empty/);
    expect(() => planForRecheck(flat, ['sink'], '  ')).toThrow(/what is empty/);
  });

  it.each(DEMOS)('of each fixture of %s holds, can be run to its end, and prints', (demo) => {
    const kitchen = kitchenOf(demo);
    for (const { id } of kitchen.fixtures) {
      const plan = planForRecheck(kitchen, [id], WHAT);
      expect(checkPlan(plan)).toEqual([]);
      expect(describePlan(plan, inEnglish)).not.toMatch(/undefined|NaN|\[object/);
      const { state } = simulateRun(plan);
      expect(state.status).toBe('closed');
    }
  });

  it('holds for any kitchen and any of its fixtures', () => {
    fc.assert(
      fc.property(
        kitchens().chain((kitchen) =>
          fc.tuple(
            fc.constant(kitchen),
            fc.subarray(
              kitchen.fixtures.map(({ id }) => id),
              { minLength: 1 },
            ),
          ),
        ),
        ([kitchen, ids]) => {
          const plan = planForRecheck(kitchen, ids, WHAT);
          expect(checkPlan(plan)).toEqual([]);
          const heated = new Set(plan.steps.map(({ fixture }) => fixture));
          for (const id of kitchen.fixtures.map((one) => one.id))
            if (!ids.includes(id)) expect(heated.has(id)).toBe(false);
          for (const id of ids)
            expect(plan.questions.some((one) => one.id === `ask-doubt-${id}`)).toBe(true);
        },
      ),
      { numRuns: runs(50) },
    );
  });
});
