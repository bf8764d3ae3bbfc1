import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Fixture, Kitchen } from '../../../../src/core/kitchen/index.ts';
import { buildPlan, checkPlan, type Plan } from '../../../../src/core/plan/index.ts';
import { simulateRun } from '../../../../src/core/run/index.ts';
import { kitchens } from '../../kitchen/arbitrary/kitchen-arbitrary.ts';
import { endS, kitchenOf, startS, step, stepsOf, withMethod } from '../support/plans.ts';
import { runs } from '../../../support/runs.ts';

const H_S = 3600;

/** The flat with a freezer beside its fridge. */
const flat = kitchenOf('flat-coils');
const freezer: Fixture = {
  id: 'freezer',
  name: 'Freezer',
  kind: 'freezer',
  designation: 'undecided',
  material: 'plastic',
};
const frozen: Kitchen = { ...flat, fixtures: [...flat.fixtures, freezer] };
const plan = buildPlan(frozen);

function without(...ids: readonly string[]): Plan {
  const steps = plan.steps
    .filter(({ id }) => !ids.includes(id))
    .map((one) => ({ ...one, needs: one.needs.filter((need) => !ids.includes(need.step)) }));
  return { ...plan, steps };
}

describe('a fridge or freezer that is cleaned', () => {
  it.each(['fridge', 'freezer'])('is unplugged before, and on again after: %s', (id) => {
    expect(checkPlan(plan)).toEqual([]);
    expect(startS(plan, `clean-${id}`)).toBeGreaterThanOrEqual(endS(plan, `unplug-${id}`));
    expect(startS(plan, `switch-on-${id}`)).toBeGreaterThanOrEqual(endS(plan, `clean-${id}`));
  });

  it('is not unplugged where there is none', () => {
    const none = buildPlan({
      ...flat,
      fixtures: flat.fixtures.filter(({ kind }) => kind !== 'fridge'),
    });
    for (const kind of ['unplug', 'thaw', 'switch-on'] as const)
      expect(stepsOf(none, kind)).toEqual([]);
  });

  it('thaws for hours, with nobody beside it and a clock that says when to look', () => {
    const thaw = step(plan, 'thaw-freezer');
    expect(thaw).toMatchObject({ attention: 'none', startsBy: 'chain', demands: {} });
    expect(thaw.durationS.typical).toBeGreaterThanOrEqual(3 * H_S);
    expect(thaw.stages[0]?.timers[0]).toMatchObject({ role: 'estimate' });
    // Other things are cleaned meanwhile.
    const meanwhile = stepsOf(plan, 'clean').filter(
      ({ id }) =>
        startS(plan, id) >= startS(plan, thaw.id) && endS(plan, id) <= endS(plan, thaw.id),
    );
    expect(meanwhile.length).toBeGreaterThan(0);
    expect(stepsOf(plan, 'thaw', 'fridge')).toEqual([]);
  });

  it('is off for the hours of one day at most, in any kitchen', () => {
    fc.assert(
      fc.property(kitchens(), (kitchen) => {
        const built = buildPlan(kitchen);
        for (const on of stepsOf(built, 'switch-on')) {
          const off = stepsOf(built, 'unplug', on.fixture)[0];
          const rests = stepsOf(built, 'rest', on.fixture).length > 0;
          if (!off || rests) continue;
          expect(endS(built, on.id) - startS(built, off.id)).toBeLessThanOrEqual(12 * H_S);
        }
      }),
      { numRuns: runs(60) },
    );
  });

  it('is switched on again in the run before the kitchen is marked', () => {
    const { state, facts } = simulateRun(plan);
    expect(state.closedAs).toBe('completed');
    const done = facts.flatMap(({ body }) => (body.kind === 'step-settled' ? [body.step] : []));
    for (const id of ['fridge', 'freezer']) {
      expect(done.indexOf(`switch-on-${id}`)).toBeGreaterThan(done.indexOf(`clean-${id}`));
      expect(done.indexOf(`switch-on-${id}`)).toBeLessThan(done.indexOf('mark-kitchen'));
    }
  });

  it('is planned too in hours that are too short for it to be done in one go', () => {
    const closed = Array.from({ length: 20 }, (_, day) => ({
      fromS: (day * 24 + 5) * H_S,
      toS: (day + 1) * 24 * H_S,
    }));
    const short = buildPlan({ ...frozen, fixtures: [freezer] }, { closed });
    expect(checkPlan(short)).toEqual([]);
    expect(startS(short, 'clean-freezer')).toBeGreaterThan(24 * H_S);
  });

  it('that is purged is switched on after its purge and its cover', () => {
    const poured = buildPlan(withMethod(frozen, 'fridge', 'pour'));
    expect(checkPlan(poured)).toEqual([]);
    const own = poured.steps.filter(
      ({ fixture, kind }) => fixture === 'fridge' && kind !== 'switch-on',
    );
    for (const { id } of own)
      expect(startS(poured, 'switch-on-fridge')).toBeGreaterThanOrEqual(endS(poured, id) - 0.01);
  });
});

describe('the check of a plan', () => {
  it.each<readonly [string, Plan, string]>([
    ['a fridge that stays off', without('switch-on-fridge'), 'fridge'],
    ['a fridge that is washed under power', without('unplug-fridge'), 'clean-fridge'],
    ['a freezer that is washed with its ice', without('thaw-freezer'), 'clean-freezer'],
    [
      'a fridge that is on before it is clean',
      {
        ...plan,
        steps: plan.steps.map((one) =>
          one.id === 'switch-on-fridge' ? { ...one, needs: [{ step: 'unplug-fridge' }] } : one,
        ),
      },
      'switch-on-fridge',
    ],
  ])('finds %s', (_, bad, about) => {
    const found = checkPlan(bad).flatMap((one) => (one.rule === 'chilled' ? one.about : []));
    expect(found).toContain(about);
  });
});
