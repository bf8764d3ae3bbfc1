import { inEnglish } from '../../support/english.ts';
import { compareStrictness, type Way } from './strictness.ts';
import { describe, expect, it } from 'vitest';
import methods from '../../../shared/customs/methods.json';
import {
  customTable,
  findConditionRule,
  findRow,
  type ConditionRule,
  type CustomRow,
  type FactRule,
  type Looked,
  type RowQuestion,
} from '../../../src/core/custom/index.ts';
import {
  CONDITIONS,
  MATERIALS,
  METHODS,
  PURPOSES,
  type MethodId,
} from '../../../src/core/kitchen/index.ts';

const CUSTOMS = ['sephardic', 'ashkenazic'] as const;

function planned(row: CustomRow): Way {
  return {
    method: row.method,
    cover: row.cover,
    ...(row.minutes !== undefined && { minutes: row.minutes }),
  };
}

/** What a rule makes of every method it holds for. */
function plannedByRule(rule: ConditionRule | FactRule): readonly Way[] {
  return rule.methods.map((method) => ({ method: rule.method ?? method, cover: rule.cover }));
}

type Ask = { readonly id: string; readonly ways: readonly Way[]; readonly question: RowQuestion };

function asksOf(custom: (typeof CUSTOMS)[number]): readonly Ask[] {
  const { rows, conditionRules, factRules } = customTable(custom);
  return [
    ...rows.flatMap((row) =>
      row.question ? [{ id: row.id, ways: [planned(row)], question: row.question }] : [],
    ),
    ...[...conditionRules, ...factRules].flatMap((rule) =>
      rule.question ? [{ id: rule.id, ways: plannedByRule(rule), question: rule.question }] : [],
    ),
  ];
}

/** What the words "until then" must speak of, for each way it can be. */
const TELLS: Readonly<Partial<Record<MethodId, RegExp>>> = {
  pour: /pour/i,
  steam: /steam/i,
  'light-heat': /highest setting/i,
  'not-purged': /out of use/i,
  line: /line/i,
  cover: /cover|basin/i,
  glow: /glow/i,
};
const TELLS_COVER = /cover|basin|rack|line|insert/i;

describe('the order of strictness', () => {
  it('ranks every method once, with its reason', () => {
    expect(methods.strictness.map(({ method }) => method).toSorted()).toEqual(METHODS.toSorted());
    for (const { reason } of methods.strictness) expect(reason.length).toBeGreaterThan(10);
  });

  // Relations the codes name.
  it.each([
    ['out of use is stricter than any cover', 'not-purged', false, 'cover', true],
    ['a cover is stricter than the pour alone', 'cover', true, 'pour', false],
    ['pour and cover is stricter than the pour', 'pour', true, 'pour', false],
    ['fire is stricter than a stream (OC 451:4 and 451:5)', 'glow', false, 'pour', false],
    ['immersion is stricter than a stream (OC 451:5 and 451:6)', 'immerse', false, 'pour', false],
    ['glow is stricter than light heat (gloss to OC 451:4)', 'glow', false, 'light-heat', false],
    ['light heat serves for immersion (gloss to OC 451:4)', 'light-heat', false, 'immerse', false],
    ['a pour is stricter than cleaning', 'pour', false, 'clean', false],
  ] as const)('%s', (_, a, coverA, b, coverB) => {
    expect(
      compareStrictness({ method: a, cover: coverA }, { method: b, cover: coverB }),
    ).toBeGreaterThan(0);
    expect(
      compareStrictness({ method: b, cover: coverB }, { method: a, cover: coverA }),
    ).toBeLessThan(0);
  });

  it('longer is stricter, and under a cover what was done before counts no more', () => {
    const glow = (minutes: number): Way => ({ method: 'glow', cover: false, minutes });
    expect(compareStrictness(glow(30), glow(15))).toBeGreaterThan(0);
    expect(
      compareStrictness({ method: 'pour', cover: true }, { method: 'cover', cover: true }),
    ).toBe(0);
  });
});

describe.each(CUSTOMS)('every row of the %s custom that must be asked about', (custom) => {
  const asks = asksOf(custom);
  const table = customTable(custom);

  it('is one of several', () => {
    // eslint-disable-next-line no-console
    console.info(`${custom}: ${asks.length} rows with a question`);
    expect(asks.length).toBeGreaterThan(8);
  });

  it.each(asks.map((one) => [one.id, one] as const))('%s', (_, { ways, question }) => {
    expect(question.about).toBeDefined();
    for (const way of ways) {
      expect(inEnglish.say(question.untilThen), `says what is planned: ${way.method}`).toMatch(
        TELLS[way.method] ?? /clean/i,
      );
      if (way.cover)
        expect(inEnglish.say(question.untilThen), 'says that it is covered').toMatch(TELLS_COVER);
      for (const answer of question.answers ?? [])
        expect(
          compareStrictness(way, answer),
          `${JSON.stringify(way)} against “${inEnglish.say(answer.text)}”`,
        ).toBeGreaterThanOrEqual(0);
    }
  });

  it('says the length it plans where the length is asked about', () => {
    const { question: oven } = table.rows.find(({ id }) => id === 'oven-plain') ?? {};
    expect(oven && inEnglish.say(oven.untilThen)).toContain('two hours');
    const { question: wave } = table.rows.find(({ id }) => id === 'microwave') ?? {};
    expect(wave && inEnglish.say(wave.untilThen)).toContain('20 minutes');
  });

  it('plans for an unknown material nothing less strict than for any material there is', () => {
    for (const kind of ['sink', 'counter', 'table', 'cupboard', 'drawer'] as const)
      for (const purpose of PURPOSES) {
        const unknown = planned(findRow(table, { kind, purpose, material: 'unknown' }));
        for (const material of MATERIALS) {
          const known = planned(findRow(table, { kind, purpose, material }));
          expect(
            compareStrictness(unknown, known),
            `${kind} of ${material}, ${purpose}`,
          ).toBeGreaterThanOrEqual(0);
        }
      }
  });

  it('plans for an unseen condition nothing less strict than for any condition there is', () => {
    const wayOf = (looked: Looked): Way => {
      const row = findRow(table, looked);
      const rule = findConditionRule(table, looked, row.method);
      return { method: rule?.method ?? row.method, cover: row.cover || rule?.cover === true };
    };
    let compared = 0;
    for (const kind of ['sink', 'counter', 'table', 'cupboard', 'drawer'] as const)
      for (const purpose of PURPOSES)
        for (const material of MATERIALS) {
          const unseen = wayOf({ kind, purpose, material, condition: 'unknown' });
          for (const condition of CONDITIONS) {
            const seen = wayOf({ kind, purpose, material, condition });
            expect(
              compareStrictness(unseen, seen),
              `${kind} of ${material}, ${condition}`,
            ).toBeGreaterThanOrEqual(0);
            compared += 1;
          }
        }
    expect(compared).toBe(5 * PURPOSES.length * MATERIALS.length * CONDITIONS.length);
  });
});
