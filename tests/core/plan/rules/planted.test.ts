import { describe, expect, it } from 'vitest';
import type { Kitchen } from '../../../../src/core/kitchen/index.ts';
import {
  buildPlan,
  checkPlan,
  LATER_RULES,
  type Plan,
  type PlanProblem,
  type Step,
} from '../../../../src/core/plan/index.ts';
import { kitchenOf, planOfDemo, startS, withMethod } from '../support/plans.ts';

const flat = planOfDemo('flat-coils');

/** The same plan with steps begun at other times, s. */
function moved(plan: Plan, at: Readonly<Record<string, number>>): Plan {
  return { ...plan, timetable: { ...plan.timetable, startS: { ...plan.timetable.startS, ...at } } };
}

function changed(plan: Plan, id: string, change: (step: Step) => Partial<Step>): Plan {
  const steps = plan.steps.map((one) => (one.id === id ? { ...one, ...change(one) } : one));
  return { ...plan, steps };
}

function said(plan: Plan, rule: PlanProblem['rule']): readonly string[] {
  return checkPlan(plan)
    .filter((one) => one.rule === rule)
    .map(({ about }) => about.join(' '));
}

/** Inside Passover by a clock on the wall, in a place where the household lives. */
const PLACE: Kitchen['place'] = {
  latDeg: 40.7,
  lonDeg: -74,
  zone: 'America/New_York',
  land: 'diaspora',
};

