import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  BURNER_TYPES,
  MATERIALS,
  METHODS,
  type CustomId,
  type Kitchen,
  type Override,
} from '../../../../src/core/kitchen/index.ts';
import { CAUTIONS } from '../../../../src/core/plan/cautions/index.ts';
import { buildPlan, roomNeedOf, type Plan, type Step } from '../../../../src/core/plan/index.ts';
import { kitchens } from '../../kitchen/arbitrary/kitchen-arbitrary.ts';
import { inEnglish } from '../../../support/english.ts';
import { DEMOS, kitchenOf, only, withFixture, withMethod } from '../support/plans.ts';
import { seen, WHERE, WHOLE } from './oracle.ts';
import { runs } from '../../../support/runs.ts';

const HEATED: readonly Step['kind'][] = ['glow', 'high-heat', 'self-clean'];
/** "Extreme caution" begins at a heat index of 32.2 °C (90 °F): National Weather Service. */
const EXTREME_CAUTION_C = 32.2;
/** Nearer than this to the band's edge the two ways of reckoning the room may differ, K. */
const NEAR_K = 1.5;
/** Most that an oven and kettles add to the warmth of a room with some air, K. */
const BY_OVEN_K = 8;
const BY_KETTLES_K = 4;

/** One caution about heat illness anywhere means that the plan takes the room for hot. */
function takenForHot(plan: Plan): boolean {
  return plan.steps.some(({ standing }) => standing.includes('heat-stress'));
}

/** Is it right to take the room for hot: yes, no, or too near the edge to say from outside? */
function shouldBeHot({ kitchen, steps }: Plan): boolean | undefined {
  const glows = steps.filter(({ kind }) => kind === 'glow');
  if (glows.length === 0) return false;
  const minutes = Math.max(...glows.map(({ durationS }) => durationS.typical / 60));
  const peak = (burners: number, litMin: number): number | undefined => {
    try {
      const curve = roomNeedOf(kitchen, burners, Math.min(600, litMin))?.curve ?? [];
      return Math.max(...curve.map(({ heatIndexC }) => heatIndexC));
    } catch {
      return undefined;
    }
  };
  const [one, two] = [peak(1, minutes), peak(Math.min(2, glows.length), minutes * glows.length)];
  if (one === undefined || two === undefined) return undefined;
  if (one > EXTREME_CAUTION_C + NEAR_K) return true;
  // Ovens and kettles heat the room before and beside the burners.
  const oven = steps.some(({ kind }) => kind === 'self-clean' || kind === 'high-heat');
  const beside =
    (oven ? BY_OVEN_K : 0) + (steps.some(({ kind }) => kind === 'boil') ? BY_KETTLES_K : 0);
  return two + beside < EXTREME_CAUTION_C - NEAR_K ? false : undefined;
}

/** What stands at a step, and what should. */
function compare(plan: Plan, step: Step, roomIsHot: boolean) {
  const at = seen(plan, step, roomIsHot);
  const due = (kind: 'gate' | 'standing' | 'after'): readonly string[] =>
    Object.entries(WHERE)
      .filter(([, where]) => where[kind]?.(at) === true)
      .map(([id]) => id)
      .toSorted();
  return {
    found: {
      gates: step.gates.toSorted(),
      standing: step.standing.toSorted(),
      after: step.after.toSorted(),
    },
    due: { gates: due('gate'), standing: due('standing'), after: due('after') },
  };
}

function expectExactlyThere(plan: Plan): void {
  const hot = takenForHot(plan);
  for (const step of plan.steps) {
    const { found, due } = compare(plan, step, hot);
    expect({ step: step.id, ...found }).toEqual({ step: step.id, ...due });
  }
  for (const row of CAUTIONS) {
    const told = plan.notices.some(({ key }) => key === `cautions.${row.id}.say`);
    expect({ id: row.id, told }).toEqual({ id: row.id, told: WHOLE[row.id]?.(plan) ?? false });
  }
}

function inHousehold(kitchen: Kitchen, custom: CustomId, people: number): Kitchen {
  return { ...kitchen, household: { ...kitchen.household, custom, people } };
}

/** Kitchens in which some fixtures have a method by an answer, so that every builder has its turn. */
function answered(): fc.Arbitrary<Kitchen> {
  return fc
    .tuple(kitchens(), fc.array(fc.constantFrom(...METHODS), { maxLength: 6 }))
    .map(([kitchen, methods]) => ({
      ...kitchen,
      household: {
        ...kitchen.household,
        overrides: methods.flatMap((method, at): Override[] => {
          const fixture = kitchen.fixtures[at]?.id;
          return fixture === undefined
            ? []
            : [{ fixture, method, saidBy: 'our rabbi', saidOn: '2026-03-01' }];
        }),
      },
    }));
}

describe('the second statement', () => {
  it('speaks of every row of the table, and of no other', () => {
    expect(Object.keys(WHERE).toSorted()).toEqual(CAUTIONS.map(({ id }) => id).toSorted());
  });

  it('knows each row by at least the kinds that the table gives it', () => {
    for (const { id, kinds } of CAUTIONS) {
      const where = WHERE[id] ?? {};
      const known = [
        ...(where.gate ? ['gate'] : []),
        ...(where.standing ? ['standing'] : []),
        ...(where.after ? ['after'] : []),
        ...(WHOLE[id] ? ['plan'] : []),
      ];
      // A clock is a standing caution beside the digits.
      const given = kinds.map((kind) => (kind === 'timer' ? 'standing' : kind));
      expect({ id, kinds: known.toSorted() }).toEqual({ id, kinds: given.toSorted() });
    }
  });
});

