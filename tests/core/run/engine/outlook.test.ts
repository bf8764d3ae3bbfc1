import { describe, expect, it } from 'vitest';
import { buildPlan, type Plan } from '../../../../src/core/plan/index.ts';
import {
  outlookOf,
  perform,
  simulateRun,
  view,
  type Outlook,
  type RunView,
} from '../../../../src/core/run/index.ts';
import { exactly } from '../../../../src/core/units/index.ts';
import { inEnglish } from '../../../support/english.ts';
import { DEMOS, kitchenOf } from '../../plan/support/plans.ts';

const SUNDAY = Date.parse('2027-04-18T13:00:00Z');
const TUESDAY = Date.parse('2027-03-02T07:00:00Z');
const HOUR_S = 3600;

type Looked = { readonly atS: number; readonly doneSteps: number; readonly outlook: Outlook };

/** Plays a plan and looks ahead each time so many steps more are done. */
function looks(
  plan: Plan,
  every: number,
): { readonly looked: readonly Looked[]; readonly endS: number } {
  const looked: Looked[] = [];
  let nextAt = 1;
  const { finishS } = simulateRun(plan, {
    script: (seen, atS) => {
      if (seen.status === 'running' && seen.doneSteps >= nextAt) {
        nextAt = seen.doneSteps + every;
        const outlook = outlookOf(seen, SUNDAY + atS * 1000);
        if (outlook) looked.push({ atS, doneSteps: seen.doneSteps, outlook });
      }
      return [];
    },
  });
  return { looked, endS: finishS };
}

/** The run and its outlook at the moment at which a step is over. */
function whenSettled(plan: Plan, id: string) {
  let found: { seen: RunView; outlook: Outlook; atS: number } | undefined;
  simulateRun(plan, {
    script: (seen, atS) => {
      const isOver = seen.steps.some((one) => one.step.id === id && one.status === 'settled');
      const outlook = isOver && !found ? outlookOf(seen, TUESDAY + atS * 1000) : undefined;
      if (outlook) found = { seen, outlook, atS };
      return [];
    },
  });
  if (!found) throw new Error(`${id} is never over.`);
  return found;
}

/** The same plan, under its old timetable, with one step that takes longer than anybody planned. */
function slower(plan: Plan, id: string, byS: number): Plan {
  return {
    ...plan,
    steps: plan.steps.map((step) =>
      step.id === id ? { ...step, durationS: exactly(step.durationS.typical + byS) } : step,
    ),
  };
}

describe('the outlook of a run', () => {
  it.each(DEMOS)('is the end of the plan of %s while everything goes to plan', (demo) => {
    const plan = buildPlan(kitchenOf(demo), { startWallMs: SUNDAY });
    const { looked, endS } = looks(plan, 16);
    expect(looked.length).toBeGreaterThan(3);
    // What the play itself takes longer than the plan is seen, too.
    const lateS = endS - plan.timetable.finishS;
    for (const { outlook } of looked) {
      expect(outlook.about).toBe(false);
      expect(outlook.aheadS).toBeLessThan(60);
      expect(outlook.aheadS).toBeGreaterThan(-Math.max(60, lateS + 60));
    }
  });

  it('tells an hour that is lost where a rest decides the end, and what decides it', () => {
    const plan = buildPlan(kitchenOf('flat-glass-230'), { startWallMs: TUESDAY });
    const late = slower(plan, 'clean-oven', HOUR_S);
    const { seen, outlook } = whenSettled(late, 'clean-oven');
    expect(seen.steps.find(({ step }) => step.id === 'clean-oven')?.outcome).toBe('done');
    expect(Math.abs(outlook.aheadS + HOUR_S)).toBeLessThan(180);
    expect(outlook.about).toBe(false);
    expect(outlook.decided.map(inEnglish.say).join('; ')).toMatch(/oven/i);
    const { finishS } = simulateRun(late);
    expect(Math.abs(finishS - plan.timetable.finishS - HOUR_S)).toBeLessThan(180);
    // Without the slow hand it is the plan.
    expect(Math.abs(whenSettled(plan, 'clean-oven').outlook.aheadS)).toBeLessThan(60);
  });

  it('counts what was stopped as still to be done, all of it', () => {
    const plan = buildPlan(kitchenOf('flat-glass-230'), { startWallMs: TUESDAY });
    const cleaned = plan.steps.find(({ id }) => id === 'clean-oven');
    const lengthS = cleaned?.durationS.typical ?? 0;
    const stopS = (plan.timetable.startS['clean-oven'] ?? 0) + lengthS / 2;
    const { state } = simulateRun(plan, { untilS: stopS });
    const now = { wallMs: TUESDAY + stopS * 1000, monoMs: stopS * 1000, session: 'simulated' };
    const stop = { kind: 'stop-step', step: 'clean-oven', reason: 'Called away.' } as const;
    const done = perform(state, stop, now);
    if ('refusal' in done) throw new Error(done.refusal.code);
    const seen = view(done.state, now);
    expect(seen.steps.find(({ step }) => step.id === 'clean-oven')?.again).toBe(true);
    const told = outlookOf(seen, now.wallMs);
    // What was cleaned before is lost.
    expect(told?.aheadS).toBeLessThan(-lengthS / 2 + 180);
    expect(told?.aheadS).toBeGreaterThan(-lengthS - 180);
  });

  it('says about when, one thing after the other, where no order is found', () => {
    const plan = buildPlan(kitchenOf('flat-coils'), { startWallMs: SUNDAY });
    const { view: seen } = simulateRun(plan, { untilS: 600 });
    const nobody = plan.resources.map((one) =>
      one.kind === 'hands' ? { ...one, capacity: 0 } : one,
    );
    const outlook = outlookOf({ ...seen, plan: { ...plan, resources: nobody } }, SUNDAY + 600_000);
    expect(outlook?.about).toBe(true);
    expect(outlook?.decided).toEqual([]);
    expect(outlook?.endMs).toBeGreaterThan(SUNDAY + 24 * HOUR_S * 1000);
  });

  it('is not told where the plan knows no days', () => {
    const { view: seen } = simulateRun(buildPlan(kitchenOf('flat-coils')), { untilS: 60 });
    expect(outlookOf(seen, 60_000)).toBeUndefined();
  });
});
