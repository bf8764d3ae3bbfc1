import { describe, expect, it } from 'vitest';
import { batchTimes, buildUtensilPlan } from '../../../src/core/utensils/index.ts';
import { exactly } from '../../../src/core/units/index.ts';
import { demoKitchen } from '../kitchen/demos.ts';

const { batches } = buildUtensilPlan(demoKitchen('mountain-gas.kitchen.json'));
const [batch] = batches;

describe('when batches go in', () => {
  it('follows the boil of each fresh water and of each dip', () => {
    const like = (freshWater: boolean, dips: number) => ({
      ...batch!,
      freshWater,
      dips,
      recoverS: exactly(30),
    });
    const times = batchTimes([like(false, 4), like(false, 2), like(true, 1)], exactly(1000));
    expect(times).toEqual([
      { startS: 1000, lengthS: 120 },
      { startS: 1120, lengthS: 60 },
      { startS: 2180, lengthS: 30 },
    ]);
  });
});
