import { describe, expect, it } from 'vitest';
import heats from '../../../shared/physics/specific-heats.json';
import table from '../../../shared/utensils/utensils.json';
import {
  CONDITIONS,
  CUSTOMS,
  PURPOSES,
  UTENSIL_KINDS,
  UTENSIL_MATERIALS,
  UTENSIL_METHODS,
  UTENSIL_USES,
  type Utensil,
  type UtensilMethod,
} from '../../../src/core/kitchen/index.ts';
import { english } from '../../../src/core/messages/english/index.ts';
import { chooseUtensilMethod } from '../../../src/core/utensils/methods/choose-utensil-method.ts';
import type { UtensilChoice } from '../../../src/core/utensils/index.ts';

/** The strictest last. */
const STRICTNESS: Readonly<Record<UtensilMethod, number>> = {
  clean: 1,
  soak: 2,
  immerse: 3,
  'light-heat': 4,
  heat: 5,
  'put-away': 6,
};

const HOUSEHOLD = { people: 1, keepsRestDays: true, overrides: [] };

type Asked = { readonly utensil: Utensil; readonly choice: UtensilChoice };

/** Every utensil there can be, in both customs and for every purpose. */
function everything(): readonly Asked[] {
  const found: Asked[] = [];
  for (const custom of CUSTOMS)
    for (const purpose of PURPOSES)
      for (const kind of UTENSIL_KINDS)
        for (const material of UTENSIL_MATERIALS)
          for (const use of UTENSIL_USES)
            for (const condition of CONDITIONS)
              for (const closedJoints of [undefined, false, true]) {
                const utensil: Utensil = {
                  id: 'one',
                  kind,
                  count: 1,
                  material,
                  use,
                  condition,
                  designation: 'undecided',
                  ...(closedJoints !== undefined && { closedJoints }),
                };
                const household = { ...HOUSEHOLD, custom, purpose };
                found.push({ utensil, choice: chooseUtensilMethod(utensil, household) });
              }
  return found;
}

const ALL = everything();

/** Those that break a rule, told shortly. */
function breaking(rule: (one: Asked) => boolean): readonly string[] {
  return ALL.filter((one) => !rule(one))
    .slice(0, 3)
    .map(({ utensil, choice }) => `${JSON.stringify(utensil)} → ${choice.method} (${choice.row})`);
}

