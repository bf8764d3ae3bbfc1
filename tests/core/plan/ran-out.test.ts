import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  buildPlan,
  checkPlan,
  ranOut,
  type Plan,
  type Step,
  type Stretch,
} from '../../../src/core/plan/index.ts';
import { fold, simulateRun, type RunView } from '../../../src/core/run/index.ts';
import { kitchenOf, only } from './plans.ts';

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
      expect(pour.title).toContain(`kettle ${i + 3} of ${pours.length}`);
      expect(pour.needs.map(({ step }) => step)).toContain(pours[i + 1]?.id);
      expect(pour.needs.filter(({ withinS }) => withinS !== undefined)).toHaveLength(1);
    });
    // The timetable is not solved anew: the run orders by it and holds the resources itself.
    const structural = checkPlan(plan).filter(
      ({ rule }) => rule !== 'resources' && rule !== 'timetable',
    );
    expect(structural).toEqual([]);
  });

  it('changes nothing that has begun', () => {
    const [, second, third] = poursOf(counterPlan);
    const amendment = ranOut(
      counterPlan,
      second?.id ?? '',
      0.5,
      (id) => id === 'boil-counter-right-3',
    );
    expect(amendment?.steps.map(({ id }) => id)).not.toContain('boil-counter-right-3');
    expect(amendment?.steps.map(({ id }) => id)).toContain(third?.id);
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
    expect(second?.stages[0]?.detail.every((line) => line.endsWith('the rest'))).toBe(true);
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
