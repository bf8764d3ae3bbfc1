import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { METHODS } from '../../../src/core/kitchen/index.ts';
import type { Kitchen, Override } from '../../../src/core/kitchen/index.ts';
import { buildPlan, checkPlan, describePlan } from '../../../src/core/plan/index.ts';
import { simulateRun } from '../../../src/core/run/index.ts';
import { inEnglish } from '../../support/english.ts';
import { kitchens } from '../kitchen/arbitrary/kitchen-arbitrary.ts';
import { runs } from '../../support/runs.ts';

/** The ends of what a kitchen file may say of rooms, kettles and heights. */
function extreme(): fc.Arbitrary<Kitchen> {
  const ends = fc.record({
    floorAreaM2: fc.constantFrom(1, 1000),
    heightM: fc.constantFrom(1.8, 10),
    flowLS: fc.constantFrom(0, 5000),
    areaM2: fc.constantFrom(0, 50),
    windowM: fc.constantFrom(0, 6),
    altitudeM: fc.constantFrom(-430, 5000),
    tapColdC: fc.constantFrom(0.5, 40),
    maxFillL: fc.constantFrom(0.2, 200),
    ratedW: fc.constantFrom(0, 60, 60_000),
    body: fc.constantFrom('plastic', 'steel', 'glass', 'double-wall', 'enamel'),
  });
  return fc.tuple(kitchens(), ends).map(([kitchen, end]): Kitchen => ({
    ...kitchen,
    altitudeM: end.altitudeM,
    tapColdC: end.tapColdC,
    room: {
      floorAreaM2: end.floorAreaM2,
      heightM: end.heightM,
      hood: { kind: 'vented', flowLS: end.flowLS },
      window: { areaM2: end.areaM2, heightM: end.windowM },
    },
    vessels: kitchen.vessels.map((one) => ({
      ...one,
      maxFillL: end.maxFillL,
      ratedW: one.burner === undefined ? end.ratedW : one.ratedW,
      body: end.body,
    })),
  }));
}

/** A kitchen with an answer for some of its fixtures, of whatever method. */
function answered(): fc.Arbitrary<Kitchen> {
  return fc
    .tuple(
      kitchens(),
      fc.array(fc.constantFrom(...METHODS), { maxLength: 6 }),
      fc.option(fc.integer({ min: 1, max: 1440 }), { nil: undefined }),
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
      { numRuns: runs(120) },
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
      { numRuns: runs(120) },
    );
  });

  it('gets a plan that holds at the ends of every range', () => {
    fc.assert(
      fc.property(extreme(), (kitchen) => {
        expect(checkPlan(buildPlan(kitchen))).toEqual([]);
      }),
      { numRuns: runs(60) },
    );
  });

  it('gets a plan that can be run to its end and printed', () => {
    fc.assert(
      fc.property(answered(), (kitchen) => {
        const plan = buildPlan(kitchen);
        const { state } = simulateRun(plan);
        expect(state.status).toBe('closed');
        expect(Object.values(state.steps).every(({ outcome }) => outcome === 'done')).toBe(true);
        expect(describePlan(plan, inEnglish)).not.toMatch(/undefined|NaN|Infinity|\[object/);
      }),
      { numRuns: runs(25) },
    );
  });
});
