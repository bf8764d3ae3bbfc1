import { describe, expect, it } from 'vitest';
import {
  answerAs,
  chooseMethod,
  questionList,
  withAnswer,
  withoutAnswer,
} from '../../../src/core/custom/index.ts';
import {
  formatKitchen,
  parseKitchen,
  type Kitchen,
  type Override,
} from '../../../src/core/kitchen/index.ts';
import { buildPlan, checkPlan } from '../../../src/core/plan/index.ts';
import { demoKitchen } from '../kitchen/demos.ts';

const FLAT = demoKitchen('flat-coils.kitchen.json');
const SAID = { saidBy: 'our rabbi', saidOn: '2027-02-03' } as const;

function methodOfSink(kitchen: Kitchen) {
  const sink = kitchen.fixtures.find(({ id }) => id === 'sink');
  return sink && chooseMethod(sink, kitchen).method;
}

function said(kitchen: Kitchen, answer: Omit<Override, 'saidBy' | 'saidOn'>): Kitchen {
  return withAnswer(kitchen, { ...answer, ...SAID });
}

describe('the order in which a sink is poured', () => {
  const order = (kitchen: Kitchen) =>
    questionList(kitchen).toAsk.filter(({ row }) => row === 'pour-order');
  const [question] = order(FLAT);
  const told = 'Spout, rim, walls, floor.';
  const inOrder = withAnswer(
    FLAT,
    answerAs(question!, { method: 'pour', cover: false }, { ...SAID, text: told }),
  );

  it('is asked once, last, whatever is said of a part of the sink or another row', () => {
    expect(questionList(FLAT).toAsk.at(-1)).toEqual(question);
    const part = said(FLAT, { fixture: 'sink', part: 'sprayer-hose', method: 'replace' });
    expect(order(part)).toEqual([question]);
    const row = said(FLAT, { fixture: 'sink', row: 'sink-scratched', method: 'pour' });
    expect(order(row)).toEqual([question]);
  });

  it('is answered by a word that changes nothing else of the sink', () => {
    expect(order(inOrder)).toEqual([]);
    expect(methodOfSink(inOrder)).toEqual(methodOfSink(FLAT));
    expect(questionList(inOrder).answered).toMatchObject([{ row: 'pour-order', answer: told }]);
    const pour = buildPlan(inOrder).steps.find(({ id }) => id === 'pour-sink-1');
    expect(JSON.stringify(pour?.stages[0]?.detail)).toContain(told);
    expect(checkPlan(buildPlan(inOrder))).toEqual([]);
  });

  it('can be answered by either way that the plan can take, and the plan takes it', () => {
    const parts = (kitchen: Kitchen) => {
      const plan = buildPlan(kitchen);
      expect(checkPlan(plan)).toEqual([]);
      const pours = plan.steps.filter(({ id }) => /^pour-sink-\d+$/u.test(id));
      const picture = pours[0]?.picture;
      return picture?.kind === 'sink' ? picture.parts.map(({ name }) => name.key) : [];
    };
    const by = (way: number) =>
      withAnswer(
        FLAT,
        answerAs(question!, question!.answers![way]!, { ...SAID, text: 'As said.' }),
      );
    expect(question?.answers?.map(({ method }) => method)).toEqual(['pour', 'pour']);
    const down = parts(FLAT);
    expect(down.length).toBeGreaterThan(3);
    expect(parts(by(0))).toEqual(down);
    const up = parts(by(1));
    expect(up[0]).toMatch(/floor|shared/u);
    expect(JSON.stringify(up)).not.toBe(JSON.stringify(down));
    expect(order(by(0))).toEqual([]);
    expect(parseKitchen(formatKitchen(by(1)))).toMatchObject({ kitchen: by(1) });
  });

  it('is asked again once the word is taken back, and the sink stays as it was', () => {
    expect(withoutAnswer(inOrder, 'sink', question)).toEqual(FLAT);
  });

  it('is answered, too, by a word about the sink as a whole', () => {
    const whole = said(FLAT, { fixture: 'sink', method: 'pour', cover: false, text: told });
    expect(order(whole)).toEqual([]);
    expect(questionList(whole).answered).toContainEqual(
      expect.objectContaining({ row: 'pour-order', answer: told }),
    );
  });
});
