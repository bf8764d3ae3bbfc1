import { describe, expect, it } from 'vitest';
import type { Plan, Step } from '../../../src/core/plan/index.ts';
import { calibrationFrom } from '../../../src/core/calibration/index.ts';
import { planOf, purgePlan } from '../run/fixtures.ts';
import { glowing, Tablet } from '../run/tablet.ts';

/** The purge of the fixtures, with the hardware of each step named. */
function withHardware(plan: Plan): Plan {
  const named = (step: Step): Step => {
    if (step.kind === 'boil')
      return { ...step, picture: { kind: 'kettle', vessel: 'kettle', litres: 1.7, maxFillL: 1.7 } };
    if (step.kind === 'glow')
      return { ...step, picture: { kind: 'burner', cooktop: 'hob', burner: 'left' } };
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
    const learned = boilOf(boils(300, 300, 300, 300));
    expect(learned).toMatchObject({ id: 'boil-kettle', plannedS: PLANNED_S });
    expect(learned?.estimate.n).toBe(4);
    expect(learned?.estimate.mean).toBeGreaterThan(1.2);
    expect(learned?.estimate.mean).toBeLessThanOrEqual(300 / PLANNED_S + 1e-6);
  });

  it('sets a word given late apart and shows it', () => {
    const learned = boilOf(boils(300, 300, 2400, 300));
    expect(learned?.estimate.outliers).toHaveLength(1);
    expect(learned?.estimate.n).toBe(3);
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
    const learned = calibrationFrom(glowing(plan).facts);
    expect(learned).toHaveLength(1);
    expect(learned[0]).toMatchObject({ what: 'glow', id: 'glow-left' });
    // Reported after 200 s of 240 planned.
    expect(learned[0]?.estimate.mean).toBeLessThan(1);
  });

  it('says nothing without a drafted run', () => expect(calibrationFrom([])).toEqual([]));
});
