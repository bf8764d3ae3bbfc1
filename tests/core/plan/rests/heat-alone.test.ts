import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerAs, REST_ROW, withAnswer } from '../../../../src/core/custom/index.ts';
import type { Kitchen } from '../../../../src/core/kitchen/index.ts';
import { buildPlan, checkPlan, whatItChanges } from '../../../../src/core/plan/index.ts';
import { kitchens } from '../../kitchen/arbitrary/kitchen-arbitrary.ts';
import { DEMOS, kitchenOf, stepsOf } from '../support/plans.ts';
import { runs } from '../../../support/runs.ts';

const SAID = { saidBy: 'our rabbi', saidOn: '2026-03-01' };

function restQuestions(kitchen: Kitchen) {
  return buildPlan(kitchen).questions.filter(({ row }) => row === REST_ROW);
}

/** Told of every fixture that is asked about that its heat needs no rest. */
function needsNone(kitchen: Kitchen): Kitchen {
  return restQuestions(kitchen).reduce((now, question) => {
    const none = question.answers?.find(({ rest }) => rest === false);
    return none ? withAnswer(now, answerAs(question, none, SAID)) : now;
  }, kitchen);
}

describe('whether heat alone needs the rest', () => {
  it.each(DEMOS)('is asked in %s, of what glows or cleans itself; until then it rests', (demo) => {
    const plan = buildPlan(kitchenOf(demo));
    const asked = plan.questions.filter(({ row }) => row === REST_ROW);
    expect(asked.length).toBeGreaterThan(0);
    for (const { fixture, about } of asked) {
      expect(about).toBe('ruling');
      expect(['glow', 'self-clean']).toContain(
        plan.methods.find((one) => one.fixture === fixture)?.method,
      );
      expect(stepsOf(plan, 'rest', fixture)).toHaveLength(1);
    }
  });

  it.each(DEMOS)('takes the rest out of %s when it is answered so, and hours off it', (demo) => {
    // What is dipped and soaked has a rest of its own.
    const { utensils: _apart, ...kitchen } = kitchenOf(demo);
    const plan = buildPlan(needsNone(kitchen));
    expect(checkPlan(plan)).toEqual([]);
    for (const { fixture } of restQuestions(kitchen))
      expect(stepsOf(plan, 'rest', fixture)).toEqual([]);
    expect(plan.timetable.finishS).toBeLessThan(buildPlan(kitchen).timetable.finishS - 3600);
  });

  it('tells the hours that the answer saves', () => {
    const kitchen = kitchenOf('flat-coils');
    const oven = restQuestions(kitchen).find(({ fixture }) => fixture === 'oven');
    if (!oven) throw new Error('The flat asks nothing about the rest of its oven.');
    const [rests, none] = whatItChanges(kitchen, oven);
    expect(rests).toMatchObject({ answer: { rest: true }, finishS: 0 });
    expect(none?.answer.rest).toBe(false);
    expect(none?.finishS ?? 0).toBeLessThan(-6 * 3600);
  });

  it('leaves in any kitchen, with both customs, the rest before every drop of water', () => {
    fc.assert(
      fc.property(kitchens(), (kitchen) => {
        const plan = buildPlan(needsNone(kitchen));
        expect(checkPlan(plan)).toEqual([]);
      }),
      { numRuns: runs(80) },
    );
  });
});
