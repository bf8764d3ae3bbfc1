import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import table from '../../../shared/utensils/utensils.json';
import type { Kitchen, Utensil } from '../../../src/core/kitchen/index.ts';
import { hobEfficiency, potLoss } from '../../../src/core/physics/index.ts';
import { buildUtensilPlan, describeUtensils } from '../../../src/core/utensils/index.ts';
import { inEnglish } from '../../support/english.ts';
import { demoKitchen } from '../kitchen/demos.ts';
import { utensils } from '../kitchen/arbitrary/utensil-arbitrary.ts';

const mountain = demoKitchen('mountain-gas.kitchen.json');
const burner = mountain.fixtures.flatMap((one) => (one.kind === 'cooktop' ? one.burners : []))[0]!;

/** The mountain house at sea level with one pot on its burner. */
function withPot(some: readonly Utensil[], maxFillL = 14): Kitchen {
  return {
    ...mountain,
    altitudeM: 0,
    vessels: [
      {
        id: 'stock-pot',
        name: 'Stock pot',
        kind: 'pot',
        body: 'steel',
        maxFillL,
        ratedW: 0,
        ratedV: 120,
        burner: burner.id,
        count: 1,
      },
    ],
    utensils: some,
  };
}

const forks: Utensil = {
  id: 'forks',
  kind: 'cutlery',
  count: 12,
  material: 'stainless-steel',
  use: 'fire-liquid',
  condition: 'smooth',
  designation: 'meat',
};

