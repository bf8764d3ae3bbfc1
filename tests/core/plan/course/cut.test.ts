import { describe, expect, it } from 'vitest';
import { buildPlan, courseOf } from '../../../../src/core/plan/index.ts';
import { hoursOf } from '../../../../src/core/advice/index.ts';
import { cutOf } from '../../../../src/core/plan/course/index.ts';
import { MS_PER_SECOND } from '../../../../src/core/units/index.ts';
import { endS, kitchenOf } from '../support/plans.ts';

/** Eve of Passover 2027 in Denver, 17:00: candle lighting is at 19:27. */
const EVE_MS = Date.UTC(2027, 3, 21, 23);
/** A month before it. */
const EARLY_MS = Date.UTC(2027, 2, 21, 16);

const planned = (startWallMs: number) => buildPlan(kitchenOf('mountain-gas'), { startWallMs });

describe('where nothing is purged any more', () => {
  it('a plan is cut at candle lighting: what purges after it is named, all of it and nothing else', () => {
    const plan = planned(EVE_MS);
    const cut = cutOf(plan);
    const hard = plan.days?.deadline?.hard;
    if (!cut || !hard) throw new Error('The plan keeps its hour.');
    expect(cut.atS).toBe((hard.atWallMs - EVE_MS) / MS_PER_SECOND);
    const after = plan.steps.filter(
      ({ id, phase }) => phase === 'purge' && endS(plan, id) > cut.atS,
    );
    expect(after.length).toBeGreaterThan(10);
    expect([...cut.steps].toSorted()).toEqual(after.map(({ id }) => id).toSorted());
    expect(cut.fixtures.length).toBe(6);
    expect(courseOf(plan, hoursOf(plan).work).cut).toEqual(cut);
  });

  it('a plan that keeps its hours is not cut, nor one without any', () => {
    expect(cutOf(planned(EARLY_MS))).toBeUndefined();
    expect(cutOf(buildPlan(kitchenOf('mountain-gas')))).toBeUndefined();
  });
});