describe.each(DEMOS)('%s', (demo) => {
  const kitchen = kitchenOf(demo);

  it('has every caution exactly where it must stand', () => {
    expectExactlyThere(buildPlan(kitchen));
  });

  it.each([
    ['sephardic', 1],
    ['sephardic', 2],
    ['ashkenazic', 1],
    ['ashkenazic', 2],
  ] as const)('the same by the %s custom with %i at work', (custom, people) => {
    expectExactlyThere(buildPlan(inHousehold(kitchen, custom, people)));
  });

  it('warns of heat where the room gets hot and nowhere else', () => {
    const plan = buildPlan(kitchen);
    const should = shouldBeHot(plan);
    expect([takenForHot(plan), undefined]).toContain(should);
  });
});

describe('what a caution refers to is in the plan', () => {
  it('each electric kettle is told its socket where it is switched on', () => {
    for (const demo of DEMOS) {
      const plan = buildPlan(kitchenOf(demo));
      for (const step of plan.steps) {
        if (!step.gates.includes('electric-load')) continue;
        const circuit = plan.resources.find(
          ({ id, kind }) => kind === 'circuit' && step.demands[id] !== undefined,
        );
        const told = step.stages[0]?.detail.find(({ key }) => key === 'steps.vessel.plug-into');
        expect(told?.params, step.id).toEqual({
          circuit: circuit && inEnglish.say(circuit.name),
        });
      }
    }
  });

  it('no self-clean runs through the night', () => {
    const DAY_H = 24;
    const WORKDAY_H = 14;
    for (const demo of DEMOS) {
      const plan = buildPlan(kitchenOf(demo));
      for (const { id, kind, durationS } of plan.steps) {
        if (kind !== 'self-clean') continue;
        const startH = (plan.timetable.startS[id] ?? Number.NaN) / 3600;
        const endsH = (startH % DAY_H) + durationS.typical / 3600;
        expect(endsH, `${demo} ${id}`).toBeLessThanOrEqual(WORKDAY_H + 0.001);
      }
    }
  });
});

describe('every material and every burner', () => {
  const flat = kitchenOf('flat-coils');

  it.each(MATERIALS)('%s, poured as a counter and by hand as a shelf', (material) => {
    const small = only(flat, 'counter-left', 'wall-cupboard');
    const top = withFixture(small, 'counter-left', { material });
    const shelf = withFixture(top, 'wall-cupboard', { material });
    for (const method of ['pour', 'immerse', 'light-heat'] as const)
      expectExactlyThere(buildPlan(withMethod(shelf, 'wall-cupboard', method)));
    expectExactlyThere(buildPlan(withMethod(top, 'counter-left', 'pour')));
  });

  it.each(BURNER_TYPES)('%s, glowing and at its highest', (type) => {
    const burning: Kitchen = {
      ...flat,
      fixtures: only(flat, 'range-top', 'sink').fixtures.map((one) =>
        one.kind === 'cooktop'
          ? { ...one, burners: one.burners.map((burner) => ({ ...burner, type })) }
          : one,
      ),
      vessels: [
        ...flat.vessels,
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
    for (const custom of ['sephardic', 'ashkenazic'] as const) {
      const kitchen = inHousehold(burning, custom, 1);
      expectExactlyThere(buildPlan(kitchen));
      for (const method of ['glow', 'light-heat'] as const)
        expectExactlyThere(buildPlan(withMethod(kitchen, 'range-top', method)));
    }
  });
});

describe('any kitchen', () => {
  it('has every caution exactly where it must stand', () => {
    fc.assert(
      fc.property(kitchens(), (kitchen) => {
        expectExactlyThere(buildPlan(kitchen));
      }),
      { numRuns: runs(60) },
    );
  });

  it('has it whatever method was answered', () => {
    fc.assert(
      fc.property(answered(), (kitchen) => {
        expectExactlyThere(buildPlan(kitchen));
      }),
      { numRuns: runs(60) },
    );
  });

  it('warns of heat at every heated step of a hot room, and never in a cool one', () => {
    let decided = 0;
    fc.assert(
      fc.property(kitchens(), (kitchen) => {
        const plan = buildPlan(kitchen);
        const should = shouldBeHot(plan);
        if (should === undefined || !plan.steps.some(({ kind }) => HEATED.includes(kind))) return;
        decided += 1;
        expect(takenForHot(plan)).toBe(should);
      }),
      { numRuns: 60, seed: 7 },
    );
    expect(decided).toBeGreaterThan(10);
  });

  it('is reminded to look at least every ten minutes at a burner and every hour at an oven', () => {
    fc.assert(
      fc.property(answered(), (kitchen) => {
        for (const step of buildPlan(kitchen).steps) {
          if (!HEATED.includes(step.kind)) continue;
          const isOven = kitchen.fixtures.some((f) => f.id === step.fixture && f.kind === 'oven');
          for (const { timers } of step.stages) {
            const longS = isOven ? 3600 : 600;
            if (!timers.some(({ role, purpose }) => role === 'hold' && purpose === 'unbroken'))
              continue;
            const looks = timers.filter(
              ({ role, purpose, repeats, lengthS }) =>
                role === 'reminder' && purpose === 'at-most' && repeats && lengthS <= longS,
            );
            expect({ step: step.id, looks: looks.length > 0 }).toEqual({
              step: step.id,
              looks: true,
            });
          }
        }
      }),
      { numRuns: runs(60) },
    );
  });
});
