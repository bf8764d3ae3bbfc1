import { describe, expect, it, vi } from 'vitest';
import { createOutlook } from '../../../src/app/controllers/outlook/outlook.ts';
import type { Ask } from '../../../src/app/controllers/planner/planner.ts';
import { buildPlan } from '../../../src/core/plan/index.ts';
import { simulateRun, type RunView } from '../../../src/core/run/index.ts';
import { kitchenOf } from '../../core/plan/support/plans.ts';
import { askHere } from './planner/ask-here.ts';

const SUNDAY = Date.parse('2027-04-18T13:00:00Z');
const PLAN = buildPlan(kitchenOf('flat-coils'), { startWallMs: SUNDAY });

/** Views of a played run, each with its second. */
function played(): readonly { readonly view: RunView; readonly atS: number }[] {
  const seen: { view: RunView; atS: number }[] = [];
  simulateRun(PLAN, {
    untilS: 6 * 3600,
    script: (view, atS) => {
      seen.push({ view, atS });
      return [];
    },
  });
  return seen.filter(({ view }) => view.status === 'running');
}

/** An outlook, what it asked, and a hand that shows it views. */
function looked() {
  const asked = vi.fn(askHere);
  const { outlook, look } = createOutlook(asked as Ask);
  const show = (view: RunView, atS: number): void => look(view, SUNDAY + atS * 1000);
  return { outlook, asked, show };
}

describe('the outlook of the open run', () => {
  it('is asked for when something is done, not with every second', async () => {
    const views = played();
    const [first] = views;
    if (!first) throw new Error('Nothing was played.');
    const { outlook, asked, show } = looked();
    show(first.view, first.atS);
    await vi.waitFor(() => expect(outlook()).toBeDefined(), { timeout: 20_000 });
    expect(asked).toHaveBeenCalledTimes(1);
    for (let second = 1; second <= 60; second++) show({ ...first.view }, first.atS + second);
    expect(asked).toHaveBeenCalledTimes(1);
    const done = views.find(({ view }) => view.doneSteps > first.view.doneSteps);
    if (!done) throw new Error('No step was done.');
    show(done.view, done.atS);
    expect(asked).toHaveBeenCalledTimes(2);
    // What should be over by now moves the end, with nothing done.
    show({ ...done.view }, done.atS + 601);
    expect(asked).toHaveBeenCalledTimes(3);
    await vi.waitFor(() => expect(outlook()?.about).toBe(false), { timeout: 20_000 });
    show({ ...done.view, status: 'closed' }, done.atS + 602);
    expect(outlook()).toBeUndefined();
  });

  it('is asked for anew when a clock is moved by a word, or the plan is changed', () => {
    const resting = played().findLast(({ view }) =>
      view.timers.some(({ role }) => role === 'hold'),
    );
    if (!resting) throw new Error('Nothing rests.');
    const { asked, show } = looked();
    show(resting.view, resting.atS);
    const before = asked.mock.calls.length;
    const timers = resting.view.timers.map((one) => ({ ...one, leftS: one.leftS - 7200 }));
    show({ ...resting.view, timers }, resting.atS + 1);
    expect(asked).toHaveBeenCalledTimes(before + 1);
    show({ ...resting.view, timers, plan: { ...PLAN } }, resting.atS + 2);
    expect(asked).toHaveBeenCalledTimes(before + 2);
  });
});