describe('shared/utensils.json', () => {
  it('has usual sizes for every kind, the longest side first, and none heavier than its box', () => {
    expect(table.kinds.map(({ kind }) => kind)).toEqual(UTENSIL_KINDS);
    for (const { kind, lengthM, widthM, heightM, massKg } of table.kinds) {
      expect(lengthM, kind).toBeGreaterThanOrEqual(widthM);
      expect(widthM, kind).toBeGreaterThanOrEqual(heightM);
      expect(massKg, kind).toBeLessThan(lengthM * widthM * heightM * 7900);
    }
  });

  it('names materials whose heat is known', () => {
    expect(heats.rows.map(({ id }) => id)).toEqual(UTENSIL_MATERIALS);
  });

  it('names only ids of the kitchen file', () => {
    const within = (found: readonly string[] | undefined, known: readonly string[]) => {
      for (const id of found ?? []) expect(known).toContain(id);
    };
    for (const row of table.rows as readonly Readonly<Record<string, unknown>>[]) {
      within(row['kinds'] as string[], UTENSIL_KINDS);
      within(row['materials'] as string[], UTENSIL_MATERIALS);
      within(row['uses'] as string[], UTENSIL_USES);
      within(row['conditions'] as string[], CONDITIONS);
      within(row['customs'] as string[], CUSTOMS);
      within(row['purposes'] as string[], PURPOSES);
      within([row['method'] as string], UTENSIL_METHODS);
    }
    within(table.mikvehMaterials, UTENSIL_MATERIALS);
  });

  it('has its texts in the catalogue', () => {
    const keys = new Set(Object.keys(english));
    for (const { id, question, source } of table.rows) {
      expect(keys).toContain(`utensils.row.${id}.reason`);
      if (question) expect(keys).toContain(`utensils.row.${id}.ask`);
      expect(keys).toContain(`sources.${source}`);
    }
    for (const { id, source } of table.rules) {
      expect(keys).toContain(`utensils.rule.${id}`);
      expect(keys).toContain(`sources.${source}`);
    }
    for (const method of UTENSIL_METHODS) {
      expect(keys).toContain(`utensils.method.${method}`);
      expect(keys).toContain(`utensils.answer.${method}`);
    }
  });

  it('has no row that nothing reaches, and none is named twice', () => {
    const reached = new Set(ALL.map(({ choice }) => choice.row));
    const ids = table.rows.map(({ id }) => id);
    expect(ids.filter((id) => !reached.has(id))).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

describe('every utensil there can be', () => {
  it('has a method; until a question is answered it is as strict as any answer', () => {
    expect(
      breaking(({ choice: { method, question } }) =>
        (question?.answers ?? []).every(
          (answer) => STRICTNESS[answer.method] <= STRICTNESS[method],
        ),
      ),
    ).toEqual([]);
  });

  it('is never heated to a glow when it would melt, burn or crack', () => {
    const bears = ['stainless-steel', 'steel', 'cast-iron', 'copper'];
    expect(
      breaking(
        ({ utensil, choice }) => choice.method !== 'heat' || bears.includes(utensil.material),
      ),
    ).toEqual([]);
  });

  it('is never purged by water while it cannot be cleaned, or nobody knows', () => {
    expect(
      breaking(({ utensil: { material, condition, kind, closedJoints }, choice: { method } }) => {
        if (method !== 'immerse') return true;
        const open =
          kind !== 'gadget' && kind !== 'knife' ? closedJoints !== true : closedJoints === false;
        return open && material !== 'unknown' && condition !== 'cracked' && condition !== 'porous';
      }),
    ).toEqual([]);
  });

  it('used on the fire without liquid is never purged by water alone', () => {
    expect(
      breaking(
        ({ choice: { use, method, row } }) =>
          use !== 'fire-dry' ||
          !['immerse', 'clean', 'soak'].includes(method) ||
          row === 'glass-rinse',
      ),
    ).toEqual([]);
  });

  it('with holes, of clay or for dough is not purged', () => {
    const clay = ['earthenware', 'porcelain'];
    expect(
      breaking(({ utensil: { kind, material }, choice: { use, method } }) => {
        const not =
          kind === 'sieve' ||
          (kind === 'board' && material === 'wood') ||
          (clay.includes(material) && use !== 'cold');
        return !not || method === 'put-away';
      }),
    ).toEqual([]);
  });

  it('says so when its use is only assumed', () => {
    expect(
      breaking(({ utensil: { use }, choice }) => choice.useAssumed === (use === 'unknown')),
    ).toEqual([]);
  });
});

describe('by custom and purpose', () => {
  const one = (
    change: Partial<Utensil>,
    custom: 'sephardic' | 'ashkenazic' = 'sephardic',
    purpose: 'passover' | 'new-kitchen' | 'mix-up' = 'passover',
  ) =>
    chooseUtensilMethod(
      {
        id: 'one',
        kind: 'cutlery',
        count: 6,
        material: 'stainless-steel',
        use: 'fire-liquid',
        condition: 'smooth',
        designation: 'meat',
        ...change,
      },
      { ...HOUSEHOLD, custom, purpose },
    );

  it.each([
    ['forks', {}, 'immerse', 'immerse'],
    ['silver', { kind: 'silver', material: 'silver', use: 'poured' }, 'immerse', 'immerse'],
    ['drinking glasses', { kind: 'glass', material: 'glass', use: 'cold' }, 'clean', 'soak'],
    ['glass dishes', { kind: 'plate', material: 'glass', use: 'poured' }, 'clean', 'put-away'],
    ['a rack', { kind: 'rack', material: 'steel', use: 'fire-dry' }, 'heat', 'heat'],
    ['a wooden spoon', { kind: 'wooden-spoon', material: 'wood' }, 'immerse', 'immerse'],
    [
      'a rough one',
      { kind: 'wooden-spoon', material: 'wood', condition: 'cracked' },
      'put-away',
      'put-away',
    ],
    ['a rusty pot', { kind: 'pot', condition: 'porous' }, 'light-heat', 'light-heat'],
    ['what was cold', { use: 'cold' }, 'clean', 'clean'],
  ] as const)('%s', (_, change, sephardic, ashkenazic) => {
    expect(one(change).method).toBe(sephardic);
    expect(one(change, 'ashkenazic').method).toBe(ashkenazic);
  });

  it('a frying pan is asked about for leaven only', () => {
    const pan = { kind: 'pan', material: 'cast-iron', use: 'fire-dry' } as const;
    expect(one(pan)).toMatchObject({ method: 'heat', question: { about: 'ruling' } });
    expect(one(pan, 'sephardic', 'new-kitchen').question).toBeUndefined();
  });

  it('goes by the word of the rabbi, with who and when', () => {
    const answer = { method: 'light-heat', saidBy: 'our rabbi', saidOn: '2027-03-01' } as const;
    const found = one({ kind: 'sieve', answer });
    expect(found).toMatchObject({ method: 'light-heat', answer, sourceState: 'said' });
    expect(found.question).toBeUndefined();
  });
});
