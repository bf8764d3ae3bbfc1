import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Kitchen } from '../../../../src/core/kitchen/index.ts';
import { buildPlan, checkPlan, type Plan, type Step } from '../../../../src/core/plan/index.ts';
import { simulateRun } from '../../../../src/core/run/index.ts';
import {
  endS,
  kitchenOf,
  noticeKeys,
  noticesText,
  startS,
  step,
  stepsOf,
  withFixture,
} from '../support/plans.ts';
import { at, hoursBefore, lastHot, lastHotKitchens, MONDAY, NEW_YORK } from './support.ts';
import { runs } from '../../../support/runs.ts';

const H_S = 3600;
const flat: Kitchen = { ...kitchenOf('flat-coils'), place: NEW_YORK };

function plan(kitchen: Kitchen, startWallMs = MONDAY): Plan {
  return buildPlan(kitchen, { startWallMs });
}

function cleanedCold(built: Plan, id: string): boolean {
  return step(built, id).stages.some(({ detail }) =>
    detail.some(({ key }) => key === 'steps.clean.cold-only'),
  );
}

describe('a rest', () => {
  it('is over 24 hours after the last hot use, not after the cleaning', () => {
    const told = plan(lastHot(flat, hoursBefore(20)));
    expect(checkPlan(told)).toEqual([]);
    const rests = stepsOf(told, 'rest');
    expect(rests.length).toBeGreaterThan(3);
    for (const { id } of rests)
      expect(endS(told, id)).toBeCloseTo(Math.max(4 * H_S, startS(told, id)), 0);
    expect(told.timetable.finishS).toBeLessThan(plan(flat).timetable.finishS - 10 * H_S);
  });

  it('that is over before its cleaning is waits no more, and never less than nothing', () => {
    const told = plan(lastHot(flat, hoursBefore(30)));
    expect(checkPlan(told)).toEqual([]);
    for (const { durationS } of stepsOf(told, 'rest')) expect(durationS.typical).toBe(0);
  });

  it('of one fixture counts from its own last hot use', () => {
    const own = { lastHotAt: hoursBefore(1) };
    const told = plan(withFixture(lastHot(flat, hoursBefore(20)), 'sink', own));
    expect(endS(told, 'rest-sink')).toBeCloseTo(23 * H_S, 0);
    // Rested by then, and over when it is clean.
    const cleanS = endS(told, 'clean-oven');
    expect(endS(told, 'rest-oven')).toBeCloseTo(Math.max(4 * H_S, cleanS), 0);
  });

  it('of a kettle counts from its own, and all of those alike from the same', () => {
    const vessels = flat.vessels.map((one) => ({ ...one, count: 2, lastHotAt: hoursBefore(10) }));
    const told = plan({ ...lastHot(flat, hoursBefore(20)), vessels });
    const rests = stepsOf(told, 'rest').filter(({ work }) => work.on === 'vessel');
    expect(rests).toHaveLength(2);
    for (const { id } of rests) expect(endS(told, id)).toBeCloseTo(14 * H_S, 0);
  });

  it('is cleaned with cold water only where it counts so, and says why', () => {
    const told = plan(lastHot(flat, hoursBefore(20)));
    expect(cleanedCold(told, 'clean-sink')).toBe(true);
    expect(cleanedCold(told, 'clean-kettle')).toBe(true);
    expect(cleanedCold(told, 'clean-hood')).toBe(false);
    expect(cleanedCold(plan(flat), 'clean-sink')).toBe(false);
    expect(noticesText(told)).toContain('Sunday 15 November 13:00');
  });

  it.each([
    ['after the start', lastHot(flat, hoursBefore(-2)), 'later', '2026-11-16 11:00'],
    ['longer ago than is believed', lastHot(flat, hoursBefore(15 * 24)), 'long-ago', '14 days'],
  ])('does not count from a time %s, which is told', (_, kitchen, why, says) => {
    const told = plan(kitchen);
    expect(checkPlan(told)).toEqual([]);
    expect(noticeKeys(told)).toContain(`plan.notice.last-hot.${why}`);
    expect(noticesText(told)).toContain(says);
    for (const rest of stepsOf(told, 'rest')) expect(rest.durationS.typical).toBe(24 * H_S);
    expect(told.timetable).toEqual(plan(flat).timetable);
  });

  it('does not count where no place tells the zone, or no start was told', () => {
    const { place: _nowhere, ...placeless } = lastHot(flat, hoursBefore(20));
    for (const told of [plan(placeless), buildPlan(lastHot(flat, hoursBefore(20)))]) {
      expect(noticeKeys(told)).toContain('plan.notice.last-hot.unplaced');
      for (const rest of stepsOf(told, 'rest')) expect(rest.durationS.typical).toBe(24 * H_S);
    }
  });

  it('counts from the second of an hour that comes twice', () => {
    // Clocks went back in New York on 1 November 2026: 1:30 came at 5:30 and at 6:30 UTC.
    const told = plan(lastHot(flat, '2026-11-01T01:30'), at('2026-11-01T09:00'));
    expect(step(told, 'rest-sink').lastHotWallMs).toBe(Date.UTC(2026, 10, 1, 6, 30));
    expect(checkPlan(told)).toEqual([]);
  });
});

