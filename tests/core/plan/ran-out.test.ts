import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  buildPlan,
  checkPlan,
  ranOut,
  type Amendment,
  type Plan,
  type Step,
  type Stretch,
} from '../../../src/core/plan/index.ts';
import { fold, simulateRun, type RunView } from '../../../src/core/run/index.ts';
import { DEMOS, kitchenOf, only, planOfDemo } from './support/plans.ts';

const counterPlan = buildPlan(only(kitchenOf('flat-coils'), 'counter-right'));
const sinkPlan = buildPlan(only(kitchenOf('flat-coils'), 'sink'));
const never = (): boolean => false;

function poursOf(plan: Plan): readonly Step[] {
  return plan.steps.filter(({ kind }) => kind === 'pour');
}

function stretchesOf(step: Step | undefined): readonly Stretch[] {
  return step?.picture?.kind === 'lanes' ? step.picture.stretches : [];
}

function metres(stretches: readonly Stretch[]): number {
  return stretches.reduce((sum, { lengthM }) => sum + lengthM, 0);
}

/** The plan as the run would have it after the amendment. */
function amended(plan: Plan, stepId: string, share: number): Plan {
  const amendment = ranOut(plan, stepId, share, never);
  if (!amendment) throw new Error('no amendment');
  return withAmendment(plan, amendment);
}

function withAmendment(plan: Plan, amendment: Amendment): Plan {
  const byId = new Map(amendment.steps.map((step) => [step.id, step]));
  const added = amendment.steps.filter(({ id }) => !plan.steps.some((step) => step.id === id));
  return {
    ...plan,
    steps: [...plan.steps.map((step) => byId.get(step.id) ?? step), ...added],
    timetable: { ...plan.timetable, startS: { ...plan.timetable.startS, ...amendment.startS } },
  };
}

