import { asWritten, message } from '../../../src/core/messages/index.ts';
import { inEnglish } from '../../support/english.ts';
import { describe, expect, it } from 'vitest';
import {
  answeredQuestions,
  chooseMethod,
  customName,
  customTable,
  questionList,
  questionListText,
  tableOf,
  withAnswer,
  withFound,
  withOwnCustom,
  withOwnRow,
  withoutAnswer,
  withoutOwnCustom,
  withoutOwnRow,
} from '../../../src/core/custom/index.ts';
import {
  formatKitchen,
  methodsForFixture,
  methodsForRow,
  parseKitchen,
  type Fixture,
  type Kitchen,
  type OwnRow,
} from '../../../src/core/kitchen/index.ts';
import { buildPlan, checkPlan, describePlan } from '../../../src/core/plan/index.ts';
import { DEMO_TEXTS, demoKitchen } from '../kitchen/demos.ts';

const FLAT = demoKitchen('flat-coils.kitchen.json');
const FIRE: OwnRow = {
  row: 'burner-fire',
  method: 'glow',
  minutes: 15,
  why: 'Fifteen minutes is what we were taught.',
  saidBy: 'our rabbi',
  saidOn: '2027-02-03',
};
const WAVE: OwnRow = {
  row: 'microwave',
  method: 'not-purged',
  why: 'We keep a microwave apart.',
  saidBy: 'our rabbi',
  saidOn: '2027-02-03',
};

function fixtureOf(kitchen: Kitchen, id: string): Fixture {
  const found = kitchen.fixtures.find((one) => one.id === id);
  if (!found) throw new Error(`no fixture ${id}`);
  return found;
}

function methodOf(kitchen: Kitchen, id: string) {
  return chooseMethod(fixtureOf(kitchen, id), kitchen).method;
}

describe('a custom of one’s own', () => {
  const own = withOwnRow(withOwnCustom(FLAT, 'As at home'), FIRE, 'unused');

  it('starts as a copy that changes nothing', () => {
    const copied = withOwnCustom(FLAT, 'As at home');
    expect(tableOf(copied.household)).toEqual(customTable('sephardic'));
    expect(buildPlan(copied).methods).toEqual(buildPlan(FLAT).methods);
  });

  it('changes its row, says whose it is, and leaves every other row', () => {
    expect(methodOf(own, 'range-top')).toMatchObject({
      method: 'glow',
      minutes: 15,
      term: message('custom.term.libun-gamur'),
      reason: asWritten(FIRE.why),
      source: message('custom.said-by', { saidBy: 'our rabbi', saidOn: '2027-02-03' }),
      ownRow: 'burner-fire',
    });
    expect(methodOf(own, 'range-top').overriddenBy?.params).toMatchObject({ custom: 'As at home' });
    const base = customTable('sephardic').rows;
    const changed = tableOf(own.household).rows.filter((row, at) => row !== base[at]);
    expect(changed.map(({ id }) => id)).toEqual(['burner-fire']);
  });

  it('is printed in the plan with who said it', () => {
    const text = describePlan(buildPlan(own), inEnglish);
    expect(text).toContain('Heat to glow, 15 min');
    expect(text).toContain('a row of our own custom “As at home”: our rabbi, 2027-02-03');
  });

  it('takes the question of its row off the list and shows it as answered', () => {
    const kitchen = withOwnRow(FLAT, WAVE, 'As at home');
    const { toAsk, answered } = questionList(kitchen);
    expect(questionList(FLAT).toAsk.map(({ fixture }) => fixture)).toContain('microwave');
    expect(toAsk.map(({ fixture }) => fixture)).not.toContain('microwave');
    expect(answered.find(({ fixture }) => fixture === 'microwave')).toMatchObject({
      by: 'own-row',
      saidBy: 'our rabbi',
      saidOn: '2027-02-03',
      answer: WAVE.why,
    });
  });

  it('yields to an answer about the one fixture', () => {
    const said = withAnswer(own, { ...answer('range-top'), method: 'glow', minutes: 5 });
    expect(methodOf(said, 'range-top')).toMatchObject({ minutes: 5 });
    expect(methodOf(said, 'range-top').ownRow).toBeUndefined();
  });

  it('goes back row by row, and whole', () => {
    expect(methodOf(withoutOwnRow(own, 'burner-fire'), 'range-top')).toEqual(
      methodOf(FLAT, 'range-top'),
    );
    expect(withoutOwnCustom(own)).toEqual(FLAT);
  });

  it('rests while the household follows the other custom, with a warning, and comes back', () => {
    const other: Kitchen = { ...own, household: { ...own.household, custom: 'ashkenazic' } };
    expect(tableOf(other.household)).toBe(customTable('ashkenazic'));
    expect(inEnglish.say(customName(other.household))).toBe('Ashkenazic');
    const read = parseKitchen(formatKitchen(other));
    expect('problems' in read ? read.problems : read.warnings.map(({ path }) => path)).toContain(
      'household.ownCustom.basedOn',
    );
    expect(inEnglish.say(customName(own.household))).toBe(
      'As at home (Sephardic, with 1 row of our own)',
    );
  });

  it('travels inside the kitchen file', () => {
    const read = parseKitchen(formatKitchen(own));
    expect('problems' in read ? read.problems : read.kitchen).toEqual(own);
  });
});

