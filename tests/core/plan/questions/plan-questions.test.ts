import { describe, expect, it } from 'vitest';
import { answerAs, questionListText, withAnswer } from '../../../../src/core/custom/index.ts';
import { rabbiHandout, rabbiHandoutText } from '../../../../src/core/handouts/index.ts';
import { buildPlan, planQuestions } from '../../../../src/core/plan/index.ts';
import { inEnglish } from '../../../support/english.ts';
import { kitchenOf } from '../support/plans.ts';

/** Inside Passover of 2027 in New York, ms. */
const INSIDE_MS = Date.UTC(2027, 3, 25, 14);
const MARCH_MS = Date.UTC(2027, 2, 1, 15);

describe('what only a plan asks', () => {
  it('has the spots that no arm reaches, with what may be done, until somebody ruled', () => {
    const kitchen = kitchenOf('mountain-gas');
    const plan = buildPlan(kitchen, { startWallMs: MARCH_MS });
    const asked = planQuestions(plan, kitchen);
    expect(asked.map(({ id }) => id)).toEqual(['ask-counter-corner-unreached']);
    const [question] = asked;
    if (!question) throw new Error('Nothing is asked.');
    expect(inEnglish.say(question.ask)).toMatch(/no arm reaches with a kettle: \d+\u00a0cm²/);
    // Pour, then cover: it comes into the plan, and is not asked again.
    const said = { saidBy: 'our rabbi', saidOn: '2027-02-25' };
    const [cover] = question.answers ?? [];
    if (!cover) throw new Error('No answer is known.');
    const ruled = withAnswer(kitchen, answerAs(question, cover, said));
    const next = buildPlan(ruled, { startWallMs: MARCH_MS });
    expect(planQuestions(next, ruled)).toEqual([]);
    expect(next.methods.find(({ fixture }) => fixture === question.fixture)).toMatchObject({
      method: 'pour',
      cover: true,
    });
  });

  it('has what would be closed up inside Passover, until it was allowed', () => {
    const flat = kitchenOf('flat-coils');
    const kitchen = { ...flat, household: { ...flat.household, purpose: 'passover' as const } };
    const plan = buildPlan(kitchen, { startWallMs: INSIDE_MS });
    const asked = planQuestions(plan, kitchen);
    const inside = asked.filter(({ id }) => id.endsWith('-inside-passover'));
    expect(inside.length).toBeGreaterThan(0);
    // Once only: what the plan asks is not in the list of the kitchen too.
    const handout = rabbiHandout(kitchen, asked).map(({ question }) => question.id);
    expect(new Set(handout).size).toBe(handout.length);
    for (const { id } of inside) expect(handout).toContain(id);
    const ask = inEnglish.t('custom.inside-passover.ask');
    expect(questionListText(kitchen, inEnglish, asked)).toContain(ask);
    expect(rabbiHandoutText(kitchen, {}, inEnglish, asked)).toContain(ask);
    const [first] = inside;
    if (!first) throw new Error('Nothing is asked.');
    const ruled = withAnswer(
      kitchen,
      answerAs(
        { fixture: first.fixture },
        { method: 'pour', cover: false },
        { saidBy: 'our rabbi', saidOn: '2027-04-25' },
      ),
    );
    expect(planQuestions(plan, ruled).map(({ id }) => id)).not.toContain(first.id);
  });

  it('is nothing where all is reached, and no day forbids it', () => {
    const kitchen = kitchenOf('flat-glass-230');
    expect(planQuestions(buildPlan(kitchen, { startWallMs: MARCH_MS }), kitchen)).toEqual([]);
  });
});
