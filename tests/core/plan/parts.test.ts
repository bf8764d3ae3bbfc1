import { describe, expect, it } from 'vitest';
import {
  BURNER_TYPES,
  formatKitchen,
  parseKitchen,
  PARTS,
  partsOf,
  possibleParts,
  type Fixture,
  type Kitchen,
  type Override,
} from '../../../src/core/kitchen/index.ts';
import { buildPlan, checkPlan, describePlan, type Plan } from '../../../src/core/plan/index.ts';
import { inEnglish } from '../../support/english.ts';
import { DEMOS, kitchenOf, only, step, withFixture } from './support/plans.ts';

const FLAT = kitchenOf('flat-coils');
const GAS = kitchenOf('mountain-gas');

function fixtureIn(kitchen: Kitchen, kind: Fixture['kind']): Fixture {
  const found = kitchen.fixtures.find((one) => one.kind === kind);
  if (!found) throw new Error(`no ${kind}`);
  return found;
}

function said(kitchen: Kitchen, override: Omit<Override, 'saidBy' | 'saidOn'>): Kitchen {
  const one: Override = { ...override, saidBy: 'our rabbi', saidOn: '2027-02-03' };
  return { ...kitchen, household: { ...kitchen.household, overrides: [one] } };
}

function cleaningOf(plan: Plan, fixture: string): string {
  return step(plan, `clean-${fixture}`)
    .stages.flatMap(({ detail }) => detail.map((line) => inEnglish.say(line)))
    .join('\n');
}

describe('the parts of a fixture', () => {
  it('are the usual ones where a file tells none', () => {
    expect(partsOf(fixtureIn(FLAT, 'cooktop'))).toEqual(['drip-bowls', 'cooktop-surface', 'knobs']);
    expect(partsOf(fixtureIn(FLAT, 'oven'))).toEqual(['racks', 'side-rails', 'trays', 'door-rim']);
    expect(partsOf(fixtureIn(FLAT, 'sink'))).toEqual(['strainer', 'aerator', 'overflow']);
    expect(partsOf(fixtureIn(FLAT, 'hood'))).toEqual(['hood-filter']);
    expect(partsOf(fixtureIn(FLAT, 'microwave'))).toEqual(['plate', 'plate-ring']);
    expect(partsOf(fixtureIn(GAS, 'cooktop'))).toContain('grates');
  });

  it('are what a file tells, and only what there can be', () => {
    const sink = { ...fixtureIn(FLAT, 'sink'), parts: ['disposer', 'grates'] } as Fixture;
    expect(partsOf(sink)).toEqual(['disposer']);
    expect(possibleParts(sink)).not.toContain('sprayer-hose');
    const sprayer = { ...sink, tap: { handles: 1, sprayer: true } } as Fixture;
    expect(possibleParts(sprayer)).toContain('sprayer-hose');
  });

  it('stand in a file that is written and read again', () => {
    const kitchen = withFixture(FLAT, 'sink', { parts: ['disposer', 'strainer'] });
    const read = parseKitchen(formatKitchen(kitchen));
    expect('kitchen' in read && read.kitchen).toEqual(kitchen);
  });

  it('are each treated, and every one is told in the printed plan', () => {
    for (const demo of DEMOS) {
      const plan = buildPlan(kitchenOf(demo));
      for (const fixture of plan.kitchen.fixtures) {
        const row = plan.methods.find((one) => one.fixture === fixture.id);
        expect((row?.parts ?? []).map(({ part }) => part)).toEqual(partsOf(fixture));
      }
      expect(describePlan(plan, inEnglish)).toContain('Rim of the door: Clean thoroughly');
    }
  });

  it('that are replaced stand on the list, come out with the cleaning and go in at the end', () => {
    const plan = buildPlan(FLAT);
    const bought = plan.shopping.find(({ id }) => id === 'parts-sink');
    expect(bought && inEnglish.say(bought.name)).toContain('drain strainer');
    expect(cleaningOf(plan, 'sink')).toContain('Out for good');
    const pours = plan.steps.filter(({ kind, fixture }) => kind === 'pour' && fixture === 'sink');
    expect(step(plan, 'parts-sink').needs.map((need) => need.step)).toContain(pours.at(-1)?.id);
  });
});

describe('cleaning lists', () => {
  it('name no drip bowls on a glass hob, nor knobs', () => {
    const glass = buildPlan(kitchenOf('flat-glass-230'));
    const hob = glass.kitchen.fixtures.find(({ kind }) => kind === 'cooktop');
    const list = cleaningOf(glass, hob?.id ?? '');
    expect(list).not.toMatch(/drip|knobs|grates/i);
    expect(list).toMatch(/glass/i);
  });

  it('pull out a range, not a wall oven', () => {
    expect(cleaningOf(buildPlan(FLAT), 'oven')).toContain('Two people pull it out');
    const { sharesRangeWith: _none, ...alone } = fixtureIn(FLAT, 'oven') as Extract<
      Fixture,
      { kind: 'oven' }
    >;
    const wall: Kitchen = {
      ...FLAT,
      fixtures: FLAT.fixtures.map((one) => (one.id === 'oven' ? alone : one)),
    };
    expect(cleaningOf(buildPlan(wall), 'oven')).not.toContain('pull it out');
  });

  it('name a disposer only where there is one', () => {
    expect(cleaningOf(buildPlan(FLAT), 'sink')).not.toMatch(/disposer/i);
    const kitchen = withFixture(FLAT, 'sink', { parts: ['disposer'] });
    expect(cleaningOf(buildPlan(kitchen), 'sink')).toMatch(/disposer/i);
  });

  it('ask for no ladder at a cupboard that is told to stand low', () => {
    const cupboard = fixtureIn(FLAT, 'cupboard');
    const alone = only(FLAT, cupboard.id);
    const low = withFixture(alone, cupboard.id, { place: 'under-counter' } as Partial<Fixture>);
    expect(step(buildPlan(alone), `clean-${cupboard.id}`).standing).toContain('climb');
    expect(step(buildPlan(low), `clean-${cupboard.id}`).standing).not.toContain('climb');
    expect(buildPlan(alone).shopping.map(({ id }) => id)).toContain('ladder');
    expect(buildPlan(low).shopping.map(({ id }) => id)).not.toContain('ladder');
  });
});

