import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildPlan, courseOf, stepGroups, type Plan } from '../../../../src/core/plan/index.ts';
import { hoursOf } from '../../../../src/core/advice/index.ts';
import { daysOfPlan } from '../../../../src/core/plan/course/index.ts';
import { kitchens } from '../../kitchen/arbitrary/kitchen-arbitrary.ts';
import { runs } from '../../../support/runs.ts';
import { DEMOS, kitchenOf, startS, endS } from '../support/plans.ts';

const START_MS = Date.UTC(2027, 2, 4, 14);
const H = 3600;
const TOUCH_S = 0.02;

function planned(demo: (typeof DEMOS)[number]): Plan {
  return buildPlan(kitchenOf(demo), { startWallMs: START_MS });
}
const course = (plan: Plan) => courseOf(plan, hoursOf(plan).work);

function check(plan: Plan): void {
  const { lanes, rows, idle, free } = course(plan);
  const shown = new Set([
    ...lanes.flatMap(({ hands, watches }) => [...hands, ...watches].map(({ step }) => step)),
    ...rows.flatMap(({ bars }) => bars.flatMap(({ steps }) => steps)),
  ]);
  expect(plan.steps.map(({ id }) => id).filter((id) => !shown.has(id))).toEqual([]);
  for (const { thing, bars } of rows) {
    expect(bars.length, thing).toBeGreaterThan(0);
    bars.forEach((bar, n) => {
      expect(bar.toS, `${thing}: a bar has a length`).toBeGreaterThan(bar.fromS);
      const next = bars[n + 1];
      if (next) expect(next.fromS, `${thing}: bars lie apart`).toBeGreaterThanOrEqual(bar.toS);
      for (const id of bar.steps) {
        expect(startS(plan, id), `${id} begins in its bar`).toBeLessThanOrEqual(bar.toS);
        expect(endS(plan, id), `${id} ends in its bar`).toBeLessThanOrEqual(bar.toS + TOUCH_S);
      }
    });
  }
  const busy = plan.steps.filter(({ attention }) => attention !== 'none');
  for (const { fromS, toS } of [...idle, ...free])
    for (const { id } of busy) {
      const apart = endS(plan, id) <= fromS + TOUCH_S || startS(plan, id) >= toS - TOUCH_S;
      expect(apart, `${id} is in hours without work`).toBe(true);
    }
  const grouped = stepGroups(plan).flatMap(({ steps }) => steps.map(({ id }) => id));
  expect(grouped.toSorted()).toEqual(plan.steps.map(({ id }) => id).toSorted());
}

describe('the course of a plan', () => {
  it.each(DEMOS)('%s: everything in the timetable shows, nothing lies over another', (demo) => {
    check(planned(demo));
  });

  it('so in random kitchens', () => {
    fc.assert(
      fc.property(kitchens(), (kitchen) => check(buildPlan(kitchen, { startWallMs: START_MS }))),
      { numRuns: runs(30) },
    );
  }, 120_000);

  it('a rest of the flat says until when, and when something waits for it', () => {
    const plan = planned('flat-coils');
    const sink = course(plan).rows.find(({ thing }) => thing === 'sink');
    const [rest] = sink?.bars ?? [];
    expect(rest?.happening).toBe('rest');
    expect(rest?.toS).toBeCloseTo(endS(plan, 'rest-sink'), 2);
    expect(rest?.waitedForS).toBeGreaterThanOrEqual(rest?.toS ?? Infinity);
  });

  it('the chain leads to the end, and the Sabbath is free', () => {
    const plan = planned('flat-coils');
    const { chain, free } = course(plan);
    expect(chain.at(-1)?.toS).toBeCloseTo(plan.timetable.finishS, 2);
    expect(free.some(({ fromS, toS }) => toS - fromS > 12 * H)).toBe(true);
  });
});

describe('steps in groups', () => {
  it('a counter’s kettles are one piece of work, a fridge from plug to plug another', () => {
    const groups = stepGroups(planned('hall'));
    const island = groups.filter(({ steps }) => steps[0]?.fixture === 'island');
    expect(island.map(({ family }) => family).slice(0, 2)).toEqual(['clean', 'water']);
    const poured = island[1]?.steps.filter(({ kind }) => kind === 'pour').length ?? 0;
    expect(poured).toBeGreaterThan(5);
    const fridge = groups.find(({ steps }) => steps[0]?.fixture === 'fridge');
    expect(fridge?.steps.map(({ kind }) => kind)).toEqual(['unplug', 'clean', 'switch-on']);
  });
});

describe('the days of a plan', () => {
  it('add up to its kettles and its hands', () => {
    for (const demo of DEMOS) {
      const plan = planned(demo);
      const days = daysOfPlan(plan, START_MS, plan.kitchen.place?.zone ?? 'UTC');
      const kettles = days.reduce((sum, day) => sum + day.kettles, 0);
      const handsS = days.reduce((sum, day) => sum + day.handsS, 0);
      expect(kettles).toBe(plan.steps.filter(({ kind }) => kind === 'pour').length);
      expect(handsS).toBeCloseTo(plan.totals.handsOnS, 1);
    }
  });
});
