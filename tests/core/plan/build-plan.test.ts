import { describe, expect, it } from 'vitest';
import { buildPlan, checkPlan } from '../../../src/core/plan/index.ts';
import { simulateRun } from '../../../src/core/run/index.ts';
import { DEMOS, endS, kitchenOf, planOfDemo, startS, step, stepsOf } from './support/plans.ts';

const H_S = 3600;
const DAY_S = 24 * H_S;

describe.each(DEMOS)('the plan of %s', (demo) => {
  const plan = planOfDemo(demo);

  it('holds', () => {
    expect(checkPlan(plan)).toEqual([]);
  });

  it('is the same every time', () => {
    expect(buildPlan(kitchenOf(demo))).toEqual(plan);
  });

  it('is inert: it survives being written as JSON', () => {
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
  });

  it('can be run to its end, every step done, at the time it says', () => {
    const { state, finishS } = simulateRun(plan);
    expect(state.status).toBe('closed');
    expect(Object.values(state.steps).filter(({ outcome }) => outcome !== 'done')).toEqual([]);
    // Readings are taken a hair after each due time.
    expect(finishS).toBeGreaterThan(plan.timetable.finishS - 1);
    // Water is boiled only when what is hot beside its pour will be cold by then, by the slow end of its clock.
    expect(finishS).toBeLessThan(plan.timetable.finishS + 15 * 60);
  });

  it('can be run eagerly to its end', () => {
    const { state } = simulateRun(plan, { eager: true });
    expect(Object.values(state.steps).filter(({ outcome }) => outcome !== 'done')).toEqual([]);
  });
});

describe('a flat for one person', () => {
  const plan = planOfDemo('flat-coils');

  it('is cleaned on the first day, rests, and is purged on the second', () => {
    for (const { id } of stepsOf(plan, 'clean')) expect(endS(plan, id), id).toBeLessThan(14 * H_S);
    for (const one of plan.steps.filter(({ phase }) => phase === 'purge')) {
      expect(startS(plan, one.id), one.id).toBeGreaterThanOrEqual(DAY_S);
      expect(endS(plan, one.id), one.id).toBeLessThan(2 * DAY_S);
    }
    // The shut oven may be touched late that evening; marking waits for the morning.
    expect(plan.timetable.finishS).toBeLessThan(2 * DAY_S + 2 * H_S);
  });

  it('rests each purged fixture 24 hours from its own cleaning', () => {
    for (const rest of stepsOf(plan, 'rest')) {
      expect(rest.startsBy).toBe('chain');
      expect(rest.stages[0]?.timers).toMatchObject([
        { role: 'hold', purpose: 'at-least', lengthS: DAY_S },
      ]);
      const [clean] = rest.needs;
      expect(startS(plan, rest.id)).toBeCloseTo(endS(plan, clean?.step ?? ''), 1);
    }
  });

  it('does not rest what is only cleaned', () => {
    expect(plan.steps.some(({ id }) => id === 'rest-fridge')).toBe(false);
    expect(plan.steps.some(({ id }) => id === 'rest-sink')).toBe(true);
  });

  it('pours the counters before the sink that their run-off goes into', () => {
    const last = Math.max(...stepsOf(plan, 'pour', 'counter-left').map(({ id }) => endS(plan, id)));
    expect(startS(plan, 'pour-sink-1')).toBeGreaterThanOrEqual(last);
  });

  it('cleans out the oven before the burners over it glow', () => {
    expect(startS(plan, 'glow-coil-back-left')).toBeGreaterThanOrEqual(
      endS(plan, 'heat-oven') - 0.01,
    );
  });

  it('purges the kettle before it pours', () => {
    expect(step(plan, 'boil-sink-1').needs.map((need) => need.step)).toContain('boil-over-kettle');
  });
});

describe('the people', () => {
  it('more of them finish no later', () => {
    const kitchen = kitchenOf('mountain-gas');
    const finish = (people: number): number =>
      buildPlan({ ...kitchen, household: { ...kitchen.household, people } }).timetable.finishS;
    expect(finish(4)).toBeLessThanOrEqual(finish(1));
  });
});
