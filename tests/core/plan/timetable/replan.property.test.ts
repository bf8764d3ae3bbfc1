import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  buildPlan,
  calendarOf,
  replanned,
  runsThroughRestDays,
  type Plan,
  type Standing,
  type Step,
} from '../../../../src/core/plan/index.ts';
import { runs } from '../../../support/runs.ts';
import { DEMOS, kitchenOf } from '../support/plans.ts';

const STARTS = ['2027-03-01T17:30:00Z', '2027-04-18T13:00:00Z', '2027-04-20T05:00:00Z'];
const PLANS = DEMOS.flatMap((demo) =>
  STARTS.map((start) => buildPlan(kitchenOf(demo), { startWallMs: Date.parse(start) })),
);
const TOUCH_S = 0.01;
/** What runs may hold up what waits for it by this more than was planned. */
const SLACK_S = 60;
const WORKDAY_S = 14 * 3600;

const plannedS = ({ timetable }: Plan, { id }: Step): number => timetable.startS[id] ?? 0;

/** A plan cut off at a moment, late by some hours, with what runs going on for longer or shorter than planned. */
function standings(): fc.Arbitrary<{ plan: Plan; standing: Standing; nowS: number }> {
  return fc
    .record({
      plan: fc.constantFrom(...PLANS),
      share: fc.double({ min: 0, max: 1, noNaN: true }),
      lateS: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 20 * 3600 })),
      longer: fc.double({ min: 0, max: 2, noNaN: true }),
    })
    .map(({ plan, share, lateS, longer }) => {
      const cutS = share * plan.timetable.finishS;
      const endS = (step: Step): number => plannedS(plan, step) + step.durationS.typical;
      const over = plan.steps.filter((step) => endS(step) <= cutS + TOUCH_S);
      const running = plan.steps.filter(
        (step) => !over.includes(step) && plannedS(plan, step) <= cutS,
      );
      const nowS = cutS + lateS;
      const standing = {
        nowMs: (plan.days?.startWallMs ?? 0) + nowS * 1000,
        over: new Set(over.map(({ id }) => id)),
        runningS: new Map(running.map((step) => [step.id, (endS(step) - cutS) * longer] as const)),
      };
      return { plan, standing, nowS };
    });
}

type Placed = { readonly step: Step; readonly fromS: number; readonly toS: number };

function* broken(plan: Plan, { over, runningS }: Standing, all: readonly Placed[], nowS: number) {
  const byId = new Map(all.map((one) => [one.step.id, one]));
  const calendar = plan.kitchen.place
    ? calendarOf(plan.kitchen, plan.kitchen.place, plan.days?.startWallMs ?? 0)
    : undefined;
  const touches = ({ fromS, toS }: Placed, spans: readonly { fromS: number; toS: number }[]) =>
    spans.some((span) => span.fromS < toS - TOUCH_S && span.toS > fromS + TOUCH_S);
  for (const step of plan.steps)
    if (byId.has(step.id) === over.has(step.id)) yield `${step.id} is lost or done again`;
  for (const one of all) {
    const { step, fromS } = one;
    if (runningS.has(step.id)) {
      if (Math.abs(fromS - nowS) > TOUCH_S) yield `${step.id} runs and is moved`;
      continue;
    }
    if (fromS < nowS - TOUCH_S) yield `${step.id} lies in the past`;
    for (const need of step.needs) {
      const needed = byId.get(need.step);
      // A rest that began before the work is over at its hour, whenever it is begun.
      if (!needed || needed.step.lastHotWallMs !== undefined) continue;
      if (fromS < needed.toS - TOUCH_S) yield `${step.id} is before ${need.step}`;
      if (fromS > needed.toS + (need.withinS ?? Infinity) + SLACK_S)
        yield `${step.id} is too long after ${need.step}`;
    }
    if (!runsThroughRestDays(step) && touches(one, calendar?.rests ?? []))
      yield `${step.id} lies in a rest day`;
    const isByDay = step.attention !== 'none' && step.durationS.typical <= WORKDAY_S;
    if (isByDay && touches(one, calendar?.closed ?? [])) yield `${step.id} lies in a night`;
  }
  for (const { id, capacity } of plan.resources)
    for (const { fromS } of all) {
      const held = all
        .filter((one) => one.fromS <= fromS + TOUCH_S && one.toS > fromS + 2 * TOUCH_S)
        .reduce((sum, { step }) => sum + (step.demands[id] ?? 0), 0);
      if (held > capacity + 1e-6) yield `${id} is held ${held} of ${capacity} times at ${fromS} s`;
    }
}

describe('what is left of a plan, planned again', () => {
  it('breaks no need, asks for nothing twice, keeps nights and rest days, and moves nothing that is past', () => {
    fc.assert(
      fc.property(standings(), ({ plan, standing, nowS }) => {
        const again = replanned(plan, standing);
        if (!again) throw new Error('no times were found');
        const { startS } = again;
        const all = plan.steps.flatMap((step): Placed[] => {
          const fromS = startS[step.id];
          if (fromS === undefined) return [];
          const lengthS = standing.runningS.get(step.id) ?? step.durationS.typical;
          return [{ step, fromS, toS: fromS + lengthS }];
        });
        expect([...broken(plan, standing, all, nowS)]).toEqual([]);
        expect(again.finishS).toBeGreaterThanOrEqual(nowS - TOUCH_S);
      }),
      { numRuns: runs(40) },
    );
  });

  it('is the plan itself while everything goes to plan', () => {
    for (const plan of PLANS) {
      const { finishS, startS } = plan.timetable;
      for (const share of [0, 0.3, 0.6, 0.9]) {
        const cutS = share * finishS;
        const endS = (step: Step): number => plannedS(plan, step) + step.durationS.typical;
        const left = plan.steps.filter((step) => endS(step) > cutS + TOUCH_S);
        const begun = left.filter((step) => plannedS(plan, step) <= cutS);
        const again = replanned(plan, {
          nowMs: (plan.days?.startWallMs ?? 0) + cutS * 1000,
          over: new Set(plan.steps.filter((one) => !left.includes(one)).map(({ id }) => id)),
          runningS: new Map(begun.map((step) => [step.id, endS(step) - cutS])),
        });
        expect(Math.abs((again?.finishS ?? 0) - finishS)).toBeLessThan(60);
        // A small change is preferred: most of what is to come stays where it was.
        const open = left.filter((step) => !begun.includes(step));
        const kept = open.filter(
          ({ id }) => Math.abs((again?.startS[id] ?? 0) - (startS[id] ?? 0)) < 1,
        );
        if (open.length > 0) expect(kept.length / open.length).toBeGreaterThan(0.5);
      }
    }
  });

  it('is not told where the plan knows no days', () => {
    const plan = buildPlan(kitchenOf('flat-coils'));
    const standing = { nowMs: 0, over: new Set<string>(), runningS: new Map<string, number>() };
    expect(replanned(plan, standing)).toBeUndefined();
  });
});