describe('the check of a plan', () => {
  const good = plan(lastHot(flat, hoursBefore(20)));
  const withStep = (id: string, change: (one: Step) => Partial<Step>): Plan => ({
    ...good,
    steps: good.steps.map((one) => (one.id === id ? { ...one, ...change(one) } : one)),
  });
  const found = (bad: Plan) =>
    checkPlan(bad).flatMap(({ rule, about }) => (rule === 'rest' ? about : []));

  it.each<readonly [string, Plan, string]>([
    [
      'a rest that is over an hour early',
      withStep('rest-oven', ({ durationS: { typical: s } }) => ({
        durationS: { low: s - H_S, typical: s - H_S, high: s - H_S },
      })),
      'rest-oven',
    ],
    [
      'a last hot use earlier than it was told',
      withStep('rest-oven', ({ lastHotWallMs = 0 }) => ({ lastHotWallMs: lastHotWallMs - 60_000 })),
      'rest-oven',
    ],
    [
      'a last hot use after the start',
      withStep('rest-oven', () => ({ lastHotWallMs: MONDAY + 60_000 })),
      'rest-oven',
    ],
    ['a last hot use that nobody told', { ...good, kitchen: flat }, 'rest-oven'],
    [
      'a clock of the run that is shorter than the rest',
      withStep('rest-oven', ({ stages }) => ({
        stages: stages.map((one) => ({
          ...one,
          timers: one.timers.map((timer) => ({ ...timer, lengthS: 4 * H_S })),
        })),
      })),
      'rest-oven',
    ],
    [
      'hot water for what rests already',
      withStep('clean-oven', ({ stages }) => ({
        stages: stages.map((one) => ({ ...one, detail: one.detail.slice(1) })),
      })),
      'clean-oven',
    ],
  ])('finds %s', (_, bad, about) => {
    expect(found(bad)).toContain(about);
  });
});

describe('any kitchen with last hot uses', () => {
  it('gets a plan that holds, with both customs. Verifies: I-17', () => {
    fc.assert(
      fc.property(lastHotKitchens(), (kitchen) => {
        expect(checkPlan(plan(kitchen))).toEqual([]);
      }),
      { numRuns: runs(60) },
    );
  });

  it('is done no later than without them', () => {
    fc.assert(
      fc.property(lastHotKitchens(), (kitchen) => {
        const untold: Kitchen = JSON.parse(
          JSON.stringify(kitchen, (key, value) => (key === 'lastHotAt' ? undefined : value)),
        );
        const { finishS } = plan(kitchen).timetable;
        expect(finishS).toBeLessThanOrEqual(plan(untold).timetable.finishS + 0.01);
      }),
      { numRuns: runs(30) },
    );
  });

  it('gets a plan that is run to its end, and no purge begins within the rest', () => {
    fc.assert(
      fc.property(lastHotKitchens(), (kitchen) => {
        const built = plan(kitchen);
        const { state, facts } = simulateRun(built);
        expect(state.closedAs).toBe('completed');
        for (const { body, at: read } of facts) {
          if (body.kind !== 'step-started') continue;
          for (const { step: id } of step(built, body.step).needs) {
            const rest = built.steps.find((one) => one.id === id && one.kind === 'rest');
            const sinceMs =
              rest?.lastHotWallMs ?? (rest ? MONDAY + startS(built, id) * 1000 : -Infinity);
            expect(read.wallMs - sinceMs).toBeGreaterThanOrEqual(24 * H_S * 1000 - 20_000);
          }
        }
      }),
      { numRuns: runs(25) },
    );
  });
});
