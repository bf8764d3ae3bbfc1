import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  buildPlan,
  checkPlan,
  heatCharts,
  type Calibration,
  type CalibrationFactor,
  type Plan,
  type Step,
  type TimerSpec,
} from '../../../src/core/plan/index.ts';
import { simulateRun } from '../../../src/core/run/index.ts';
import { kitchens } from '../kitchen/arbitrary/kitchen-arbitrary.ts';
import type { Kitchen } from '../../../src/core/kitchen/index.ts';
import { inEnglish } from '../../support/english.ts';
import { DEMOS, kitchenOf, noticesText, step, stepsOf, withMethod } from './support/plans.ts';
import { runs } from '../../support/runs.ts';

const flat = kitchenOf('flat-coils');
const sure = (mean: number): CalibrationFactor => ({ mean, spread: 0.02, n: 5 });

function timers(one: Step): readonly TimerSpec[] {
  return one.stages.flatMap((stage) => stage.timers);
}

function estimateS(plan: Plan, id: string): number {
  return timers(step(plan, id)).find(({ role }) => role === 'estimate')?.lengthS ?? Number.NaN;
}

/** Every calibration that a file could hold, sane or not, for the hardware of a kitchen. */
function calibrations(kitchen: Kitchen): fc.Arbitrary<Calibration> {
  const factor = fc.record({
    mean: fc.oneof(fc.double({ min: 0.01, max: 20 }), fc.constantFrom(0, -1, Infinity, NaN)),
    spread: fc.oneof(fc.double({ min: 0, max: 3, noNaN: true }), fc.constant(NaN)),
    n: fc.integer({ min: 0, max: 30 }),
  });
  const burners = kitchen.fixtures.flatMap((f) => (f.kind === 'cooktop' ? f.burners : []));
  const ovens = kitchen.fixtures.filter(({ kind }) => kind === 'oven');
  const by = (ids: readonly { readonly id: string }[]) =>
    fc.record(Object.fromEntries([...ids.map(({ id }) => id), 'gone'].map((id) => [id, factor])), {
      requiredKeys: [],
    });
  return fc.record(
    {
      boil: by(kitchen.vessels),
      glow: by(burners),
      heatUp: by(ovens),
      cool: by([...burners, ...ovens]),
      flowLMin: factor,
      reach: factor,
    },
    { requiredKeys: [] },
  ) as fc.Arbitrary<Calibration>;
}

function calibratedKitchens(): fc.Arbitrary<readonly [Kitchen, Calibration]> {
  return kitchens().chain((kitchen) => fc.tuple(fc.constant(kitchen), calibrations(kitchen)));
}

function litresPoured(plan: Plan): number {
  return plan.totals.hotL.typical;
}