describe('what was said of a part', () => {
  it('grates may go through the cycle of the oven, after their own rest', () => {
    const oven = fixtureIn(GAS, 'oven') as Extract<Fixture, { kind: 'oven' }>;
    const kitchen = withFixture(GAS, oven.id, {
      cleaning: 'pyrolytic',
      heat: 'electric',
      racksStayInCycle: false,
    } as Partial<Fixture>);
    const top = fixtureIn(kitchen, 'cooktop');
    const plan = buildPlan(
      said(kitchen, { fixture: top.id, part: 'grates', method: 'self-clean' }),
    );
    const cycle = step(plan, `heat-${oven.id}`);
    expect(cycle.needs.map((need) => need.step)).toContain(`rest-${top.id}`);
    expect(inEnglish.say(cycle.stages[0]?.detail[1] ?? { key: '', params: {} })).toContain(
      'grates',
    );
    expect(plan.steps.filter(({ kind }) => kind === 'glow')).toEqual([]);
    expect(checkPlan(plan)).toEqual([]);
  });

  it('racks may be brought to a glow by fire: a step of their own', () => {
    const plan = buildPlan(said(FLAT, { fixture: 'oven', part: 'racks', method: 'glow' }));
    expect(step(plan, 'purge-oven-racks').kind).toBe('high-heat');
    expect(plan.shopping.find(({ id }) => id === 'parts-oven')?.name.params).not.toMatchObject({
      parts: expect.arrayContaining([{ key: 'steps.part.racks', params: {} }]) as unknown,
    });
    expect(checkPlan(plan)).toEqual([]);
  });

  it('is refused for a part or a burner that the fixture does not have', () => {
    for (const wrong of [{ part: 'grates' }, { burner: 'no-such' }] as const) {
      const kitchen = said(FLAT, { fixture: 'sink', method: 'replace', ...wrong });
      expect('problems' in parseKitchen(formatKitchen(kitchen))).toBe(true);
    }
  });
});

describe('an induction hob that is poured', () => {
  it('has every gate of a pour', () => {
    const glass = kitchenOf('flat-glass-230');
    const hob = fixtureIn(glass, 'cooktop') as Extract<Fixture, { kind: 'cooktop' }>;
    const burners = hob.burners.map((one) => ({ ...one, type: 'induction' as const }));
    const kitchen = said(withFixture(glass, hob.id, { burners } as Partial<Fixture>), {
      fixture: hob.id,
      method: 'pour',
      row: 'burner-induction',
    });
    const plan = buildPlan(kitchen);
    expect(step(plan, `purge-${hob.id}`).gates).toEqual(
      expect.arrayContaining(['scald-dress', 'pour-power', 'pour-material', 'cold-where']),
    );
    expect(step(plan, `purge-${hob.id}`).standing).toContain('pour-stance');
    expect(checkPlan(plan)).toEqual([]);
  });
});

it('every part can be part of something', () => {
  const tops = BURNER_TYPES.flatMap((type) =>
    (['metal', 'glass-ceramic'] as const).map((surface) => {
      const hob = fixtureIn(FLAT, 'cooktop') as Extract<Fixture, { kind: 'cooktop' }>;
      return { ...hob, surface, burners: hob.burners.map((one) => ({ ...one, type })) };
    }),
  );
  const sprayer = { ...fixtureIn(FLAT, 'sink'), tap: { handles: 1, sprayer: true } } as Fixture;
  const all = new Set([...FLAT.fixtures, ...tops, sprayer].flatMap((one) => possibleParts(one)));
  expect([...all].toSorted()).toEqual([...PARTS].toSorted());
});

describe('what a plan says of one part', () => {
  it('is not said otherwise of the whole: glass is rinsed by one custom, replaced by the other', () => {
    for (const [custom, method] of [
      ['sephardic', 'clean'],
      ['ashkenazic', 'replace'],
    ] as const) {
      const plan = buildPlan({ ...FLAT, household: { ...FLAT.household, custom } });
      const parts = plan.methods.find(({ fixture }) => fixture === 'microwave')?.parts;
      expect(parts?.find(({ part }) => part === 'plate')?.method).toBe(method);
      const [asked] = plan.questions.filter(({ fixture }) => fixture === 'microwave');
      expect(asked && inEnglish.say(asked.untilThen)).not.toMatch(/plate/i);
    }
  });

  it('speaks of no pour where its fixture is not poured', () => {
    const plan = buildPlan(GAS);
    const overflowOf = (method: string) =>
      plan.methods
        .filter((row) => row.method === method)
        .flatMap(({ parts = [] }) => parts.filter(({ part }) => part === 'overflow'))
        .map(({ reason }) => inEnglish.say(reason));
    expect(overflowOf('pour')).toEqual([expect.stringMatching(/pour of the sink/)]);
    expect(overflowOf('cover')).toEqual([expect.not.stringMatching(/pour/)]);
  });
});
