import { describe, expect, it } from 'vitest';
import { planCovers } from '../../../src/core/covering/index.ts';
import { answerAs, withAnswer } from '../../../src/core/custom/index.ts';
import type { Kitchen } from '../../../src/core/kitchen/index.ts';
import { buildPlan } from '../../../src/core/plan/index.ts';
import { productsOf, productsText } from '../../../src/core/handouts/index.ts';
import { buildUtensilPlan } from '../../../src/core/utensils/index.ts';
import { inEnglish } from '../../support/english.ts';
import { DEMO_TEXTS, demoKitchen } from '../kitchen/demos.ts';

function bought(kitchen: Kitchen) {
  const plan = buildPlan(kitchen);
  return { plan, products: productsOf(plan, planCovers(kitchen, plan), buildUtensilPlan(kitchen)) };
}

const said = (kitchen: Kitchen) =>
  productsText(bought(kitchen).products, () => false, 'K', inEnglish);

describe.each(DEMO_TEXTS.map(([file]) => file))('what is bought for %s', (file) => {
  const kitchen = demoKitchen(file);
  const { plan, products } = bought(kitchen);

  it('has each product once, and everything the plan wants', () => {
    const ids = products.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const wanted = plan.shopping.filter(({ id }) => !/^(cover|parts)-/.test(id));
    expect(ids).toEqual(expect.arrayContaining(wanted.map(({ id }) => id)));
    const covers = plan.shopping.filter(({ id }) => id.startsWith('cover-'));
    expect(ids.filter((id) => id.startsWith('cover-'))).toHaveLength(covers.length);
    const parts = plan.methods.flatMap(({ parts: of = [] }) =>
      of.flatMap(({ part, method }) => (method === 'replace' ? [`part-${part}`] : [])),
    );
    expect(ids.filter((id) => id.startsWith('part-')).toSorted()).toEqual(
      [...new Set(parts)].toSorted(),
    );
  });

  it('is told with its reasons, and without what is ticked', () => {
    const text = productsText(products, () => false, kitchen.name, inEnglish);
    expect(text).not.toMatch(/undefined|\[object|handouts\.|plan\.buy/);
    const [first, ...rest] = products;
    const ticked = productsText(products, (id) => id === first!.id, kitchen.name, inEnglish);
    expect(ticked).not.toContain(`[ ] ${inEnglish.say(first!.name)}`);
    for (const { name } of rest) expect(ticked).toContain(`[ ] ${inEnglish.say(name)}`);
    expect(productsText(products, () => true, kitchen.name, inEnglish)).toContain(
      'Everything is there.',
    );
  });
});

describe('what waits for an answer', () => {
  const mountain = demoKitchen('mountain-gas.kitchen.json');

  it('is a cover that an answer may make needless, and no longer once it is answered', () => {
    const waiting = bought(mountain).products.filter(
      ({ id, when }) => id.startsWith('cover-') && when === 'wait',
    );
    expect(waiting.map(({ id }) => id)).toContain('cover-rack-in-bowls');
    const questions = bought(mountain).plan.questions.filter(
      ({ part, answers = [] }) =>
        part === undefined &&
        answers.some(({ cover }) => cover) &&
        answers.some(({ cover }) => !cover),
    );
    expect(questions.length).toBeGreaterThan(0);
    const answered = questions.reduce((kitchen, question) => {
      const answer = question.answers!.find(({ cover }) => cover)!;
      const by = { saidBy: 'the rabbi', saidOn: '2026-03-01' };
      return withAnswer(kitchen, answerAs(question, answer, by));
    }, mountain);
    const after = bought(answered).products.filter(({ id }) => id.startsWith('cover-'));
    expect(after.map(({ id }) => id)).toContain('cover-rack-in-bowls');
    expect(after.filter(({ when }) => when === 'wait')).toEqual([]);
  });

  it('is what the plan does without and an answer may ask for', () => {
    const hot = {
      ...mountain,
      fixtures: mountain.fixtures.map((one) =>
        one.kind === 'counter' ? { ...one, hotFood: true } : one,
      ),
    };
    const { products } = bought(hot);
    const asked = products.filter(({ when }) => when === 'only-if-said');
    expect(asked.map(({ id }) => id).toSorted()).toEqual(['if-part-grates', 'stone']);
    expect(said(hot)).toMatch(/long tongs[^\n]*\(only if your rabbi says so\)/);
    expect(bought(mountain).products.map(({ id }) => id)).not.toContain('stone');
  });

  it('is marked as lent where it is used once', () => {
    expect(said(mountain)).toMatch(/Step ladder: 1 \(may be borrowed\)/);
    expect(said(mountain)).not.toMatch(/gloves[^.]*may be borrowed/);
  });
});
