import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildPlan, type Plan, type Step } from '../../../../src/core/plan/index.ts';
import { peopleLanes, type PersonLane, type Turn } from '../../../../src/core/plan/course/lanes.ts';
import { kitchens } from '../../kitchen/arbitrary/kitchen-arbitrary.ts';
import { runs } from '../../../support/runs.ts';
import { DEMOS, kitchenOf, planOfDemo } from '../support/plans.ts';

const TOUCH_S = 0.02;
const START_MS = Date.UTC(2027, 2, 4, 14);

const overlaps = (a: Turn, b: Turn): boolean =>
  a.fromS < b.toS - TOUCH_S && b.fromS < a.toS - TOUCH_S;

function clashes(turns: readonly Turn[]): readonly string[] {
  return turns.flatMap((a, n) =>
    turns.slice(n + 1).flatMap((b) => (overlaps(a, b) ? [`${a.step} and ${b.step}`] : [])),
  );
}

const handsOf = ({ demands }: Step): number => demands['hands'] ?? 0;
const isPour = ({ demands }: Step): boolean => (demands['watch'] ?? 0) >= 100;

/** What is wrong with lanes, in words; empty: nothing. */
function faults(plan: Plan, lanes: readonly PersonLane[]): readonly string[] {
  const found = lanes.flatMap(({ hands }) => clashes(hands));
  for (const step of plan.steps) {
    const fromS = plan.timetable.startS[step.id] ?? 0;
    const toS = fromS + step.durationS.typical;
    const whole = lanes.filter(({ hands }) =>
      hands.some((one) => one.step === step.id && one.fromS === fromS && one.toS === toS),
    ).length;
    if (whole !== handsOf(step)) found.push(`${step.id} is in ${whole} lanes`);
    const watched = lanes
      .flatMap(({ watches }) => watches)
      .filter((one) => one.step === step.id)
      .toSorted((a, b) => a.fromS - b.fromS);
    const isWatched = handsOf(step) === 0 && (step.demands['watch'] ?? 0) > 0;
    if (!isWatched && watched.length > 0) found.push(`${step.id} is watched for nothing`);
    if (isWatched) {
      const seams = [fromS, ...watched.flatMap((one) => [one.fromS, one.toS]), toS];
      for (let n = 0; n < seams.length; n += 2)
        if (Math.abs((seams[n] ?? 0) - (seams[n + 1] ?? 0)) > TOUCH_S)
          found.push(`${step.id} is not watched all the time`);
    }
  }
  const pours = new Set(plan.steps.filter(isPour).map(({ id }) => id));
  for (const { hands, watches } of lanes)
    for (const watch of watches)
      for (const turn of hands)
        if (pours.has(turn.step) && overlaps(watch, turn))
          found.push(`${turn.step} is poured by whoever watches ${watch.step}`);
  return found;
}

describe('a lane a person', () => {
  it.each(DEMOS)('%s: everything is done, by one person at a time', (demo) => {
    const plan = planOfDemo(demo);
    const lanes = peopleLanes(plan);
    expect(lanes).toHaveLength(plan.kitchen.household.people);
    expect(faults(plan, lanes)).toEqual([]);
    expect(lanes.every(({ hands }) => hands.length > 0)).toBe(true);
  });

  it('holds for random kitchens, one to four people', () => {
    fc.assert(
      fc.property(kitchens(), fc.integer({ min: 1, max: 4 }), (kitchen, people) => {
        const household = { ...kitchen.household, people };
        const plan = buildPlan({ ...kitchen, household }, { startWallMs: START_MS });
        const lanes = peopleLanes(plan);
        expect(lanes).toHaveLength(people);
        expect(faults(plan, lanes)).toEqual([]);
      }),
      { numRuns: runs(40) },
    );
  }, 120_000);

  it('holds for any timetable, and draws more people where a plan asks for more than there are', () => {
    const one = planOfDemo('flat-coils');
    const [made] = one.steps;
    if (!made) throw new Error('the demo has no step');
    const jobs = fc.array(
      fc.record({
        fromS: fc.integer({ min: 0, max: 5000 }),
        lengthS: fc.integer({ min: 1, max: 900 }),
        demand: fc.constantFrom<Readonly<Record<string, number>>>(
          { hands: 1 },
          { hands: 2 },
          { hands: 1, watch: 100 },
          { watch: 1 },
          {},
        ),
      }),
      { maxLength: 30 },
    );
    fc.assert(
      fc.property(jobs, (told) => {
        const steps = told.map(({ lengthS, demand }, n): Step => {
          const durationS = { low: lengthS, typical: lengthS, high: lengthS };
          return { ...made, id: `step-${n}`, durationS, demands: demand, needs: [] };
        });
        const startS = Object.fromEntries(told.map(({ fromS }, n) => [`step-${n}`, fromS]));
        const plan = { ...one, steps, timetable: { ...one.timetable, startS } };
        expect(faults(plan, peopleLanes(plan))).toEqual([]);
      }),
      { numRuns: runs(300) },
    );
  });

  it('lets whoever pours a counter pour on, where another could', () => {
    const kitchen = kitchenOf('hall');
    const plan = buildPlan(kitchen, { startWallMs: START_MS });
    const lanes = peopleLanes(plan);
    const pourers = lanes.filter(({ hands }) =>
      hands.some(({ step }) => step.startsWith('pour-island')),
    );
    expect(pourers).toHaveLength(1);
  });
});
