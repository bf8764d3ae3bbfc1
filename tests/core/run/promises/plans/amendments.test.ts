import { describe, expect, it } from 'vitest';
import { buildPlan, ranOut, type Step } from '../../../../../src/core/plan/index.ts';
import type { Request } from '../../../../../src/core/run/index.ts';
import { kitchenOf, only } from '../../../plan/support/plans.ts';
import { Tablet } from '../../support/tablet.ts';

const plan = buildPlan(only(kitchenOf('flat-coils'), 'counter-right'));
const pour = plan.steps.find(({ kind }) => kind === 'pour') as Step;
const amendment = ranOut(plan, pour.id, 0.5, (id) => id === pour.id);
const known = new Set(plan.steps.map(({ id }) => id));

function running(): Tablet {
  const tablet = new Tablet(plan);
  tablet.does({ kind: 'start-run' });
  return tablet;
}

/** The same amendment with its added steps of one kind changed. */
function changed(kind: Step['kind'], change: (step: Step) => Partial<Step>): Request {
  if (!amendment) throw new Error('no amendment');
  const steps = amendment.steps.map((step) =>
    !known.has(step.id) && step.kind === kind ? { ...step, ...change(step) } : step,
  );
  return { kind: 'amend-plan', ...amendment, steps };
}

describe('an amendment', () => {
  it('as it is made is accepted', () => {
    // Verifies: I-28, I-29
    expect(running().tries(changed('boil', () => ({})))).toBeNull();
  });

  it('keeps the needs of its siblings: rest, kettle and burner', () => {
    // Verifies: I-28
    const boil = plan.steps.find(({ kind }) => kind === 'boil') as Step;
    const outside = boil.needs.filter(({ step }) => !/^(boil|pour)-counter/.test(step));
    expect(outside.length).toBeGreaterThan(1);
    for (const need of outside) {
      const without = changed('boil', ({ needs }) => ({
        needs: needs.filter(({ step }) => step !== need.step),
      }));
      expect(running().tries(without), need.step).toBe('amendment-drops-need');
    }
  });

  it('has finite numbers', () => {
    // Verifies: I-28
    const cases: [string, Request][] = [
      ['duration', changed('pour', () => ({ durationS: { low: 1, typical: NaN, high: 1 } }))],
      ['demand', changed('pour', ({ demands }) => ({ demands: { ...demands, hands: Infinity } }))],
      [
        'within',
        changed('pour', ({ needs }) => ({
          needs: needs.map((need) =>
            need.withinS === undefined ? need : { ...need, withinS: -Infinity },
          ),
        })),
      ],
      [
        'timer',
        changed('boil', ({ stages }) => ({
          stages: stages.map((stage) => ({
            ...stage,
            timers: stage.timers.map((timer) => ({ ...timer, lengthS: NaN })),
          })),
        })),
      ],
    ];
    for (const [name, asked] of cases) expect(running().tries(asked), name).toBe('bad-amendment');
    for (const atS of [NaN, Infinity, -1]) {
      const asked = changed('boil', () => ({})) as Extract<Request, { kind: 'amend-plan' }>;
      expect(running().tries({ ...asked, startS: { [pour.id]: atS } })).toBe('bad-amendment');
    }
    const asked = changed('boil', () => ({})) as Extract<Request, { kind: 'amend-plan' }>;
    expect(running().tries({ ...asked, startS: { nowhere: 5 } })).toBe('bad-amendment');
  });

  it('names no need, stage or timer twice', () => {
    // Verifies: I-28
    const twice = <T>(all: readonly T[]): readonly T[] => [...all, ...all.slice(0, 1)];
    const cases = [
      changed('pour', ({ needs }) => ({ needs: twice(needs) })),
      changed('pour', ({ stages }) => ({ stages: twice(stages) })),
      changed('boil', ({ stages }) => ({
        stages: stages.map((stage) => ({ ...stage, timers: twice(stage.timers) })),
      })),
    ];
    for (const asked of cases) expect(running().tries(asked)).toBe('bad-amendment');
  });
});
