import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { METHODS } from '../../../src/core/custom/index.ts';
import type { Kitchen, Override } from '../../../src/core/kitchen/index.ts';
import { buildPlan, checkPlan, describePlan } from '../../../src/core/plan/index.ts';
import { simulateRun } from '../../../src/core/run/index.ts';
import { kitchens } from '../kitchen/kitchen-arbitrary.ts';

/** A kitchen with an answer for some of its fixtures, of whatever method. */
function answered(): fc.Arbitrary<Kitchen> {
  return fc
    .tuple(
      kitchens(),
      fc.array(fc.constantFrom(...METHODS), { maxLength: 6 }),
      fc.option(fc.integer({ min: 1, max: 240 }), { nil: undefined }),
      fc.boolean(),
    )
    .map(([kitchen, methods, minutes, cover]) => {
      const overrides = methods.flatMap((method, at): Override[] => {
        const fixture = kitchen.fixtures[at];
        if (!fixture) return [];
        const said = {
          fixture: fixture.id,
          method,
          saidBy: 'our rabbi',
          saidOn: '2026-03-01',
          cover,
        };
        return [minutes === undefined ? said : { ...said, minutes }];
      });
      return { ...kitchen, household: { ...kitchen.household, overrides } };
    });
}

describe('any kitchen', () => {
  it('gets a plan that holds', () => {
    fc.assert(
      fc.property(kitchens(), (kitchen) => {
        expect(checkPlan(buildPlan(kitchen))).toEqual([]);
      }),
      { numRuns: 120 },
    );
  });

  it('gets a plan that holds whatever a rabbi said', () => {
    fc.assert(
      fc.property(answered(), (kitchen) => {
        const plan = buildPlan(kitchen);
        expect(checkPlan(plan)).toEqual([]);
        for (const { id } of kitchen.fixtures)
          expect(plan.methods.some(({ fixture }) => fixture === id)).toBe(true);
      }),
      { numRuns: 120 },
    );
  });

  it('gets a plan that can be run to its end and printed', () => {
    fc.assert(
      fc.property(answered(), (kitchen) => {
        const plan = buildPlan(kitchen);
        const { state } = simulateRun(plan);
        expect(state.status).toBe('closed');
        expect(Object.values(state.steps).every(({ outcome }) => outcome === 'done')).toBe(true);
        expect(describePlan(plan)).not.toMatch(/undefined|NaN|Infinity|\[object/);
      }),
      { numRuns: 25 },
    );
  });
});