function answer(fixture: string) {
  return { fixture, saidBy: 'our rabbi', saidOn: '2027-02-03' } as const;
}

describe('an answer', () => {
  it('takes the question off the list, with who and when, until it is taken back', () => {
    const before = questionList(FLAT);
    const asked = before.toAsk.find(({ fixture }) => fixture === 'microwave');
    const said = withAnswer(FLAT, {
      ...answer('microwave'),
      method: 'steam',
      minutes: 10,
      text: 'Ten are enough.',
    });
    const after = questionList(said);
    expect(after.toAsk).toHaveLength(before.toAsk.length - 1);
    expect(after.answered).toEqual([
      {
        ...asked,
        answer: 'Ten are enough.',
        saidBy: 'our rabbi',
        saidOn: '2027-02-03',
        by: 'override',
      },
    ]);
    expect(questionList(withoutAnswer(said, 'microwave'))).toEqual(before);
  });

  it('stands alone: a second one takes the place of the first', () => {
    const once = withAnswer(FLAT, { ...answer('sink'), method: 'cover' });
    const twice = withAnswer(once, { ...answer('sink'), method: 'pour' });
    expect(twice.household.overrides).toHaveLength(1);
    expect(methodOf(twice, 'sink').method).toBe('pour');
  });

  it('leaves a question open that it did not answer: what becomes of the zone that cannot glow', () => {
    const range = fixtureOf(FLAT, 'range-top') as Extract<Fixture, { kind: 'cooktop' }>;
    const mixed = {
      ...range,
      burners: range.burners.map((one, at) =>
        at === 0 ? { ...one, type: 'induction' as const } : one,
      ),
    };
    const kitchen: Kitchen = {
      ...FLAT,
      fixtures: FLAT.fixtures.map((one) => (one.id === range.id ? mixed : one)),
    };
    const said = withAnswer(kitchen, { ...answer('range-top'), method: 'glow', minutes: 15 });
    expect(questionList(said).toAsk.map(({ id }) => id)).toContain(
      'ask-range-top-burner-induction',
    );
    // The minutes of the coils were said.
    expect(answeredQuestions(said).map(({ row }) => row)).toEqual(['burner-fire']);
  });

  it('is, for what it is made of, what was found by looking', () => {
    const counter = FLAT.fixtures.find(({ kind }) => kind === 'counter');
    const unknown = withFound(FLAT, counter?.id ?? '', {
      material: 'unknown',
      condition: 'unknown',
    });
    expect(questionList(unknown).toFind.map(({ about }) => about)).toEqual([
      'material',
      'condition',
    ]);
    const found = withFound(unknown, counter?.id ?? '', {
      material: 'granite',
      condition: 'smooth',
    });
    expect(questionList(found).toFind).toEqual([]);
  });
});

describe('the list to take to the rabbi', () => {
  it('has every open question once, with room for the answer', () => {
    const text = questionListText(FLAT, inEnglish);
    const { toAsk, toFind } = questionList(FLAT);
    expect(toAsk.length + toFind.length).toBe(buildPlan(FLAT).questions.length);
    for (const { ask, untilThen } of toAsk) {
      expect(text).toContain(inEnglish.say(ask));
      expect(text).toContain(inEnglish.say(untilThen));
    }
    expect(text.split('Answer: ____')).toHaveLength(toAsk.length + 1);
    expect(text.endsWith('\n')).toBe(true);
  });
});

describe('methods that make sense', () => {
  const all = DEMO_TEXTS.flatMap(([file]) => {
    const kitchen = demoKitchen(file);
    return kitchen.fixtures.map((fixture) => ({ file, kitchen, fixture }));
  });

  it('include what the custom plans, for every fixture of every demo in both customs', () => {
    for (const { file, kitchen, fixture } of all)
      for (const custom of ['sephardic', 'ashkenazic'] as const) {
        const of = { ...kitchen, household: { ...kitchen.household, custom, overrides: [] } };
        expect(methodsForFixture(fixture), `${file}: ${fixture.id}`).toContain(
          chooseMethod(fixture, of).method.method,
        );
      }
  });

  it('include the method of every row of both customs, and of every answer that is offered', () => {
    for (const custom of ['sephardic', 'ashkenazic'] as const)
      for (const { id, method, question } of customTable(custom).rows)
        for (const one of [method, ...(question?.answers ?? []).map((given) => given.method)])
          expect(methodsForRow(custom, id), `${custom} ${id}`).toContain(one);
  });

  it('each give a plan that holds together, for one fixture of each kind', () => {
    const seen = new Set<string>();
    let plans = 0;
    for (const { kitchen, fixture } of all) {
      if (seen.has(fixture.kind)) continue;
      seen.add(fixture.kind);
      // Alone with what heats its kettles: a whole kitchen a method would take minutes.
      const few = {
        ...kitchen,
        household: { ...kitchen.household, overrides: [] },
        fixtures: kitchen.fixtures.filter((one) => one.id === fixture.id || one.kind === 'cooktop'),
      };
      for (const method of methodsForFixture(fixture)) {
        const plan = buildPlan(withAnswer(few, { ...answer(fixture.id), method }));
        expect(checkPlan(plan), `${fixture.kind} by ${method}`).toEqual([]);
        plans += 1;
      }
    }
    expect(plans).toBeGreaterThan(30);
  });
});
