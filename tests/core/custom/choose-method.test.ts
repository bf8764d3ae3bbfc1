import { message } from '../../../src/core/messages/index.ts';
import { inEnglish } from '../../support/english.ts';
import { describe, expect, it } from 'vitest';
import { burnerChoices, chooseMethod } from '../../../src/core/custom/index.ts';
import type { Fixture, Kitchen, Override } from '../../../src/core/kitchen/index.ts';
import { demoKitchen } from '../kitchen/demos.ts';

const FLAT = demoKitchen('flat-coils.kitchen.json');
const HALL = demoKitchen('hall.kitchen.json');

function fixtureOf(kitchen: Kitchen, id: string): Fixture {
  const found = kitchen.fixtures.find((one) => one.id === id);
  if (!found) throw new Error(`no fixture ${id}`);
  return found;
}

function household(change: Partial<Kitchen['household']>, kitchen = FLAT): Kitchen {
  return { ...kitchen, household: { ...kitchen.household, ...change } };
}

const SAID: Override = {
  fixture: 'range-top',
  method: 'glow',
  minutes: 15,
  saidBy: 'our rabbi',
  saidOn: '2026-03-01',
};

const SAID_BY = message('custom.said-by', { saidBy: 'our rabbi', saidOn: '2026-03-01' });

describe('chooseMethod', () => {
  it('gives the method with its reason, the word of the trade and its source', () => {
    const { method, questions } = chooseMethod(fixtureOf(FLAT, 'sink'), FLAT);
    expect(method).toMatchObject({
      fixture: 'sink',
      method: 'pour',
      cover: false,
      term: message('custom.term.irui'),
      checked: true,
    });
    expect(inEnglish.say(method.source)).toContain('451:5');
    expect(inEnglish.say(method.reason)).not.toBe('');
    expect(questions).toEqual([]);
  });

  it('gives the question and the stricter method where the row must be asked about', () => {
    const { method, questions } = chooseMethod(fixtureOf(FLAT, 'microwave'), FLAT);
    expect(method).toMatchObject({ method: 'steam', minutes: 20 });
    expect(questions).toHaveLength(1);
    expect(method.question).toBe(questions[0]?.id);
    expect(questions.map(({ untilThen }) => inEnglish.say(untilThen)).join()).toContain(
      '20 minutes',
    );
  });

  it('follows the condition: scratched is poured and covered, open wood is only covered', () => {
    const scratched = chooseMethod(fixtureOf(HALL, 'island'), HALL).method;
    expect(scratched).toMatchObject({ method: 'pour', cover: true });
    const table = {
      ...fixtureOf(FLAT, 'table'),
      material: 'wood',
      condition: 'cracked',
    } as Fixture;
    expect(chooseMethod(table, FLAT).method).toMatchObject({ method: 'cover', cover: true });
  });

  it('asks both about the row and about the condition', () => {
    const counter = {
      ...fixtureOf(FLAT, 'counter-left'),
      material: 'quartz-composite',
      condition: 'unknown',
    } as Fixture;
    expect(chooseMethod(counter, FLAT).questions.map(({ id }) => id)).toEqual([
      'ask-counter-left-top-made',
      'ask-counter-left-unseen',
    ]);
  });

  it('puts what a rabbi said in the place of the row, and says so', () => {
    const kitchen = household({ overrides: [SAID] });
    const { method, questions } = chooseMethod(fixtureOf(kitchen, 'range-top'), kitchen);
    expect(method).toMatchObject({
      method: 'glow',
      minutes: 15,
      overriddenBy: SAID_BY,
    });
    expect(method.source).toEqual(SAID_BY);
    // Minutes were said, and nothing of the rest.
    expect(questions.map(({ row }) => row)).toEqual(['rest-before-fire']);
  });

  it('takes the last of two answers', () => {
    const kitchen = household({ overrides: [SAID, { ...SAID, minutes: 5 }] });
    expect(chooseMethod(fixtureOf(kitchen, 'range-top'), kitchen).method.minutes).toBe(5);
  });

  it('covers when the answer is a cover, unless the answer says otherwise', () => {
    const cover: Override = { ...SAID, fixture: 'sink', method: 'cover' };
    const kitchen = household({ overrides: [cover] });
    expect(chooseMethod(fixtureOf(kitchen, 'sink'), kitchen).method.cover).toBe(true);
    const bare = household({ overrides: [{ ...cover, method: 'pour', cover: true }] });
    expect(chooseMethod(fixtureOf(bare, 'sink'), bare).method.cover).toBe(true);
  });
});

describe('burnerChoices', () => {
  const range = fixtureOf(FLAT, 'range-top') as Extract<Fixture, { kind: 'cooktop' }>;
  const mixed: typeof range = {
    ...range,
    burners: range.burners.map((burner, at) =>
      at === 0 ? { ...burner, type: 'induction' } : burner,
    ),
  };

  it('gives every burner the row of its own type', () => {
    expect(burnerChoices(mixed, FLAT).map(({ method }) => method)).toEqual([
      'not-purged',
      'glow',
      'glow',
      'glow',
    ]);
  });

  it('lets the glowing burners speak for the cooktop and still asks about the zone', () => {
    const { method, questions } = chooseMethod(mixed, FLAT);
    expect(method.method).toBe('glow');
    expect(questions.map(({ ask }) => inEnglish.say(ask)).join(' ')).toContain('induction');
  });

  it('does not make induction glow by an answer', () => {
    const kitchen = household({ overrides: [SAID] });
    expect(burnerChoices(mixed, kitchen).map(({ method, minutes }) => [method, minutes])).toEqual([
      ['not-purged', 15],
      ['glow', 15],
      ['glow', 15],
      ['glow', 15],
    ]);
  });
});
