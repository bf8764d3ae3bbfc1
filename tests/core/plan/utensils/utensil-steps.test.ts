import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import table from '../../../../shared/utensils/utensils.json';
import type { Kitchen, Utensil } from '../../../../src/core/kitchen/index.ts';
import { buildPlan, checkPlan, type Plan, type Step } from '../../../../src/core/plan/index.ts';
import { simulateRun } from '../../../../src/core/run/index.ts';
import { buildUtensilPlan } from '../../../../src/core/utensils/index.ts';
import { utensils } from '../../kitchen/arbitrary/utensil-arbitrary.ts';
import { runs } from '../../../support/runs.ts';
import { DEMOS, endS, kitchenOf, only, startS } from '../support/plans.ts';

const mountain = kitchenOf('mountain-gas');
/** The hob and a sink with the pot of the mountain house: what utensils need. */
const small = only(mountain, 'range-top', 'sink-steel');

type Dip = Step & { readonly work: Extract<Step['work'], { readonly on: 'utensils' }> };

function onUtensils({ steps }: Plan): readonly Dip[] {
  return steps.filter((step): step is Dip => step.work.on === 'utensils');
}

function dips(plan: Plan): readonly Dip[] {
  return onUtensils(plan).filter(({ work }) => work.batch !== undefined);
}

function withUtensils(some: readonly Utensil[], potL = 7): Kitchen {
  return {
    ...small,
    vessels: small.vessels.map((one) => (one.kind === 'pot' ? { ...one, maxFillL: potL } : one)),
    utensils: some,
  };
}

/** Everything that a step comes after, however far back. */
function before({ steps }: Plan, step: Step): ReadonlySet<string> {
  const seen = new Set<string>();
  const open = [step];
  for (let at = open.pop(); at; at = open.pop())
    for (const { step: id } of at.needs) {
      const needed = steps.find((one) => one.id === id);
      if (!needed || seen.has(id)) continue;
      seen.add(id);
      open.push(needed);
    }
  return seen;
}

function boxLitres(utensil: Utensil): number {
  const usual = table.kinds.find(({ kind }) => kind === utensil.kind);
  const { lengthM = 0, widthM = 0, heightM = 0 } = utensil.size ?? usual ?? {};
  return lengthM * widthM * heightM * 1000;
}

/** Random utensils and the pot for them, with the plan of all. */
const planned = fc.tuple(utensils(), fc.integer({ min: 3, max: 20 })).map(([some, potL]) => {
  const kitchen = withUtensils(some, potL);
  return { kitchen, potL, plan: buildPlan(kitchen), told: buildUtensilPlan(kitchen) };
});

describe('a kitchen that tells no utensils', () => {
  it.each(DEMOS)('has in %s the plan that an empty list of them gives', (demo) => {
    const { utensils: _none, ...without } = kitchenOf(demo);
    const { kitchen: _a, ...plan } = buildPlan(without);
    const { kitchen: _b, ...empty } = buildPlan({ ...without, utensils: [] });
    expect(JSON.stringify(empty)).toBe(JSON.stringify(plan));
    expect(JSON.stringify(plan)).not.toContain('utensils');
  });
});

