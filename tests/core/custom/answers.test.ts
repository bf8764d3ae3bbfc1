import { describe, expect, it } from 'vitest';
import {
  answerAs,
  burnerChoices,
  chooseMethod,
  questionList,
  withAnswer,
  withFound,
  withoutAnswer,
} from '../../../src/core/custom/index.ts';
import type { Fixture, Kitchen, Override } from '../../../src/core/kitchen/index.ts';
import { buildPlan, checkPlan, whatItChanges } from '../../../src/core/plan/index.ts';
import { demoKitchen } from '../kitchen/demos.ts';

const FLAT = demoKitchen('flat-coils.kitchen.json');
const GAS = demoKitchen('mountain-gas.kitchen.json');
const SAID = { saidBy: 'our rabbi', saidOn: '2027-02-03' } as const;

function by(kitchen: Kitchen, change: Partial<Kitchen['household']>): Kitchen {
  return { ...kitchen, household: { ...kitchen.household, ...change } };
}

function changed(kitchen: Kitchen, id: string, change: object): Kitchen {
  return {
    ...kitchen,
    fixtures: kitchen.fixtures.map((one) =>
      one.id === id ? ({ ...one, ...change } as Fixture) : one,
    ),
  };
}

function choiceOf(kitchen: Kitchen, id: string) {
  const fixture = kitchen.fixtures.find((one) => one.id === id);
  if (!fixture) throw new Error(`no fixture ${id}`);
  return chooseMethod(fixture, kitchen);
}

function said(
  kitchen: Kitchen,
  ...answers: readonly Omit<Override, 'saidBy' | 'saidOn'>[]
): Kitchen {
  return answers.reduce<Kitchen>((k, one) => withAnswer(k, { ...one, ...SAID }), kitchen);
}

/** The kitchen with the nth answer to an open question of a fixture. */
function answered(kitchen: Kitchen, fixture: string, about: string, at: number): Kitchen {
  const question = choiceOf(kitchen, fixture).questions.find(
    ({ row, part }) => (part ?? row) === about,
  );
  const answer = question?.answers?.[at];
  if (!question || !answer) throw new Error(`no answer ${at} about ${about} of ${fixture}`);
  return withAnswer(kitchen, answerAs(question, answer, SAID));
}