describe('a plan with what earlier runs taught', () => {
  it('boils as long as was measured, and says so', () => {
    const vessel = flat.vessels[0]?.id ?? '';
    const usual = buildPlan(flat);
    const taught = buildPlan(flat, { calibration: { boil: { [vessel]: sure(1.3) } } });
    const boils = stepsOf(usual, 'boil').filter(
      ({ picture }) => picture?.kind === 'kettle' && picture.vessel === vessel,
    );
    expect(boils.length).toBeGreaterThan(0);
    for (const { id } of boils)
      expect(estimateS(taught, id)).toBeCloseTo(1.3 * estimateS(usual, id), 6);
    const { reason } = step(taught, boils[0]?.id ?? '');
    expect(inEnglish.say(reason)).toMatch(
      /From your last run: it boils in about \d+ min( \d+ s)? \(5 reports\)\.$/,
    );
    expect(noticesText(taught)).toContain('30 % longer than reckoned to boil');
    for (const { id, durationS } of boils)
      expect(step(taught, id).durationS.typical).toBeGreaterThan(durationS.typical);
    expect(taught.calibration).toEqual({ boil: { [vessel]: sure(1.3) } });
  });

  it('marks the measured moments on the course of the boil', () => {
    const vessel = flat.vessels[0]?.id ?? '';
    const picture = (calibration: Calibration) =>
      heatCharts(buildPlan(flat, { calibration })).find(({ id }) => id === `boil-${vessel}`);
    const about = (calibration: Calibration) =>
      picture(calibration)?.moments.find(({ name }) => name.key === 'plan.chart.boil.about')
        ?.timeS ?? Number.NaN;
    expect(about({ boil: { [vessel]: sure(1.3) } })).toBeCloseTo(1.3 * about({}), 6);
    expect(picture({ boil: { [vessel]: sure(1.3) } })?.says.key).toBe(
      'plan.chart.boil.says-calibrated',
    );
    expect(picture({})?.says.key).toBe('plan.chart.boil.says');
  });

  it('expects a glow when it was seen, and calls it a fault no later than before', () => {
    const calibration: Calibration = {
      glow: { 'coil-back-left': sure(1.5), 'coil-front-left': sure(0.5) },
    };
    const usual = buildPlan(flat);
    const taught = buildPlan(flat, { calibration });
    const limitS = (plan: Plan, id: string) =>
      timers(step(plan, id)).find(({ role }) => role === 'limit')?.lengthS;
    for (const [id, factor] of [
      ['glow-coil-back-left', 1.5],
      ['glow-coil-front-left', 0.5],
    ] as const) {
      expect(estimateS(taught, id)).toBeCloseTo(factor * estimateS(usual, id), 6);
      expect(limitS(taught, id)).toBe(limitS(usual, id));
    }
  });

  it('expects an oven at its highest when it was', () => {
    const oven = flat.fixtures.find(({ kind }) => kind === 'oven')?.id ?? '';
    const heated = withMethod(flat, oven, 'light-heat');
    const usual = estimateS(buildPlan(heated), `heat-${oven}`);
    const taught = buildPlan(heated, { calibration: { heatUp: { [oven]: sure(1.4) } } });
    expect(estimateS(taught, `heat-${oven}`)).toBeCloseTo(1.4 * usual, 6);
  });

  it('keeps a burner from touch longer when that was needed, and never shorter', () => {
    const coolS = (mean: number) =>
      step(
        buildPlan(flat, { calibration: { cool: { 'coil-back-left': sure(mean) } } }),
        'cool-coil-back-left',
      ).durationS.typical;
    const usual = step(buildPlan(flat), 'cool-coil-back-left').durationS.typical;
    expect(coolS(1.5)).toBeCloseTo(1.5 * usual, 6);
    expect(coolS(0.3)).toBe(usual);
  });

  it('takes a slower stream for longer pours of the same water', () => {
    const usual = buildPlan(flat);
    const slow = buildPlan(flat, { calibration: { flowLMin: sure(1) } });
    expect(estimateS(slow, 'pour-sink-1')).toBeCloseTo(2 * estimateS(usual, 'pour-sink-1'), 6);
    expect(litresPoured(slow)).toBe(litresPoured(usual));
  });

  it('takes more kettles when each reached less far, and no fewer when it reached further', () => {
    const counters = (reach: number) =>
      buildPlan(flat, { calibration: { reach: sure(reach) } }).steps.filter(
        ({ kind }) => kind === 'pour',
      ).length;
    const usual = stepsOf(buildPlan(flat), 'pour').length;
    expect(counters(0.6)).toBeGreaterThan(usual);
    expect(counters(2)).toBe(usual);
  });

  it('says nothing of a calibration that it does not use', () => {
    const strange: Calibration = {
      boil: { 'some-other-kettle': sure(2) },
      flowLMin: { ...sure(1), n: 0 },
    };
    expect(buildPlan(flat, { calibration: strange })).toEqual(buildPlan(flat));
    expect(buildPlan(flat, { calibration: {} })).toEqual(buildPlan(flat));
  });

  it.each(DEMOS)('of %s can be run to its end', (demo) => {
    const kitchen = kitchenOf(demo);
    const [calibration] = fc.sample(calibrations(kitchen), { numRuns: 1, seed: 11 });
    const plan = buildPlan(kitchen, calibration ? { calibration } : {});
    expect(checkPlan(plan)).toEqual([]);
    const { state } = simulateRun(plan);
    expect(state.status).toBe('closed');
    expect(Object.values(state.steps).every(({ outcome }) => outcome === 'done')).toBe(true);
  });
});

