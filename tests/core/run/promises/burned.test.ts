import { describe, expect, it } from 'vitest';
import policies from '../../../../shared/fault-policies.json';
import type { Fact } from '../../../../src/core/run/index.ts';
import { policyOf } from '../../../../src/core/run/rules/faults.ts';
import { planOf, purgePlan, smallPlan, steps } from '../support/fixtures.ts';
import { glowing, resting, Tablet } from '../support/tablet.ts';

const MINUTE_S = 60;

function burned(tablet: Tablet): Tablet {
  tablet.does({ kind: 'report-fault', fault: 'burned' });
  return tablet;
}

function cooling(tablet: Tablet) {
  const [one] = tablet.view.coolings;
  if (!one) throw new Error('Nothing is cooled.');
  return one;
}

function dues(facts: readonly Fact[]): readonly string[] {
  return facts.flatMap(({ body }) =>
    body.kind === 'timer-due' && body.timer.startsWith('cooling/')
      ? [`${body.timer}!${body.cause}`]
      : [],
  );
}

/** Steps that do not stand as they should: a burner or a kettle left to itself. */
function statusOf(tablet: Tablet, id: string): string | undefined {
  return tablet.state.steps[id]?.status;
}

describe('somebody is burned', () => {
  it('is the first of the faults, and halts every run, also one whose plan does not know it', () => {
    // Verifies: I-30
    const [first] = policies.rows;
    const { kind, policy, doThis } = policyOf(purgePlan, 'burned');
    expect(purgePlan.faults.some((one) => one.kind === 'burned')).toBe(false);
    expect(first).toMatchObject({ kind, policy, lines: doThis.length });
    const weak = policyOf(
      { ...purgePlan, faults: [{ ...policyOf(purgePlan, 'burned'), policy: 'note', doThis: [] }] },
      'burned',
    );
    expect(weak).toMatchObject({ policy: 'suspend', doThis });
  });

  it('starts its 20 minutes with the press, in every status of a run that has begun', () => {
    // Verifies: I-30
    const ways: readonly (() => Tablet)[] = [
      () => resting(smallPlan),
      () => {
        const held = resting(smallPlan);
        held.does({ kind: 'pause' });
        return held;
      },
      () => {
        const reviewing = glowing(purgePlan);
        reviewing.restarts(400);
        return reviewing;
      },
      () => {
        const closing = glowing(purgePlan);
        closing.does({ kind: 'stop-run', reason: 'Enough.' });
        return closing;
      },
      () => {
        const full = resting(smallPlan);
        full.does({ kind: 'storage-failed', text: 'Full.' });
        return full;
      },
    ];
    for (const make of ways) {
      const tablet = burned(make());
      expect(cooling(tablet)).toMatchObject({ lengthS: 1200, leftS: 1200, over: false });
      expect(tablet.view.status).not.toBe('running');
      tablet.passes(19.9 * MINUTE_S);
      expect(cooling(tablet).over).toBe(false);
      tablet.passes(0.2 * MINUTE_S);
      expect(cooling(tablet)).toMatchObject({ over: true, alerting: true, leftS: 0 });
      expect(dues(tablet.facts)).toHaveLength(1);
    }
  });

  it('has what hands are needed for put down, and lets rests and cool-downs count', () => {
    // Verifies: I-30
    const glow = burned(glowing(purgePlan));
    expect(glow.view.status).toBe('suspended');
    expect(statusOf(glow, 'glow')).toBe('unwinding');
    expect(glow.view.hot.map(({ step, confirmed }) => [step, confirmed])).toEqual([
      ['glow', false],
    ]);

    const pour = new Tablet(purgePlan);
    pour.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    burned(pour);
    expect(statusOf(pour, 'boil-1')).toBe('unwinding');
    expect(pour.tries({ kind: 'start-step', step: 'boil-1' })).toBe('run-suspended');

    const rest = burned(resting(smallPlan));
    const beforeS = rest.clock('rest-sink').atLeastS;
    rest.passes(600);
    expect(rest.clock('rest-sink').atLeastS).toBeGreaterThan(beforeS + 590);
  });

  it('lets the cold water over what was poured be said, and nothing go on into heat', () => {
    // Verifies: I-30
    const cold = new Tablet(purgePlan);
    cold.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    cold.passes(240);
    cold.says('boil-1');
    cold.opens('scald-dress');
    cold.does({ kind: 'start-step', step: 'pour-1' });
    cold.passes(60);
    cold.says('pour-1');
    burned(cold);
    expect(statusOf(cold, 'pour-1')).toBe('active');
    cold.says('pour-1');
    expect(cold.state.steps['pour-1']?.outcome).toBe('done');

    // A kettle that is being filled is not hot yet; it is not switched on now.
    const filling = planOf(
      purgePlan.steps.map((step) =>
        step.id === 'boil-1'
          ? {
              ...step,
              stages: [
                ...step.stages.map((one) => ({ ...one, id: 'fill', hazards: [], timers: [] })),
                ...step.stages,
              ],
            }
          : step,
      ),
    );
    const tablet = new Tablet(filling);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'boil-1' });
    burned(tablet);
    expect(statusOf(tablet, 'boil-1')).toBe('active');
    expect(tablet.tries({ kind: 'confirm', step: 'boil-1', stage: 'fill' })).toBe('fault-open');
  });

  it('leaves an oven to its cycle, which needs no hands', () => {
    const oven = planOf(
      steps
        .filter(({ id }) => id === 'glow')
        .map((step) => ({
          ...step,
          needs: [],
          gates: [],
          stages: step.stages.map((stage) => ({ ...stage, hazards: ['oven' as const] })),
        })),
    );
    const tablet = new Tablet(oven);
    tablet.does({ kind: 'start-run' }, { kind: 'start-step', step: 'glow' });
    burned(tablet);
    expect(statusOf(tablet, 'glow')).toBe('active');
  });
});