describe('an answer', () => {
  it('“it must glow” of an oven that cannot leaves it covered, for as long as planned', () => {
    const oven = changed(by(FLAT, { custom: 'ashkenazic' }), 'oven', { cleaning: 'none' });
    const planned = choiceOf(oven, 'oven').method;
    expect(planned).toMatchObject({ cover: true, minutes: 120 });
    const bare = said(oven, { fixture: 'oven', method: 'glow', minutes: 60, cover: false });
    expect(choiceOf(bare, 'oven').method).toMatchObject({ cover: true, minutes: 120 });
    const offered = answered(oven, 'oven', 'oven-new', 3);
    expect(choiceOf(offered, 'oven').method).toMatchObject({ cover: true, minutes: 120 });
  });

  it('“pour three times” pours three times, in the plan too', () => {
    const clay = changed(FLAT, 'sink', { material: 'porcelain' });
    const once = buildPlan(clay).steps.filter(
      ({ kind, fixture }) => kind === 'pour' && fixture === 'sink',
    );
    const three = answered(clay, 'sink', 'sink-clay', 0);
    expect(choiceOf(three, 'sink').method).toMatchObject({
      method: 'pour',
      times: 3,
      cover: false,
    });
    const plan = buildPlan(three);
    const pours = plan.steps.filter(({ kind, fixture }) => kind === 'pour' && fixture === 'sink');
    expect(pours).toHaveLength(3 * once.length);
    expect(pours.map(({ work }) => work.on === 'kettle' && work.round)).toEqual(
      [1, 2, 3].flatMap((round) => once.map(() => round)),
    );
    expect(checkPlan(plan)).toEqual([]);
  });

  it('weakens nothing that it does not name', () => {
    const worn = changed(by(FLAT, { custom: 'ashkenazic', purpose: 'passover' }), 'counter-left', {
      condition: 'cracked',
    });
    const about = answered(worn, 'counter-left', 'top-stone-passover', 0);
    expect(choiceOf(about, 'counter-left').method).toMatchObject({ method: 'cover', cover: true });
    const unnamed = said(by(FLAT, { custom: 'ashkenazic', purpose: 'passover' }), {
      fixture: 'sink',
      method: 'pour',
    });
    expect(choiceOf(unnamed, 'sink').method.cover).toBe(true);
  });

  it('leaves the other questions of the fixture open', () => {
    const scratched = changed(by(FLAT, { custom: 'ashkenazic', purpose: 'passover' }), 'sink', {
      condition: 'scratched',
    });
    const one = answered(scratched, 'sink', 'sink-metal-passover', 0);
    const open = choiceOf(one, 'sink');
    expect(open.questions.map(({ row }) => row)).toEqual(['sink-scratched']);
    expect(open.method.cover).toBe(true);
    const both = answered(one, 'sink', 'sink-scratched', 0);
    expect(choiceOf(both, 'sink')).toMatchObject({ questions: [], method: { cover: false } });
    expect(questionList(both).answered.filter(({ fixture }) => fixture === 'sink')).toHaveLength(2);
    const back = withoutAnswer(both, 'sink', { row: 'sink-scratched' });
    expect(choiceOf(back, 'sink').questions.map(({ row }) => row)).toEqual(['sink-scratched']);
  });

  it('speaks of one burner alone', () => {
    const range = FLAT.fixtures.find((one) => one.kind === 'cooktop');
    const [first] = range?.burners ?? [];
    const kitchen = said(FLAT, {
      fixture: 'range-top',
      method: 'glow',
      minutes: 15,
      burner: first?.id ?? '',
    });
    const top = kitchen.fixtures.find(({ id }) => id === 'range-top') as Extract<
      Fixture,
      { kind: 'cooktop' }
    >;
    expect(burnerChoices(top, kitchen).map(({ minutes }) => minutes)).toEqual([15, 30, 30, 30]);
  });

  it('speaks of the grates alone: light heat, fifteen minutes', () => {
    const leaven = by(GAS, { purpose: 'passover' });
    const kitchen = answered(leaven, 'range-top', 'grates', 4);
    const top = kitchen.fixtures.find(({ id }) => id === 'range-top') as Extract<
      Fixture,
      { kind: 'cooktop' }
    >;
    for (const one of burnerChoices(top, kitchen))
      expect(one).toMatchObject({ method: 'light-heat', minutes: 15 });
    expect(choiceOf(kitchen, 'range-top').method).toMatchObject({
      method: 'light-heat',
      minutes: 15,
    });
    expect(checkPlan(buildPlan(kitchen))).toEqual([]);
  });

  it('is not offered light heat for grates of a kitchen that was not kosher', () => {
    const grates = choiceOf(by(GAS, { purpose: 'new-kitchen' }), 'range-top').questions.find(
      ({ part }) => part === 'grates',
    );
    expect(grates?.answers?.map(({ method }) => method)).toEqual(['glow', 'self-clean', 'replace']);
  });
});

describe('the rest before heat that burns out', () => {
  it('is asked about, and kept until it is answered', () => {
    const plan = buildPlan(FLAT);
    expect(plan.questions.map(({ row }) => row)).toContain('rest-before-fire');
    expect(plan.steps.map(({ id }) => id)).toContain('rest-oven');
  });

  it('falls away by the answer, and the cycle follows the cleaning', () => {
    const plan = buildPlan(answered(FLAT, 'oven', 'rest-before-fire', 1));
    expect(plan.steps.map(({ id }) => id)).not.toContain('rest-oven');
    const heat = plan.steps.find(({ id }) => id === 'heat-oven');
    expect(heat?.needs.map(({ step }) => step)).toContain('clean-oven');
    expect(checkPlan(plan)).toEqual([]);
  });

  it('a pour without a rest is still a fault', () => {
    const plan = buildPlan(FLAT);
    const spoiled = {
      ...plan,
      methods: plan.methods.map((one) => (one.fixture === 'sink' ? { ...one, rest: false } : one)),
      steps: plan.steps
        .filter(({ id }) => id !== 'rest-sink')
        .map((one) => ({
          ...one,
          needs: one.needs.map((need) =>
            need.step === 'rest-sink' ? { ...need, step: 'clean-sink' } : need,
          ),
        })),
    };
    expect(checkPlan(spoiled).map(({ rule }) => rule)).toContain('rest');
  });
});