describe('batches of random utensils', () => {
  const plans = fc
    .tuple(utensils(), fc.integer({ min: 3, max: 40 }))
    .map(([some, litres]) => ({ some, litres, plan: buildUtensilPlan(withPot(some, litres)) }));

  it('hold each piece that is immersed once, or say that the pot does not take it', () => {
    fc.assert(
      fc.property(plans, ({ plan: { choices, batches, unfit } }) => {
        for (const { utensil, count, method } of choices) {
          const held = batches
            .flatMap(({ items }) => items)
            .filter((item) => item.utensil === utensil)
            .reduce((sum, item) => sum + item.count, 0);
          const outside = unfit.some((one) => one.utensil === utensil);
          expect(held).toBe(method === 'immerse' && !outside ? count : 0);
        }
      }),
    );
  });

  it('share their water with their like only, dairy before meat before neutral', () => {
    const order = ['dairy', 'meat', 'pareve', 'undecided'];
    fc.assert(
      fc.property(plans, ({ some, plan: { batches } }) => {
        const groupOf = new Map(some.map((one) => [one.id, one.was ?? one.designation]));
        let before: string | undefined;
        for (const { group, items, freshWater } of batches) {
          for (const { utensil } of items) expect(groupOf.get(utensil)).toBe(group);
          expect(freshWater).toBe(before !== undefined && before !== group);
          expect(order.indexOf(group)).toBeGreaterThanOrEqual(order.indexOf(before ?? 'dairy'));
          before = group;
        }
      }),
    );
  });

  it('leave the pot at its mark with water over everything, and loosely filled', () => {
    const { looseShare, displacedShare, mostPieces } = table.pot;
    fc.assert(
      fc.property(plans, ({ litres, plan: { batches, boilingC } }) => {
        for (const batch of batches) {
          const pieces = batch.items.reduce((sum, { count }) => sum + count, 0);
          expect(batch.fillL + batch.displacedL).toBeCloseTo(litres, 9);
          expect(batch.fillL).toBeGreaterThanOrEqual(litres / 2 - 1e-9);
          expect(pieces).toBeLessThanOrEqual(mostPieces);
          expect(batch.dips).toBe(batch.hold === 'tongs' ? 2 * pieces : 1);
          if (batch.hold === 'net' && pieces > 1)
            expect(batch.displacedL).toBeLessThanOrEqual(displacedShare * litres + 1e-9);
          expect(batch.mixedC.high).toBeLessThanOrEqual(boilingC + 1e-9);
          expect(batch.recoverS.low).toBeLessThanOrEqual(batch.recoverS.high);
        }
        expect(looseShare).toBeLessThan(1);
      }),
    );
  });

  it('are told line by line', () => {
    fc.assert(
      fc.property(plans, ({ plan }) => {
        const text = describeUtensils(plan, 'Random kitchen', inEnglish);
        expect(text).not.toMatch(/undefined|NaN|\{|\[object/);
        expect(text.split('Batch ').length - 1).toBe(plan.batches.length);
      }),
      { numRuns: 50 },
    );
  });
});

describe('one batch by hand', () => {
  const plan = buildUtensilPlan(withPot([forks]));

  it('of twelve forks waits for what they take', () => {
    expect(plan.batches.length).toBe(1);
    const [batch] = plan.batches;
    // 12 · 0.05 kg of steel, 7900 kg/m³: 0.076 L; 477 J/(kg K) over 80 K.
    expect(batch!.displacedL).toBeCloseTo(0.076, 3);
    const heatJ = 12 * 0.05 * 477 * (plan.boilingC - 20);
    const netW = heatJ / batch!.recoverS.typical;
    // What of the burner arrives, less what a pot 28.7 cm across and 21.6 cm deep loses under its lid.
    const { lossW } = potLoss({ diameterM: 0.2875, heightM: 0.2157, lid: true });
    const heldW = burner.ratedW * hobEfficiency(burner.type).typical - lossW.typical;
    expect(netW / heldW).toBeCloseTo(1, 2);
    expect(plan.boilingC - batch!.mixedC.typical).toBeCloseTo(
      heatJ / (13.92 * 0.958 * 4216 + 0.28 * 4040),
      1,
    );
  });

  it('is wet where the tongs were: ladles are turned', () => {
    const ladles: Utensil = { ...forks, id: 'ladles', kind: 'ladle', count: 3 };
    const { batches } = buildUtensilPlan(withPot([ladles], 40));
    expect(batches).toMatchObject([{ hold: 'tongs', dips: 6 }]);
  });
});

describe('a pot', () => {
  it('that is missing is told, with how large it must be', () => {
    const plan = buildUtensilPlan({ ...withPot([forks]), vessels: [] });
    expect(plan.pot).toBeUndefined();
    expect(plan.unfit).toMatchObject([{ utensil: 'forks', boilsOver: false }]);
    expect(describeUtensils(plan, 'x', inEnglish)).toContain('borrow or buy one');
  });

  it('too large for the other boils over its own rim', () => {
    const plan = buildUtensilPlan(withPot([{ ...forks, id: 'pots', kind: 'pot', count: 1 }], 5));
    expect(plan.unfit).toMatchObject([{ utensil: 'pots', boilsOver: true }]);
    expect(describeUtensils(plan, 'x', inEnglish)).toContain('boil over its rim');
  });

  it('that its burner never brings to the boil is none', () => {
    expect(buildUtensilPlan(withPot([forks], 199)).pot).toBeUndefined();
  });

  it('is the one of several that takes the most', () => {
    const kitchen = withPot([{ ...forks, id: 'lids', kind: 'lid' }]);
    const [large] = kitchen.vessels;
    const small = { ...large!, id: 'small', maxFillL: 4 };
    const plan = buildUtensilPlan({ ...kitchen, vessels: [small, large!] });
    expect(plan.pot?.vessel).toBe('stock-pot');
  });
});

describe('after the purge', () => {
  it('what is of metal or glass and not put away goes to the mikveh', () => {
    const some: readonly Utensil[] = [
      { ...forks, forMikveh: true },
      { ...forks, id: 'spoons', kind: 'wooden-spoon', material: 'wood', forMikveh: true },
      { ...forks, id: 'sieve', kind: 'sieve', forMikveh: true },
      { ...forks, id: 'ours' },
    ];
    const plan = buildUtensilPlan(withPot(some));
    expect(plan.mikveh.map(({ utensil }) => utensil)).toEqual(['forks']);
    expect(describeUtensils(plan, 'x', inEnglish)).toContain('To the mikveh afterwards');
  });

  it('nothing is told where there are no utensils', () => {
    const plan = buildUtensilPlan({ ...mountain, utensils: [] });
    expect(plan).toMatchObject({ choices: [], batches: [], rules: [], unfit: [] });
    expect(describeUtensils(plan, 'x', inEnglish)).toContain('No utensils are told');
  });
});