describe('whatever was taught', () => {
  it('gives a plan that holds, and is used the same the second time', () => {
    fc.assert(
      fc.property(calibratedKitchens(), ([kitchen, calibration]) => {
        const plan = buildPlan(kitchen, { calibration });
        expect(checkPlan(plan)).toEqual([]);
        if (plan.calibration)
          expect(buildPlan(kitchen, { calibration: plan.calibration })).toEqual(plan);
        else expect(plan).toEqual(buildPlan(kitchen));
      }),
      { numRuns: runs(25) },
    );
  });

  it('stays within what hardware can be', () => {
    const ENDS = { boil: [0.5, 3], glow: [0.2, 2], 'high-heat': [0.2, 3] } as const;
    fc.assert(
      fc.property(calibratedKitchens(), ([kitchen, calibration]) => {
        const [usual, taught] = [buildPlan(kitchen), buildPlan(kitchen, { calibration })];
        const known = new Set(usual.steps.map(({ id }) => id));
        for (const { id, kind } of taught.steps) {
          const ends = ENDS[kind as keyof typeof ENDS];
          if (!ends || !known.has(id)) continue;
          const sameHardware =
            JSON.stringify(step(taught, id).demands) === JSON.stringify(step(usual, id).demands);
          const ratio = estimateS(taught, id) / estimateS(usual, id);
          if (Number.isNaN(ratio) || !sameHardware) continue;
          expect(ratio).toBeGreaterThanOrEqual(ends[0] - 1e-9);
          expect(ratio).toBeLessThanOrEqual(ends[1] + 1e-9);
        }
      }),
      { numRuns: runs(25) },
    );
  });

  it('eases nothing that guards a person or the purge', () => {
    fc.assert(
      fc.property(calibratedKitchens(), ([kitchen, calibration]) => {
        const [usual, taught] = [buildPlan(kitchen), buildPlan(kitchen, { calibration })];
        const after = new Map(taught.steps.map((one) => [one.id, one]));
        for (const before of usual.steps) {
          const now = after.get(before.id);
          expect(now, before.id).toBeDefined();
          if (!now) continue;
          expect(now.gates).toEqual(expect.arrayContaining([...before.gates]));
          expect(now.standing).toEqual(expect.arrayContaining([...before.standing]));
          expect(now.after).toEqual(before.after);
          eased(before, now);
        }
        const lit = (plan: Plan) =>
          plan.resources.find(({ id }) => id === 'burners-lit')?.capacity ?? 0;
        expect(lit(taught)).toBeLessThanOrEqual(lit(usual));
        expect(litresPoured(taught)).toBeGreaterThanOrEqual(litresPoured(usual) - 1e-9);
        expect(stepsOf(taught, 'pour').length).toBeGreaterThanOrEqual(
          stepsOf(usual, 'pour').length,
        );
        for (const one of taught.steps)
          if (one.picture?.kind === 'kettle')
            expect(one.picture.litres).toBeLessThanOrEqual(one.picture.maxFillL);
      }),
      { numRuns: runs(40) },
    );
  });
});

/** Holds no shorter; limits and reminders no longer; boiled water waits no longer. */
function eased(before: Step, now: Step): void {
  const [old, fresh] = [timers(before), timers(now)];
  expect(fresh.map(({ id, role }) => `${id} ${role}`)).toEqual(
    old.map(({ id, role }) => `${id} ${role}`),
  );
  old.forEach((timer, at) => {
    const lengthS = fresh[at]?.lengthS ?? Number.NaN;
    if (timer.role === 'hold') expect(lengthS).toBeGreaterThanOrEqual(timer.lengthS);
    else if (timer.role !== 'estimate') expect(lengthS).toBeLessThanOrEqual(timer.lengthS);
  });
  const waitS = ({ needs }: Step) => needs.find(({ withinS }) => withinS !== undefined)?.withinS;
  // Which kettle it is may change with their boiling times; alike kettles keep alike limits.
  const kettle = ({ demands }: Step) => Object.keys(demands).join();
  if (kettle(before) === kettle(now)) expect(waitS(now)).toBe(waitS(before));
}
