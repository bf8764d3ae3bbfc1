import { describe, expect, it } from 'vitest';
import { stepCautions } from '../../../../src/app/pages/run/step/step-cautions.ts';
import { CAUTIONS } from '../../../../src/core/plan/cautions/index.ts';
import { buildPlan, type Plan } from '../../../../src/core/plan/index.ts';
import { DEMOS, kitchenOf, planOfDemo, step, stepsOf } from '../../../core/plan/support/plans.ts';

function at(plan: Plan, id: string, stage: number) {
  const { shown, more } = stepCautions(plan, { step: step(plan, id), stage });
  const ids = (list: typeof shown) => list.map((one) => one.id);
  return { shown: ids(shown), more: ids(more) };
}

describe('the cautions beside a pour', () => {
  const coils = planOfDemo('flat-coils');

  it('are at most two, and none is lost behind the press', () => {
    for (const demo of DEMOS) {
      const plan = planOfDemo(demo);
      for (const pour of stepsOf(plan, 'pour'))
        pour.stages.forEach((_, stage) => {
          const { shown, more } = at(plan, pour.id, stage);
          expect(shown.length).toBeLessThanOrEqual(2);
          const last = stage === pour.stages.length - 1;
          const due = [...pour.standing, ...(last ? pour.after : [])];
          expect([...shown, ...more].toSorted()).toEqual(due.toSorted());
        });
    }
  });

  it('are those that the pour adds to its kettle, the gravest first', () => {
    expect(at(coils, 'pour-sink-1', 0)).toEqual({
      shown: ['splash', 'pour-drain'],
      more: ['alone', 'scald-carry'],
    });
    expect(at(coils, 'pour-counter-left-1', 0)).toEqual({
      shown: ['pour-stance', 'alone'],
      more: ['scald-carry'],
    });
  });

  it('are led by what is due at the end, when the end is there', () => {
    expect(at(coils, 'pour-sink-1', 1).shown).toEqual(['wet-floor', 'splash']);
  });
});

describe('the cautions beside other work', () => {
  it('are all there, those for its end when its last stage is reached', () => {
    const plan = buildPlan(kitchenOf('flat-coils'));
    for (const one of plan.steps) {
      if (one.kind === 'pour') continue;
      const last = one.stages.length - 1;
      expect(at(plan, one.id, last).more).toEqual([]);
      expect(at(plan, one.id, last).shown.toSorted()).toEqual(
        [...one.standing, ...one.after].toSorted(),
      );
      if (last > 0) expect(at(plan, one.id, 0).shown.toSorted()).toEqual(one.standing.toSorted());
    }
    expect(CAUTIONS.some(({ kinds }) => kinds.includes('after'))).toBe(true);
  });
});