describe('what a surface was used for', () => {
  const wood = changed(by(FLAT, { custom: 'ashkenazic', purpose: 'passover' }), 'counter-left', {
    material: 'wood',
    varnished: false,
    kneaded: false,
    hotFood: false,
  });

  it.each([
    ['varnished', { varnished: true }, 'cover'],
    ['not told whether varnished', { varnished: undefined }, 'cover'],
    ['used for dough', { kneaded: true }, 'cover'],
    ['plain', {}, 'pour'],
  ])('wood that is %s', (_, facts, method) => {
    expect(choiceOf(changed(wood, 'counter-left', facts), 'counter-left').method.method).toBe(
      method,
    );
  });

  it('is asked of those who used it, and their word is taken down', () => {
    const untold = changed(wood, 'counter-left', { kneaded: undefined });
    const [question] = questionList(untold).toFind;
    expect(question).toMatchObject({ fixture: 'counter-left', fact: 'kneaded' });
    const told = withFound(untold, 'counter-left', { kneaded: false });
    expect(choiceOf(told, 'counter-left').method.method).toBe('pour');
  });

  it('hot food straight on it: covered until asked, then a hot stone that is on the list', () => {
    const hot = changed(FLAT, 'counter-left', { hotFood: true });
    expect(choiceOf(hot, 'counter-left').method).toMatchObject({ method: 'pour', cover: true });
    const stone = answered(hot, 'counter-left', 'hot-food', 0);
    expect(choiceOf(stone, 'counter-left').method).toMatchObject({ stone: true, cover: false });
    expect(buildPlan(stone).shopping.map(({ id }) => id)).toContain('stone');
  });

  it('a cupboard that held hot food is poured and lined', () => {
    const cupboard = FLAT.fixtures.find(({ kind }) => kind === 'cupboard');
    const hot = changed(FLAT, cupboard?.id ?? '', { hotFood: true, condition: 'smooth' });
    expect(choiceOf(hot, cupboard?.id ?? '').method).toMatchObject({ method: 'pour', cover: true });
    expect(checkPlan(buildPlan(hot))).toEqual([]);
  });

  it('a crack is not poured, whatever it is of', () => {
    for (const condition of ['cracked', 'porous'])
      for (const custom of ['sephardic', 'ashkenazic'] as const)
        expect(
          choiceOf(changed(by(FLAT, { custom }), 'sink', { condition }), 'sink').method,
        ).toMatchObject({ method: 'cover', cover: true });
  });
});

describe('Sephardic glass', () => {
  it('is rinsed wherever it is not over fire', () => {
    const glass = changed(FLAT, 'counter-left', { material: 'glass' });
    expect(choiceOf(glass, 'counter-left').method.method).toBe('clean');
    const hob = changed(FLAT, 'range-top', { surface: 'glass-ceramic' });
    const parts = choiceOf(hob, 'range-top').method.parts ?? [];
    expect(parts.find(({ part }) => part === 'cooktop-surface')?.method).toBe('clean');
    const wave = choiceOf(FLAT, 'microwave').method.parts ?? [];
    expect(wave.find(({ part }) => part === 'plate')?.method).toBe('clean');
  });
});

describe('what an answer changes', () => {
  it('is known for every answer, by planning twice', () => {
    const alone: Kitchen = { ...FLAT, fixtures: FLAT.fixtures.filter(({ id }) => id === 'oven') };
    const plan = buildPlan(alone);
    const rest = plan.questions.find(({ row }) => row === 'rest-before-fire');
    if (!rest) throw new Error('no question about the rest');
    const [kept, dropped] = whatItChanges(alone, rest);
    expect(kept?.finishS).toBeLessThanOrEqual(0);
    expect(dropped?.finishS).toBeLessThan(-20 * 3600);
  });

  it('of three pours is two more', () => {
    const sink = changed(
      { ...FLAT, fixtures: FLAT.fixtures.filter(({ id }) => id === 'sink') },
      'sink',
      { material: 'porcelain' },
    );
    const plan = buildPlan(sink);
    const clay = plan.questions.find(({ row }) => row === 'sink-clay');
    if (!clay) throw new Error('no question about the sink');
    const [three, none] = whatItChanges(sink, clay);
    expect(three?.kettles).toBe(2 * plan.totals.kettles.typical);
    expect(none?.kettles).toBe(-plan.totals.kettles.typical);
  });
});

it('the list of questions begins with what costs most, the same about several together', () => {
  const { questions } = buildPlan(FLAT);
  expect(questions[0]?.row).toBe('rest-before-fire');
  const keys = questions.map(({ ask }) => ask.key);
  const runs = keys.filter((key, at) => key !== keys[at - 1]);
  expect(new Set(runs).size).toBe(runs.length);
});
