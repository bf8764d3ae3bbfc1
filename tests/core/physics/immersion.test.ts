import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import heats from '../../../shared/physics/specific-heats.json';
import {
  boilingTemp,
  dipRecovery,
  immersionDrop,
  immersionRecovery,
  potLoss,
  specificHeat,
  specificHeatIds,
  water,
} from '../../../src/core/physics/index.ts';

const immersion = fc.record({
  waterL: fc.double({ min: 0.5, max: 100, noNaN: true }),
  waterC: fc.double({ min: 60, max: 100, noNaN: true }),
  itemKg: fc.double({ min: 0, max: 20, noNaN: true }),
  itemMaterial: fc.constantFrom(...specificHeatIds()),
  itemC: fc.double({ min: 0, max: 60, noNaN: true }),
});

const FIRE = { powerW: 3000, efficiency: 0.5, lossW: 300 };

describe('what is dipped', () => {
  it('ends between both temperatures, its band in order', () => {
    fc.assert(
      fc.property(immersion, (one) => {
        const { low, typical, high } = immersionDrop(one).mixedC;
        expect(low).toBeLessThanOrEqual(typical);
        expect(typical).toBeLessThanOrEqual(high);
        expect(low).toBeGreaterThanOrEqual(one.itemC - 1e-9);
        expect(high).toBeLessThanOrEqual(one.waterC + 1e-9);
      }),
    );
  });

  it('takes what the water gives, to two thousandths', () => {
    fc.assert(
      fc.property(immersion, (one) => {
        fc.pre(one.itemKg > 0.01 && one.waterC - one.itemC > 1);
        const { typical } = immersionDrop(one).mixedC;
        const took = one.itemKg * specificHeat(one.itemMaterial).typical * (typical - one.itemC);
        const waterKg = (one.waterL / 1000) * water({ tempC: one.waterC }).densityKgM3;
        const middle = water({ tempC: (one.waterC + typical) / 2 }).heatCapacityJKgK;
        const gave = waterKg * middle * (one.waterC - typical);
        expect(Math.abs(gave / took - 1)).toBeLessThan(2e-3);
      }),
    );
  });

  it('drops the water more the more of it there is', () => {
    fc.assert(
      fc.property(immersion, (one) => {
        const more = immersionDrop({ ...one, itemKg: one.itemKg + 0.5 }).mixedC.typical;
        expect(more).toBeLessThanOrEqual(immersionDrop(one).mixedC.typical + 1e-9);
      }),
    );
  });

  it('is refused when so hot that the water would boil', () => {
    const hot = { waterL: 0.1, waterC: 95, itemKg: 5, itemMaterial: 'steel', itemC: 300 };
    expect(() => immersionDrop(hot)).toThrow(/itemC/);
    expect(() => immersionDrop({ ...hot, itemMaterial: 'cheese' })).toThrow(/itemMaterial/);
  });
});

describe('until it boils again', () => {
  it('takes longer with a weaker burner and with more loss', () => {
    fc.assert(
      fc.property(immersion, (one) => {
        const at = { ...one, ...FIRE, altitudeM: 0 };
        const plain = immersionRecovery(at).recoverS;
        expect(plain.low).toBeLessThanOrEqual(plain.typical);
        expect(plain.typical).toBeLessThanOrEqual(plain.high);
        const weaker = immersionRecovery({ ...at, powerW: 2000 }).recoverS.typical;
        const lossy = immersionRecovery({ ...at, lossW: 600 }).recoverS.typical;
        expect(weaker).toBeGreaterThanOrEqual(plain.typical);
        expect(lossy).toBeGreaterThanOrEqual(plain.typical);
      }),
    );
  });

  it('ends at the boil of this altitude', () => {
    const altitudeM = 1609;
    const { tempC } = boilingTemp({ altitudeM });
    const one = { waterL: 10, waterC: tempC, itemKg: 1, itemMaterial: 'steel', itemC: 20 };
    const high = immersionRecovery({ ...one, ...FIRE, altitudeM });
    expect(high.boilingC).toBe(tempC);
    const low = immersionRecovery({ ...one, waterC: 99.97, ...FIRE, altitudeM: 0 });
    // The steel comes less far, so it is sooner.
    expect(high.recoverS.typical).toBeLessThan(low.recoverS.typical);
    expect(() => immersionRecovery({ ...one, waterC: 99.97, ...FIRE, altitudeM })).toThrow(
      /waterC/,
    );
  });

  it('is the same for one thing and for its parts', () => {
    const bath = { waterL: 12, waterC: 99, itemC: 20, ...FIRE, altitudeM: 0 };
    const one = immersionRecovery({ ...bath, itemKg: 2, itemMaterial: 'copper' });
    const c = specificHeat('copper');
    const itemJK = { low: 2 * c.low, typical: 2 * c.typical, high: 2 * c.high };
    expect(dipRecovery({ ...bath, itemJK })).toEqual(one);
  });

  it('is refused where the burner does not carry the losses', () => {
    const one = { waterL: 40, waterC: 99, itemKg: 2, itemMaterial: 'steel', itemC: 20 };
    const weak = { ...one, powerW: 1000, efficiency: 0.5, lossW: 480, altitudeM: 0 };
    expect(() => immersionRecovery(weak)).toThrow(/powerW is 1000; allowed: more than 1067 W/);
  });
});

describe('a pot', () => {
  it('loses less under a lid', () => {
    const pot = { diameterM: 0.28, heightM: 0.2 };
    const open = potLoss({ ...pot, lid: false }).lossW;
    const lidded = potLoss({ ...pot, lid: true }).lossW;
    expect(lidded.high).toBeLessThan(open.typical);
    // 3600 Btu/(h ft²) on 0.0616 m² and 360 on a wall of 0.176 m², as the table says.
    expect(open.typical).toBeCloseTo(699 + 200, -1);
  });
});

describe('shared/physics/specific-heats.json', () => {
  it('names each material once', () => {
    expect(new Set(specificHeatIds()).size).toBe(heats.rows.length);
  });
});
