import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asWritten } from '../../../src/core/messages/index.ts';
import type { Kitchen } from '../../../src/core/kitchen/index.ts';
import {
  buildPlan,
  ranOut,
  type Calibration,
  type Plan,
  type Step,
} from '../../../src/core/plan/index.ts';
import { calibrationFrom, calibrationOf } from '../../../src/core/calibration/index.ts';
import type { Fact, FactBody } from '../../../src/core/run/index.ts';
import { kitchenOf, only } from '../plan/support/plans.ts';

const flat = kitchenOf('flat-coils');
const sinkOnly = only(flat, 'sink');
const kettle = flat.vessels[0]?.id ?? '';

/** A run told in facts, by a clock that a test sets. */
class Told {
  readonly facts: Fact[] = [];
  private atS = 0;

  constructor(readonly plan: Plan) {
    this.says({ kind: 'drafted', plan, notBeforeWallMs: 0 });
  }

  says(body: FactBody): void {
    const seq = this.facts.length + 1;
    const at = { wallMs: this.atS * 1000, monoMs: this.atS * 1000, session: 'page-1' };
    this.facts.push({ seq, id: `f-${seq}`, at, body });
  }

  /** A step gone through stage by stage; the one with an estimate takes so long. */
  does(step: Step, tookS: number): void {
    this.says({ kind: 'step-started', step: step.id, attempt: 1, by: 'person' });
    for (const stage of step.stages) {
      const timed = stage.timers.some(({ role }) => role === 'estimate');
      this.atS += timed ? tookS : 5;
      this.says({ kind: 'stage-ended', step: step.id, attempt: 1, stage: stage.id, by: 'person' });
    }
  }
}

function estimateS(step: Step): number {
  return (
    step.stages.flatMap(({ timers }) => timers).find(({ role }) => role === 'estimate')?.lengthS ??
    0
  );
}

function boilsOf(plan: Plan): readonly Step[] {
  return plan.steps.filter(
    ({ kind, picture }) =>
      kind === 'boil' && picture?.kind === 'kettle' && picture.vessel === kettle,
  );
}

/** What physics estimates for one boil, before anything was measured. */
const ESTIMATED_S = estimateS(boilsOf(buildPlan(sinkOnly))[0] as Step);

/** A run in which every boil takes so many times what is estimated. */
function boiled(calibration: Calibration, factors: readonly number[]): Told {
  const run = new Told(buildPlan(sinkOnly, { calibration }));
  boilsOf(run.plan).forEach((step, i) =>
    run.does(step, ESTIMATED_S * (factors[i % factors.length] ?? 1)),
  );
  return run;
}

describe('what the runs of a kitchen teach its next plan', () => {
  it('the next plan has the boil time that was measured, run after run', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.6, max: 2.5, noNaN: true }),
        fc.array(fc.double({ min: -0.04, max: 0.04, noNaN: true }), { minLength: 4, maxLength: 4 }),
        (truth, noise) => {
          const factors = noise.map((one) => truth * (1 + one));
          const runs: { facts: readonly Fact[] }[] = [];
          let calibration: Calibration = {};
          const missed: number[] = [];
          for (let run = 0; run < 4; run += 1) {
            runs.push({ facts: boiled(calibration, factors).facts });
            calibration = calibrationOf(runs, sinkOnly);
            const next = boilsOf(buildPlan(sinkOnly, { calibration }))[0] as Step;
            missed.push(Math.abs(estimateS(next) / (ESTIMATED_S * truth) - 1));
          }
          // Factors count against the estimate: measured again under the new plan they do not grow.
          expect(missed.at(-1)).toBeLessThan(0.06);
          expect(calibration.boil?.[kettle]?.mean).toBeGreaterThanOrEqual(0.5);
          expect(calibration.boil?.[kettle]?.mean).toBeLessThanOrEqual(3);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('a report left out of one run is not counted, and those of the others are', () => {
    const [first, second] = [boiled({}, [1.2]), boiled({}, [1.2])];
    const count = boilsOf(first.plan).length;
    const runs = [
      { facts: first.facts, leaveOut: { [`boil-${kettle}`]: [0] } },
      { facts: second.facts },
    ];
    expect(calibrationOf(runs).boil?.[kettle]?.n).toBe(2 * count - 1);
    const all = Array.from({ length: count }, (_, i) => i);
    const without = runs.map((run) => ({ ...run, leaveOut: { [`boil-${kettle}`]: all } }));
    expect(calibrationOf(without)).not.toHaveProperty('boil');
    const row = calibrationFrom(first.facts, { [`boil-${kettle}`]: all })[0];
    expect(row).toMatchObject({ reports: count, estimate: { n: 0 } });
  });

  it('a kettle that was exchanged since teaches nothing about its successor; a new name changes nothing', () => {
    const { facts } = boiled({}, [1.2]);
    const change = (more: object): Kitchen => ({
      ...sinkOnly,
      vessels: sinkOnly.vessels.map((one) => ({ ...one, ...more })),
    });
    expect(calibrationOf([{ facts }], change({ ratedW: 900 }))).toEqual({});
    expect(
      calibrationOf([{ facts }], change({ name: 'The old one' })).boil?.[kettle]?.n,
    ).toBeGreaterThan(0);
  });

  it('learns nothing from no run', () => expect(calibrationOf([])).toEqual({}));
});

