import { describe, expect, it } from 'vitest';
import type { Plan, Step } from '../../../src/core/plan/index.ts';
import { calibrationFrom } from '../../../src/core/calibration/index.ts';
import { planOf, purgePlan } from '../run/support/fixtures.ts';
import { glowing, Tablet } from '../run/support/tablet.ts';

/** The purge of the fixtures, with its burner named. */
function withHardware(plan: Plan): Plan {
  const named = (step: Step): Step => {
    if (step.kind === 'glow')
      return { ...step, work: { on: 'burner', burner: 'left', method: 'glow' } };
    return step;
  };
  return planOf(plan.steps.map(named));
}

const plan = withHardware(purgePlan);
/** The boil of the fixtures is planned to take this long, s. */
const PLANNED_S = 240;

/** Boils the first kettle once more, in so many seconds. */
function boil(tablet: Tablet, tookS: number, first: boolean): void {
  if (!first) tablet.does({ kind: 'repeat-step', step: 'boil-1', reason: 'again' });
  tablet.does({ kind: 'start-step', step: 'boil-1' });
  tablet.passes(tookS);
  tablet.says('boil-1');
}

function boils(...tookS: readonly number[]): Tablet {
  const tablet = new Tablet(plan);
  tablet.does({ kind: 'start-run' });
  tookS.forEach((s, i) => boil(tablet, s, i === 0));
  return tablet;
}

const boilOf = (tablet: Tablet) =>
  calibrationFrom(tablet.facts).find(({ what }) => what === 'boil');

describe('what a run teaches', () => {
  it('learns how long the kettle takes against the plan', () => {
    const row = boilOf(boils(300, 300, 300, 300));
    expect(row).toMatchObject({ id: 'boil-kettle', plannedS: PLANNED_S });
    expect(row?.estimate.n).toBe(4);
    expect(row?.estimate.mean).toBeGreaterThan(1.2);
    expect(row?.estimate.mean).toBeLessThanOrEqual(300 / PLANNED_S + 1e-6);
  });

  it('sets a word given late apart and shows it', () => {
    const row = boilOf(boils(300, 300, 2400, 300));
    expect(row?.estimate.outliers).toHaveLength(1);
    expect(row?.estimate.n).toBe(3);
  });

  it('can undo one report', () => {
    const { facts } = boils(300, 330);
    const both = calibrationFrom(facts)[0]?.estimate.mean ?? 0;
    const one = calibrationFrom(facts, { 'boil-kettle': [1] })[0];
    expect(one?.estimate.n).toBe(1);
    expect(one?.estimate.mean).toBeLessThan(both);
  });

  it('learns nothing from a boil the page did not see through', () => {
    const tablet = new Tablet(plan);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    tablet.passes(100);
    tablet.restarts(400);
    expect(calibrationFrom(tablet.facts)).toEqual([]);
  });

  it('learns the warm-up of a burner by the word that it glows', () => {
    const rows = calibrationFrom(glowing(plan).facts);
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({ what: 'glow', id: 'glow-left' });
    // Reported after 200 s of 240 planned.
    expect(rows[0]?.estimate.mean).toBeLessThan(1);
  });

  it('says nothing without a drafted run', () => expect(calibrationFrom([])).toEqual([]));
});