describe('"I ran out here" on a counter', () => {
  it('leaves no metre unpoured and no kettle longer than this one reached', () => {
    const all = poursOf(counterPlan);
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: all.length - 1 }),
        fc.double({ min: 0.1, max: 0.95, noNaN: true }),
        (index, share) => {
          const step = all[index] as Step;
          const own = stretchesOf(step).filter(({ kettle }) => kettle === index + 1);
          const before = metres(stretchesOf(step).filter(({ kettle }) => kettle > index + 1));
          const next = amended(counterPlan, step.id, share);
          const later = poursOf(next).filter(
            ({ picture }) => picture?.kind === 'lanes' && picture.kettle > index + 1,
          );
          const last = stretchesOf(later.at(-1));
          const now = metres(last.filter(({ kettle }) => kettle > index + 1));
          expect(now).toBeCloseTo(before + metres(own) * (1 - share), 6);
          for (const pour of later) {
            const kettle = pour.picture?.kind === 'lanes' ? pour.picture.kettle : 0;
            const mine = metres(last.filter((one) => one.kettle === kettle));
            expect(mine).toBeGreaterThan(0);
            expect(mine).toBeLessThanOrEqual(metres(own) * share * (1 + 1e-6));
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('numbers the kettles anew and keeps each behind the one before, its boil and its rest', () => {
    const plan = amended(counterPlan, poursOf(counterPlan)[1]?.id ?? '', 0.5);
    const pours = poursOf(plan);
    expect(pours.length).toBeGreaterThan(poursOf(counterPlan).length);
    pours.slice(2).forEach((pour, i) => {
      const counted = { kettle: i + 3, of: pours.length };
      expect(pour.work).toMatchObject({ on: 'kettle', ...counted });
      expect(pour.title.params).toMatchObject(counted);
      expect(pour.stages[0]?.title.params).toMatchObject(counted);
      expect(pour.needs.map(({ step }) => step)).toContain(pours[i + 1]?.id);
      expect(pour.needs.filter(({ withinS }) => withinS !== undefined)).toHaveLength(1);
    });
    expect(checkPlan(plan)).toEqual([]);
  });

  it('changes nothing that has begun', () => {
    const long = buildPlan(only(kitchenOf('hall'), 'counter-cook-left'));
    const [, second, third] = poursOf(long);
    const boil = third?.needs.find(({ withinS }) => withinS !== undefined)?.step ?? '';
    const amendment = ranOut(long, second?.id ?? '', 0.5, (id) => id === boil);
    expect(boil).toBe('boil-counter-cook-left-3');
    expect(amendment?.steps.map(({ id }) => id)).not.toContain(boil);
    expect(amendment?.steps.map(({ id }) => id)).toContain(third?.id);
  });

  it.each([
    ['all others', () => true],
    ['the next one, while the last still waits', (kettle: number) => kettle === 2],
  ])('poured again after %s, cuts its own rest alone, into new kettles', (_name, over) => {
    // Verifies: I-29
    const long = buildPlan(only(kitchenOf('hall'), 'counter-cook-left'));
    const [first, ...later] = poursOf(long);
    const begun = new Set(later.filter((_, i) => over(i + 2)).map(({ id }) => id));
    const amendment = ranOut(long, first?.id ?? '', 0.25, (id) => begun.has(id));
    if (!amendment) throw new Error('no amendment');
    const next = withAmendment(long, amendment);
    expect(checkPlan(next)).toEqual([]);
    const now = poursOf(next);
    const kettles = later.length + 1;
    const fresh = now.slice(kettles);
    expect(fresh.length).toBeGreaterThan(0);
    expect(fresh.every(({ needs }) => needs.some(({ step }) => step === first?.id))).toBe(true);
    const mine = (one: Step, kettle: number) =>
      stretchesOf(one).filter((stretch) => stretch.kettle === kettle);
    const rest = fresh.flatMap((one, i) => mine(one, kettles + 1 + i));
    expect(metres(rest)).toBeCloseTo(metres(mine(first as Step, 1)) * 0.75, 6);
    later.forEach((one, i) => {
      expect(mine(now[i + 1] as Step, i + 2)).toEqual(mine(one, i + 2));
      const of = begun.has(one.id) ? kettles : now.length;
      expect(now[i + 1]?.work).toMatchObject({ kettle: i + 2, of });
    });
  });

  it('knows nothing to do for a step that is no pour', () => {
    expect(ranOut(counterPlan, 'rest-counter-right', 0.5, never)).toBeUndefined();
    expect(ranOut(counterPlan, 'no-such-step', 0.5, never)).toBeUndefined();
  });
});

describe('"I ran out here" on a sink', () => {
  it('finishes the parts of this kettle with one more, and moves the later ones up', () => {
    const [first] = poursOf(sinkPlan);
    const plan = amended(sinkPlan, first?.id ?? '', 0.5);
    expect(poursOf(plan)).toHaveLength(poursOf(sinkPlan).length + 1);
    const second = poursOf(plan)[1];
    expect(second?.stages[0]?.detail.length).toBeGreaterThan(0);
    for (const { key } of second?.stages[0]?.detail ?? []) expect(key).toBe('steps.sink.the-rest');
  });
});

describe.each(DEMOS)('a kettle that runs out in %s', (demo) => {
  const plan = planOfDemo(demo);
  const planned = plan.timetable.startS;
  const pours = poursOf(plan).filter(
    ({ picture }) => picture?.kind === 'lanes' || picture?.kind === 'sink',
  );
  const DAY_S = 24 * 3600;
  const WORKDAY_S = 14 * 3600;

  const endOf = ({ id, durationS }: Step): number => (planned[id] ?? 0) + durationS.typical;

  /** What has begun by then, and perhaps what was begun early: only what follows from nothing unbegun. */
  const begunBy = (atS: number, early: number): ReadonlySet<string> => {
    const begun = new Set(
      plan.steps.filter(({ id }) => (planned[id] ?? 0) <= atS).map(({ id }) => id),
    );
    const next = plan.steps.filter(
      ({ id, kind, needs }) =>
        kind === 'boil' && !begun.has(id) && needs.every(({ step }) => begun.has(step)),
    );
    for (const { id } of next.slice(0, early)) begun.add(id);
    return begun;
  };

  it('moves nothing that has begun, starts nothing early, and keeps every lag, resource and night', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...pours),
        fc.double({ min: 0.1, max: 0.95, noNaN: true }),
        fc.integer({ min: 0, max: 1 }),
        (pour, share, early) => {
          const begun = begunBy(planned[pour.id] ?? 0, early);
          const amendment = ranOut(plan, pour.id, share, (id) => begun.has(id));
          if (!amendment) throw new Error('no amendment');
          for (const id of Object.keys(amendment.startS)) expect(begun).not.toContain(id);
          const next = withAmendment(plan, amendment);
          expect(checkPlan(next)).toEqual([]);
          for (const { id, attention, durationS } of next.steps) {
            const atS = next.timetable.startS[id] ?? Number.NaN;
            if (planned[id] !== undefined) expect(atS).toBeGreaterThanOrEqual(planned[id]);
            if (attention === 'none' || durationS.typical > WORKDAY_S) continue;
            expect((atS % DAY_S) + durationS.typical).toBeLessThanOrEqual(WORKDAY_S + 0.01);
          }
        },
      ),
      { numRuns: demo === 'hall' ? 8 : 20 },
    );
  });

  it('keeps out of the hours that are told', () => {
    const last = pours.at(-1) as Step;
    const fromS = endOf(last);
    const closed = [{ fromS, toS: fromS + DAY_S }];
    const begun = begunBy(planned[last.id] ?? 0, 0);
    const amendment = ranOut(plan, last.id, 0.5, (id) => begun.has(id), closed);
    if (!amendment) throw new Error('no amendment');
    const added = amendment.steps.filter(({ id }) => planned[id] === undefined);
    expect(added.length).toBeGreaterThan(0);
    for (const { id } of added)
      expect(amendment.startS[id]).toBeGreaterThanOrEqual(fromS + DAY_S - 0.01);
  });

  it('lets the next fixture wait for the kettles that were added', () => {
    const of = pours[0]?.fixture;
    const own = pours.filter(({ fixture }) => fixture === of);
    const later = pours.filter(({ fixture }) => fixture !== of);
    expect(later.length).toBeGreaterThan(0);
    const begun = begunBy(planned[pours[0]?.id ?? ''] ?? 0, 0);
    const amendment = ranOut(plan, pours[0]?.id ?? '', 0.3, (id) => begun.has(id));
    if (!amendment) throw new Error('no amendment');
    const next = withAmendment(plan, amendment);
    const ownNow = poursOf(next).filter(({ fixture }) => fixture === of);
    expect(ownNow.length).toBeGreaterThan(own.length);
    const lastS = Math.max(...ownNow.map(({ id }) => next.timetable.startS[id] ?? 0));
    for (const { id } of later) expect(next.timetable.startS[id]).toBeGreaterThan(lastS);
  });
});

describe.each([
  ['counter', counterPlan],
  ['sink', sinkPlan],
])('a run of a %s in which a kettle runs out', (_name, plan) => {
  it('pours every kettle of the new share-out and ends with every step done', () => {
    const pour = poursOf(plan)[1]?.id ?? '';
    let said = false;
    const script = (seen: RunView) => {
      const step = seen.steps.find((one) => one.step.id === pour);
      if (said || step?.status !== 'active' || step.stage !== 0) return [];
      said = true;
      const begun = (id: string): boolean =>
        seen.steps.some(
          (one) => one.step.id === id && one.status !== 'waiting' && one.status !== 'ready',
        );
      const amendment = ranOut(seen.plan, pour, 0.5, begun);
      return amendment ? [{ kind: 'amend-plan' as const, ...amendment }] : [];
    };
    const { state, facts } = simulateRun(plan, { script, eager: true });
    expect(state.status).toBe('closed');
    expect(facts.some(({ body }) => body.kind === 'plan-amended')).toBe(true);
    expect(state.plan.steps.length).toBeGreaterThan(plan.steps.length);
    expect(Object.values(state.steps).filter(({ outcome }) => outcome !== 'done')).toEqual([]);
    expect(fold(facts)).toEqual(state);
  });
});