describe('a plan that holds, with one fault planted in it', () => {
  it('holds to begin with', () => {
    expect(checkPlan(flat)).toEqual([]);
  });

  it('1: a counter is poured while the oven beside it cleans itself', () => {
    const plan = moved(flat, { 'pour-counter-left-1': startS(flat, 'heat-oven') + 60 });
    expect(said(plan, 'hot-beside')).toContain('pour-counter-left-1 heat-oven');
  });

  it('1: a counter is poured while a burner beside it is not yet safe to touch', () => {
    const plan = moved(flat, {
      'pour-counter-right-1': startS(flat, 'cool-coil-front-right') + 60,
    });
    expect(said(plan, 'hot-beside')).toContain('pour-counter-right-1 cool-coil-front-right');
  });

  it('1: a sheet is laid beside a hob on which a kettle boils', () => {
    const gas = planOfDemo('mountain-gas');
    const plan = moved(gas, { 'cover-counter-corner': startS(gas, 'boil-table-4') });
    expect(said(plan, 'hot-beside')).toContain('cover-counter-corner boil-table-4');
  });

  it('2: nobody is told to take the microwave off', () => {
    const plan = changed(flat, 'dry-counter-left', ({ stages }) => ({
      stages: stages.map((one) => ({ ...one, detail: [] })),
    }));
    expect(said(plan, 'stands-on')).toContain('pour-counter-left-1 microwave');
  });

  it('2: the microwave runs on the counter that is poured', () => {
    const plan = moved(flat, { 'purge-microwave': startS(flat, 'pour-counter-left-1') });
    expect(said(plan, 'stands-on')).toContain('pour-counter-left-1 purge-microwave');
  });

  it('3: a fixture is poured that nobody dried', () => {
    const plan = changed(flat, 'pour-sink-1', ({ needs }) => ({
      needs: needs.filter(({ step }) => step !== 'dry-sink'),
    }));
    expect(said(plan, 'dry')).toEqual(
      expect.arrayContaining(['pour-sink-1', 'pour-sink-2', 'pour-sink-3']),
    );
  });

  it('3: a fixture is dried hours before it is poured', () => {
    const plan = moved(flat, { 'dry-sink': startS(flat, 'pour-sink-1') - 2 * 3600 });
    expect(said(plan, 'dry')).toEqual(['dry-sink']);
  });

  it('4: one person pours while a burner glows', () => {
    const plan = moved(flat, { 'pour-sink-1': startS(flat, 'glow-coil-front-left') + 60 });
    expect(said(plan, 'watch').some((about) => about.startsWith('pour-sink-1 glow-'))).toBe(true);
    const two = { ...plan.kitchen.household, people: 2 };
    const helped = { ...plan, kitchen: { ...plan.kitchen, household: two } };
    expect(said(helped, 'watch')).toEqual([]);
  });

  it('5: a burner is lit while the oven of its range cleans itself', () => {
    const plan = moved(flat, { 'glow-coil-front-left': startS(flat, 'heat-oven') + 60 });
    expect(said(plan, 'range')).toEqual(['glow-coil-front-left heat-oven']);
  });

  it('6: a cover is laid before the surface had time to dry', () => {
    const hall = planOfDemo('mountain-gas');
    const cover = hall.steps.find(
      ({ id, kind }) =>
        kind === 'cover' && hall.steps.some((one) => one.id === `air-dry-${id.slice(6)}`),
    );
    const fixture = cover?.fixture ?? '';
    expect(fixture).not.toBe('');
    const plan = moved(hall, { [`cover-${fixture}`]: startS(hall, `air-dry-${fixture}`) + 600 });
    expect(said(plan, 'dry').some((about) => about.startsWith(`cover-${fixture} pour-`))).toBe(
      true,
    );
  });

  it('7: water is poured inside Passover', () => {
    const home = { ...kitchenOf('flat-coils'), place: PLACE };
    // 4 April 2026 is 17 Nisan 5786; 12 March is weeks before.
    const inside = Date.UTC(2026, 3, 5, 14);
    const before = buildPlan(home, { startWallMs: Date.UTC(2026, 2, 12, 14) });
    expect(before.steps.some(({ kind }) => kind === 'pour')).toBe(true);
    expect(said(before, 'passover-water')).toEqual([]);
    const asked = buildPlan(home, { startWallMs: inside });
    expect(said(asked, 'passover-water')).toEqual([]);
    const days = { ...(before.days ?? { restDays: [] }), startWallMs: inside };
    const wrong = said({ ...before, days }, 'passover-water');
    expect(wrong).toContain('pour-sink-1');
  });

  it('8: the racks of the oven are forgotten', () => {
    const racks = flat.methods.find(({ fixture }) => fixture === 'oven')?.parts ?? [];
    expect(racks.map(({ part }) => part)).toContain('racks');
    const methods = flat.methods.map((one) =>
      one.fixture === 'oven'
        ? { ...one, parts: racks.filter(({ part }) => part !== 'racks') }
        : one,
    );
    expect(said({ ...flat, methods }, 'parts')).toEqual(['oven racks']);
  });

  it('8: a part that must be replaced has no word', () => {
    const replaced = flat.methods.flatMap(({ fixture, parts = [] }) =>
      parts.filter(({ method }) => method === 'replace').map(({ part }) => ({ fixture, part })),
    );
    const [first] = replaced;
    if (!first) throw new Error('the flat has nothing to replace');
    const plan = {
      ...flat,
      steps: flat.steps.map((one) =>
        one.fixture === first.fixture
          ? { ...one, stages: one.stages.map((stage) => ({ ...stage, detail: [] })) }
          : one,
      ),
    };
    expect(said(plan, 'parts')).toContain(`${first.fixture} ${first.part}`);
  });

  it('has one rule for each that is kept here or beside its own', () => {
    // The order of cleaning and what is chilled are planted beside their own rules.
    const elsewhere = new Set(['cleaning-order', 'chilled']);
    const here = LATER_RULES.filter((rule) => !elsewhere.has(rule));
    expect(here.toSorted()).toEqual(
      ['dry', 'hot-beside', 'parts', 'passover-water', 'range', 'stands-on', 'watch'].toSorted(),
    );
  });
});

describe('a heat that needs no pour beside it', () => {
  it('may run while a sink across the room is poured, where somebody else watches', () => {
    const kitchen = withMethod(kitchenOf('flat-coils'), 'oven', 'light-heat');
    const two = { ...kitchen, household: { ...kitchen.household, people: 2 } };
    expect(checkPlan(buildPlan(two))).toEqual([]);
  });
});