describe('the steps of random utensils', () => {
  it('keep every rule of a plan', () => {
    fc.assert(
      fc.property(planned, ({ plan }) => {
        expect(checkPlan(plan)).toEqual([]);
      }),
      { numRuns: runs(60) },
    );
  });

  it('purge each piece once, by its own method, and what no pot takes not at all', () => {
    fc.assert(
      fc.property(planned, ({ plan, told }) => {
        const purged = (id: string, method: string) =>
          onUtensils(plan)
            .filter(
              ({ phase, kind, work, attention }) =>
                phase === 'purge' &&
                (kind !== 'dry' || attention === 'none') &&
                work.method === method,
            )
            .flatMap(({ id: step, work }) => work.items.map((item) => ({ step, ...item })))
            .filter((item) => item.utensil === id);
        for (const { utensil, count, method } of told.choices) {
          const unfit = told.unfit.find((one) => one.utensil === utensil);
          const isAway = method === 'put-away' || method === 'clean';
          if (isAway || (unfit && !(unfit.boilsOver && told.pot))) {
            expect(
              onUtensils(plan).some(
                ({ phase, work }) =>
                  phase === 'purge' && work.items.some((item) => item.utensil === utensil),
              ),
            ).toBe(false);
            continue;
          }
          const counts = purged(utensil, method).map((item) => item.count);
          // Three days in water are three steps with the same things.
          if (method === 'soak') expect(counts).toEqual([count, count, count]);
          else expect(counts.reduce((sum, one) => sum + one, 0)).toBe(count);
        }
      }),
      { numRuns: runs(60) },
    );
  });

  it('put into the pot at once no more than fits: pieces, and loose boxes in a net', () => {
    fc.assert(
      fc.property(planned, ({ kitchen, plan, potL }) => {
        for (const { work, picture } of dips(plan)) {
          const count = work.items.reduce((sum, item) => sum + item.count, 0);
          expect(count).toBeLessThanOrEqual(table.pot.mostPieces);
          if (picture?.kind !== 'batch' || picture.hold !== 'net' || count === 1) continue;
          const boxesL = work.items.reduce((sum, item) => {
            const utensil = kitchen.utensils?.find(({ id }) => id === item.utensil);
            return sum + item.count * (utensil ? boxLitres(utensil) : Infinity);
          }, 0);
          expect(boxesL).toBeLessThanOrEqual(table.pot.looseShare * potL + 1e-9);
        }
      }),
      { numRuns: runs(60) },
    );
  });

  it('purge the pot before its first batch, before each change of water, and after the last', () => {
    fc.assert(
      fc.property(planned, ({ plan }) => {
        const batches = dips(plan);
        if (batches.length === 0) return;
        const pots = plan.steps.filter(
          ({ kind, work }) =>
            kind === 'boil-over' && work.on === 'vessel' && work.vessel.id === 'stock-pot',
        );
        const groups = new Set(batches.map(({ work }) => work.batch?.group));
        expect(pots).toHaveLength(groups.size + 1);
        const last = pots.at(-1)!;
        for (const { id, work } of batches) {
          expect(before(plan, last)).toContain(id);
          const earlier = batches.filter(
            (one) => (one.work.batch?.number ?? 0) < (work.batch?.number ?? 0),
          );
          const fresh = earlier.at(-1)?.work.batch?.group !== work.batch?.group;
          const step = plan.steps.find((one) => one.id === id)!;
          const needed = plan.steps.find((one) => one.id === step.needs[0]?.step);
          expect(needed?.kind).toBe(fresh ? 'boil' : 'boil-over');
          expect(step.needs[0]?.withinS !== undefined).toBe(fresh);
        }
      }),
      { numRuns: runs(40) },
    );
  });

  it('are all done in a run that nothing disturbs', () => {
    fc.assert(
      fc.property(planned, ({ plan }) => {
        const { state } = simulateRun(plan);
        expect(state.closedAs).toBe('completed');
        for (const { id } of onUtensils(plan)) expect(state.steps[id]?.outcome).toBe('done');
      }),
      { numRuns: runs(8) },
    );
  });
});

describe('a batch', () => {
  const plan = buildPlan(small);
  const [first, second] = dips(plan);

  it('boils again with the things in it, for as long as the heat balance says, then cold water', () => {
    const told = buildUtensilPlan(small).batches[0]!;
    const again = first?.stages.find(({ id }) => id === 'again');
    expect(again?.role).toBe('boil');
    expect(again?.timers[0]).toMatchObject({ role: 'estimate', lengthS: told.recoverS.typical });
    expect(first?.stages.map(({ role }) => role)).toEqual(['immerse', 'boil', 'cold']);
    expect(second?.stages.map(({ role }) => role)).toEqual([
      'boil',
      'immerse',
      'boil',
      'cold',
      'off',
    ]);
    for (const { stages } of dips(plan))
      for (const { role, hazards } of stages)
        if (role !== 'fill') expect(hazards).toContain('boiling-water');
  });

  it('waits for its rest, its purged pot, a cold burner that glowed, and the sink it is rinsed in', () => {
    const all = before(plan, first!);
    expect([...all]).toEqual(
      expect.arrayContaining([
        'rest-all.utensils',
        'clean-all.utensils',
        'boil-over-stock-pot',
        'rest-stock-pot',
        'cool-gas-front-right',
        'pour-sink-steel-5',
      ]),
    );
    expect(startS(plan, 'mark-kitchen')).toBeGreaterThanOrEqual(endS(plan, first!.id));
  });

  it('turns what tongs hold alone, and takes several one by one', () => {
    const lid: Utensil = {
      id: 'lids',
      kind: 'lid',
      count: 1,
      material: 'stainless-steel',
      use: 'fire-liquid',
      condition: 'smooth',
      designation: 'meat',
      size: { lengthM: 0.16, widthM: 0.16, heightM: 0.04 },
    };
    const alone = dips(buildPlan(withUtensils([lid])))[0];
    expect(alone?.stages.map(({ id }) => id)).toEqual([
      'immerse',
      'again',
      'turn',
      'again-turned',
      'cold',
      'off',
    ]);
    const several = dips(buildPlan(withUtensils([{ ...lid, count: 5 }])))[0];
    expect(several?.stages.map(({ id }) => id)).toEqual(['immerse', 'cold', 'off']);
  });

  it('is asked about children, scalds, fire and air before it begins, and is never left', () => {
    for (const { gates, standing } of dips(plan)) {
      expect(gates).toEqual(
        expect.arrayContaining(['child-pet', 'scald-dress', 'burner-clear', 'burner-air']),
      );
      expect(standing).toContain('dip-pot');
    }
  });
});