describe('the hand', () => {
  const counter = only(flat, 'counter-right');
  const pours = (plan: Plan) => plan.steps.filter(({ kind }) => kind === 'pour');

  it('is as quick as its kettles emptied, however they were planned', () => {
    for (const flowLMin of [1, 2, 3]) {
      const calibration: Calibration = { flowLMin: { mean: flowLMin, spread: 0.1, n: 3 } };
      const run = new Told(buildPlan(counter, { calibration }));
      // Twice as long as planned: half the stream.
      for (const step of pours(run.plan)) run.does(step, 2 * estimateS(step));
      const row = calibrationFrom(run.facts).find(({ what }) => what === 'pour');
      expect(row?.estimate.observations[0]).toBeCloseTo(flowLMin / 2, 6);
    }
  });

  it('reaches as far as the kettle that ran out, and the next plan has as many kettles as that took', () => {
    const run = new Told(buildPlan(counter));
    const [first, ...others] = pours(run.plan);
    const share = 0.6;
    run.says({ kind: 'step-started', step: first?.id ?? '', attempt: 1, by: 'person' });
    const amendment = ranOut(run.plan, first?.id ?? '', share, () => false);
    if (!amendment) throw new Error('no amendment');
    run.says({ kind: 'plan-amended', ...amendment, reason: asWritten('It ran out.') });
    run.says({
      kind: 'stage-ended',
      step: first?.id ?? '',
      attempt: 1,
      stage: 'pour',
      by: 'person',
    });
    const now = amendment.steps.filter(({ kind }) => kind === 'pour');
    for (const step of now) run.does(step, 50);
    const row = calibrationFrom(run.facts).find(({ what }) => what === 'reach');
    expect(row?.estimate.observations).toHaveLength(1 + now.length);
    for (const value of row?.estimate.observations ?? []) expect(value).toBeCloseTo(share, 6);
    const calibration = calibrationOf([{ facts: run.facts }], counter);
    expect(calibration.reach?.mean).toBeCloseTo(share, 1);
    const next = pours(buildPlan(counter, { calibration }));
    expect(next.length).toBeGreaterThan(1 + others.length);
    expect(Math.abs(next.length - (1 + now.length))).toBeLessThanOrEqual(1);
    // A run by the new plan, with every kettle poured to its end, teaches the same reach.
    const again = new Told(buildPlan(counter, { calibration }));
    for (const step of pours(again.plan)) again.does(step, 50);
    expect(
      calibrationOf([{ facts: run.facts }, { facts: again.facts }], counter).reach?.mean,
    ).toBeCloseTo(calibration.reach?.mean ?? 0, 2);
  });

  it('is judged where a kettle ran out, not where there was enough', () => {
    const both = only(flat, 'counter-left', 'counter-right');
    const run = new Told(buildPlan(both));
    const first = pours(run.plan)[0] as Step;
    const amendment = ranOut(run.plan, first.id, 0.6, () => false);
    if (!amendment) throw new Error('no amendment');
    run.says({ kind: 'plan-amended', ...amendment, reason: asWritten('It ran out.') });
    const changed = new Map(amendment.steps.map((step) => [step.id, step]));
    const others = pours(run.plan).filter(({ fixture }) => fixture !== first.fixture);
    expect(others.length).toBeGreaterThan(1);
    for (const step of [first, ...changed.values(), ...others])
      if (step.kind === 'pour') run.does(step, 50);
    expect(calibrationOf([{ facts: run.facts }], both).reach?.mean).toBeCloseTo(0.6, 1);
  });

  it('teaches nothing about reach when no kettle ran out', () => {
    const run = new Told(buildPlan(counter));
    for (const step of pours(run.plan)) run.does(step, 50);
    expect(calibrationFrom(run.facts).map(({ what }) => what)).toEqual(['pour']);
  });
});

describe('a cool-down that had to be lengthened', () => {
  const hob = only(flat, 'range-top');

  it('is as long as the longest that was needed, and a plan keeps to it', () => {
    const plan = buildPlan(hob);
    const run = new Told(plan);
    const cool = plan.steps.find(({ id }) => id === 'cool-coil-back-left') as Step;
    const usualS = cool.durationS.typical;
    const lengthened = (attempt: number, ...shares: readonly number[]): void => {
      run.says({ kind: 'step-started', step: cool.id, attempt, by: 'chain' });
      for (const share of shares)
        run.says({
          kind: 'timer-extended',
          timer: `${cool.id}#${attempt}/cool/cool`,
          byS: share * usualS,
        });
    };
    lengthened(1, 0.2, 0.2);
    run.says({ kind: 'step-repeated', step: cool.id, attempt: 2, reason: asWritten('Lit again.') });
    lengthened(2, 0.1);
    const calibration = calibrationOf([{ facts: run.facts }], hob);
    expect(calibration.cool?.['coil-back-left']?.mean).toBeCloseTo(1.4, 6);
    const next = buildPlan(hob, { calibration }).steps.find(({ id }) => id === cool.id);
    expect(next?.durationS.typical).toBeCloseTo(1.4 * usualS, 3);
  });
});
